package weekwright.model.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import weekwright.model.Plain;
import weekwright.model.catalogue.Content;
import weekwright.model.prescription.Found.Age;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** The numbers that a line of work asks of an athlete, from the athlete's marks; words where the marks carry none. */
public final class Targets {
    /** Share of the maximum in per cent above which weights are only rounded down. Expert proposal. */
    public static final double DOWN_ABOVE = 85;

    /** Share of the best below which a run counts as no speed work, in per cent (coaching convention, no source). */
    public static final double FAST_FROM = 90;

    private static final double EXACT = 1e-9;
    private static final String OLD = "old mark";
    private static final String ESTIMATED = "estimated";
    private static final String BY_HAND = "by hand: time by hand";

    private final Marks marks;
    private final Level level;
    private final Units units;

    /**
     * Targets for one athlete.
     *
     * @param marks what the athlete has shown, as it stands on the day
     * @param level how long the athlete has trained: work has other lines for beginners, whose weights are only rounded down
     * @param units what weights and distances are said in, and the steps of the plates
     */
    public Targets(Marks marks, Level level, Units units) {
        this.marks = marks;
        this.level = level;
        this.units = units;
    }

    /** The targets of a session's lines, one for each, for somebody of this level. */
    public List<Target> of(Work work) {
        List<Content> lines = work.lines(level);
        List<Target> plain =
                lines.stream().map(line -> of(line, work.lift(line))).toList();
        double day = plain.stream()
                .filter(target -> target.kind() == Target.Kind.WEIGHT)
                .map(Target::to)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(0.0);
        List<Target> all = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            all.add(lines.get(i).isWarmUpSet() && day > 0 ? warmUpSet(lines.get(i), day) : plain.get(i));
        }
        return all;
    }

    /** A share of the day's weight, and never less than the bar. */
    private Target warmUpSet(Content line, double day) {
        double share = Objects.requireNonNullElse(line.percentFrom(), 0.0) / 100;
        double weight =
                units.plates().nearest(day * share).orElse(units.plates().bar());
        return Target.weight(weight, weight, null, List.of());
    }

    /** What somebody goes by of whom no marks are known: how it feels. */
    public static List<Target> byFeel(Work work, Level level, Units units) {
        Targets unknown = new Targets(new Marks(List.of(), LocalDate.EPOCH, RepMax.EPLEY), level, units);
        return unknown.of(work).stream().map(Target::bare).toList();
    }

    /**
     * The target of a line.
     *
     * @param lift id of the lift of a line of lifting, or null
     */
    public Target of(Content line, @Nullable String lift) {
        Double from = line.percentFrom();
        if (from == null) {
            return Target.NONE;
        }
        return switch (line.kind()) {
            case SPRINT -> sprint(line, from);
            case LIFT -> lift == null ? Target.NONE : lift(line, from, lift);
            case RUN -> line.seconds() != null ? aerobic(line, from, line.seconds()) : tempo(line, from);
            case WARM_UP, JUMP, WORDS -> Target.NONE;
        };
    }

    private Target sprint(Content line, double from) {
        SprintStart start = Objects.requireNonNullElse(line.start(), SprintStart.STANDING);
        Found found = marks.sprint(Objects.requireNonNull(line.metres()), start);
        return found.value() == null
                ? Target.words(speedWords(from), flags(found))
                : times(found, found.value(), from, line.percentTo());
    }

    private Target tempo(Content line, double from) {
        Found found = marks.topSpeed();
        if (found.value() == null) {
            return Target.words(speedWords(from), flags(found));
        }
        return times(found, Objects.requireNonNull(line.metres()) / found.value(), from, line.percentTo());
    }

    private static Target times(Found found, double best, double from, @Nullable Double to) {
        double slowest = SprintTimes.slowest(best, from / 100);
        Double fastest = to == null ? null : Math.min(slowest, SprintTimes.fastest(best, to / 100));
        Double limit = from >= 95 ? SprintTimes.slowest(best, FAST_FROM / 100) : null;
        return new Target(Target.Kind.SECONDS, fastest, slowest, limit, null, basis(found), flags(found));
    }

    /** What a share of the best feels like. Expert proposal. */
    static String speedWords(double percent) {
        return percent >= 95
                ? "full speed, relaxed"
                : percent >= 88
                        ? "fast, a little held back"
                        : percent >= 75 ? "quick and smooth" : "easy: able to talk after it";
    }

    private Target lift(Content line, double from, String lift) {
        Found found = marks.lift(lift);
        String words = reserveWords(line);
        if (found.value() == null) {
            return Target.words(words, flags(found));
        }
        double maximum = units.ofKilograms(found.value());
        double to = Objects.requireNonNullElse(line.percentTo(), from);
        OptionalDouble heaviest = units.plates().down(maximum * to / 100);
        if (heaviest.isEmpty()) {
            return Target.words("lighter than the bar: dumbbells, " + words, flags(found));
        }
        boolean down = level == Level.NOVICE || from > DOWN_ABOVE;
        OptionalDouble lightest = down
                ? units.plates().down(maximum * from / 100)
                : units.plates().nearest(maximum * from / 100);
        double low = Math.min(heaviest.getAsDouble(), lightest.orElse(heaviest.getAsDouble()));
        return Target.weight(low, heaviest.getAsDouble(), basis(found), flags(found));
    }

    private static String reserveWords(Content line) {
        Integer left = line.inReserve();
        return left == null || left == 0 ? "by feel, never ground out" : "by feel: " + left + " more could be done";
    }

    private Target aerobic(Content line, double from, int seconds) {
        Found found = marks.aerobicSpeed();
        if (found.value() == null) {
            return Target.words(from >= 100 ? "hard: a few words only" : "steady: short sentences", flags(found));
        }
        double most = Objects.requireNonNullElse(line.percentTo(), from) / 100;
        double longest = Math.floor(units.ofMetres(AerobicSpeed.metres(found.value(), most, seconds)) + EXACT);
        double shortest = Math.ceil(units.ofMetres(AerobicSpeed.metres(found.value(), from / 100, seconds)) - EXACT);
        return new Target(
                Target.Kind.LENGTH, Math.min(shortest, longest), longest, null, null, basis(found), flags(found));
    }

    private static List<String> flags(Found found) {
        List<String> flags = new ArrayList<>();
        Mark mark = found.mark();
        if (mark == null) {
            flags.add(Target.NO_MARK);
            return flags;
        }
        if (found.age() == Age.OLD || found.age() == Age.TOO_OLD) {
            flags.add(found.age() == Age.OLD ? OLD : "mark too old");
        }
        if (found.value() != null && mark.timing() == Timing.HAND) {
            flags.add(BY_HAND);
        }
        if (found.value() != null && found.estimated()) {
            flags.add(found.unsure() ? "rough estimate" : ESTIMATED);
        }
        return flags;
    }

    private static @Nullable String basis(Found found) {
        Mark mark = found.mark();
        if (mark == null) {
            return null;
        }
        return switch (mark.measure()) {
            case SPRINT ->
                (mark.start() == SprintStart.FLYING ? "flying " : "")
                        + Plain.number(Objects.requireNonNull(mark.metres())) + " m "
                        + String.format(Locale.ROOT, "%.2f s", Objects.requireNonNull(mark.seconds()));
            case LIFT -> Plain.number(Objects.requireNonNull(mark.kg())) + " kg × " + mark.repetitions();
            case AEROBIC_SPEED -> Plain.number(Objects.requireNonNull(mark.metresPerSecond())) + " m/s";
        };
    }
}
