package weekwright.model.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;

/**
 * What a session asks for: its family's lines, with the sets and repetitions that its dose, its week, a taper and a return
 * after a break leave of them.
 *
 * @param dose share of the main part
 * @param weekFactor factor of the main part in this week
 * @param aim what the session is for, or null of one beyond the aims
 * @param variant the session's variant, or null
 * @param most most of a full session's sets, 1 where nothing holds them down: a taper, a first session after a break
 * @param bar whether there are weights where it is done; lifts are left out where not
 */
public record Work(
        Family family,
        Group group,
        Dose dose,
        double weekFactor,
        @Nullable Aim aim,
        @Nullable String variant,
        RuleSettings settings,
        double most,
        boolean bar) {
    private static final double EXACT = 1e-9;

    /** The same session with at most so much of its full sets. */
    public Work atMost(double share) {
        return new Work(family, group, dose, weekFactor, aim, variant, settings, Math.min(most, share), bar);
    }

    /** Share of a full session's sets. */
    public double share() {
        double minutes = aim == null || aim.minutes() == null || family.minutes() == 0
                ? 1
                : (double) aim.minutes() / family.minutes();
        double asked = dose.thirds() / 3.0 * weekFactor * minutes;
        return most < 1 ? Math.min(asked, most) : asked;
    }

    /** The variant that is done: the session's, else the one that is tested, else the first; null without variants. */
    public @Nullable Variant done() {
        return family.variants().stream()
                .filter(one -> one.id().equals(variant))
                .findFirst()
                .or(() -> family.variants().stream().filter(Variant::tested).findFirst())
                .or(() -> family.variants().stream().findFirst())
                .orElse(null);
    }

    /** The lift of a line: its own, else the session's variant; null of a line that is no lift. */
    public @Nullable String lift(Content line) {
        if (line.kind() != ContentKind.LIFT || line.lift() != null) {
            return line.lift();
        }
        Variant variantDone = done();
        return variantDone == null ? null : variantDone.id();
    }

    /** The lines for somebody of a level, at this dose and week. */
    public List<Content> lines(Level level) {
        Variant variantDone = done();
        List<Content> full = family.content().stream()
                .filter(line -> bar || line.kind() != ContentKind.LIFT)
                .filter(line ->
                        line.isFor(level, group.phase(), group.kind(), variantDone == null ? null : variantDone.id()))
                .toList();
        double fast = metres(full);
        SprintBand band = SprintBand.of(family, group, level, settings);
        boolean given = aim != null && aim.metres() != null && fast > 0;
        double most = band == null || given ? Double.MAX_VALUE : band.most();
        double wanted = given
                ? Objects.requireNonNull(Objects.requireNonNull(aim).metres()).fast() / fast
                : Math.min(1, most / Math.max(1, fast * share()));
        double left = most;
        List<Content> scaled = new ArrayList<>();
        for (Content line : full) {
            boolean fastLine = counts(line);
            if (fastLine && metres(line) / line.count() > left + EXACT) {
                continue;
            }
            Content now = scaled(line, fastLine ? wanted : 1, fastLine ? left : Double.MAX_VALUE);
            left -= fastLine ? metres(now) : 0;
            scaled.add(now);
        }
        return scaled;
    }

    /** Fast metres of these lines, run-ins not counted. */
    public double fastMetres(Level level) {
        return metres(lines(level));
    }

    /** Contacts with the ground of the jumps of these lines. */
    public int contacts(Level level) {
        return lines(level).stream()
                .filter(line -> line.kind() == ContentKind.JUMP)
                .mapToInt(Content::count)
                .sum();
    }

    private static double metres(List<Content> lines) {
        return lines.stream().filter(Work::counts).mapToDouble(Work::metres).sum();
    }

    /** Whether a line's metres belong to the band: free sprints near the best. */
    private static boolean counts(Content line) {
        return line.kind() == ContentKind.SPRINT
                && line.start() != null
                && line.percentFrom() != null
                && line.percentFrom() >= 95;
    }

    private static double metres(Content line) {
        return line.count() * Objects.requireNonNull(line.metres());
    }

    private Content scaled(Content line, double wanted, double mostMetres) {
        Integer repetitions = line.repetitions();
        return switch (line.kind()) {
            case WARM_UP, WORDS -> line;
            case LIFT, JUMP -> line.times(part(line.sets(), 1), repetitions);
            case SPRINT, RUN -> runs(line, Objects.requireNonNull(repetitions), wanted, mostMetres);
        };
    }

    /** Fewer runs a set, and where that would leave one or two of many, fewer sets. */
    private Content runs(Content line, int repetitions, double wanted, double mostMetres) {
        int all = part(line.count(), wanted);
        if (mostMetres < Double.MAX_VALUE) {
            int fit = (int) Math.floor(mostMetres / Objects.requireNonNull(line.metres()) + EXACT);
            all = Math.max(1, Math.min(all, fit));
        }
        int sets = Math.max(1, Math.min(line.sets(), (int) Math.round((double) all / repetitions)));
        return line.times(sets, Math.max(1, all / sets));
    }

    /** Half up, never nothing, and never beyond what a taper or a break allows. */
    private int part(int of, double wanted) {
        int part = (int) Math.floor(of * share() * wanted + 0.5 + EXACT);
        int limit = most < 1 ? (int) Math.floor(of * most * wanted + EXACT) : part;
        return Math.max(1, Math.min(part, limit));
    }
}
