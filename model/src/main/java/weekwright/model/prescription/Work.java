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
 * What a session asks for: its family's lines, with the sets and repetitions that its dose and its week leave of them.
 *
 * @param dose share of the main part
 * @param weekFactor factor of the main part in this week
 * @param aim what the session is for, or null of one beyond the aims
 * @param variant the session's variant, or null
 */
public record Work(
        Family family,
        Group group,
        Dose dose,
        double weekFactor,
        @Nullable Aim aim,
        @Nullable String variant,
        RuleSettings settings) {

    /** Share of a full session's sets. */
    public double share() {
        double minutes = aim == null || aim.minutes() == null || family.minutes() == 0
                ? 1
                : (double) aim.minutes() / family.minutes();
        return dose.thirds() / 3.0 * weekFactor * minutes;
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
                .filter(line ->
                        line.isFor(level, group.phase(), group.kind(), variantDone == null ? null : variantDone.id()))
                .toList();
        double fast =
                full.stream().filter(this::counts).mapToDouble(Work::metres).sum();
        SprintBand band = SprintBand.of(family, group, level, settings);
        double wanted =
                aim != null && aim.metres() != null && fast > 0 ? aim.metres().fast() / fast : 1;
        double most = band == null || wanted != 1 ? Double.MAX_VALUE : band.most();
        List<Content> scaled = new ArrayList<>();
        double left = most;
        for (Content line : full) {
            Content now = scaled(line, share() * (counts(line) ? wanted : 1), counts(line) ? left : Double.MAX_VALUE);
            left -= counts(now) ? metres(now) : 0;
            scaled.add(now);
        }
        return scaled;
    }

    /** Fast metres of these lines, run-ins not counted. */
    public double fastMetres(Level level) {
        return lines(level).stream()
                .filter(this::counts)
                .mapToDouble(Work::metres)
                .sum();
    }

    /** Whether a line's metres belong to the band: free sprints near the best. */
    private boolean counts(Content line) {
        return line.kind() == ContentKind.SPRINT
                && line.start() != null
                && line.percentFrom() != null
                && line.percentFrom() >= 95;
    }

    private static double metres(Content line) {
        return line.count() * Objects.requireNonNull(line.metres());
    }

    private static Content scaled(Content line, double share, double mostMetres) {
        Integer repetitions = line.repetitions();
        return switch (line.kind()) {
            case WARM_UP, WORDS -> line;
            case LIFT, JUMP -> line.times(part(line.sets(), share), repetitions);
            case SPRINT, RUN -> runs(line, Objects.requireNonNull(repetitions), share, mostMetres);
        };
    }

    /** Fewer runs a set, and where that would leave one or two of many, fewer sets. */
    private static Content runs(Content line, int repetitions, double share, double mostMetres) {
        int all = part(line.count(), share);
        Double metres = line.metres();
        if (line.kind() == ContentKind.SPRINT && metres != null && mostMetres < Double.MAX_VALUE) {
            all = Math.max(1, Math.min(all, (int) Math.floor(mostMetres / metres + 1e-9)));
        }
        int sets = Math.max(1, Math.min(line.sets(), (int) Math.round((double) all / repetitions)));
        return line.times(sets, Math.max(1, all / sets));
    }

    /** Half up, and never nothing. */
    private static int part(int of, double share) {
        return Math.max(1, (int) Math.floor(of * share + 0.5 + 1e-9));
    }
}
