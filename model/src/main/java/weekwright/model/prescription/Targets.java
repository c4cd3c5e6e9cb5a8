package weekwright.model.prescription;

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

    private static final String NO_MARK = "no mark";
    private static final String OLD = "old mark";
    private static final String ESTIMATED = "estimated";
    private static final String BY_HAND = "by hand: time by hand";

    private final Marks marks;
    private final Level level;
    private final Units units;

    public Targets(Marks marks, Level level, Units units) {
        this.marks = marks;
        this.level = level;
        this.units = units;
    }

    /**
     * The target of a line, or null where it is the same for everybody.
     *
     * @param lift id of the lift of a line of lifting, or null
     */
    public @Nullable Target of(Content line, @Nullable String lift) {
        Double from = line.percentFrom();
        if (from == null) {
            return null;
        }
        return switch (line.kind()) {
            case SPRINT -> sprint(line, from);
            case LIFT -> lift == null ? null : lift(line, from, lift);
            case RUN -> line.seconds() != null ? aerobic(line, from, line.seconds()) : tempo(line, from);
            case WARM_UP, JUMP, WORDS -> null;
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
        return new Target(Target.Kind.SECONDS, fastest, slowest, null, basis(found), flags(found));
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
        return new Target(Target.Kind.WEIGHT, low, heaviest.getAsDouble(), null, basis(found), flags(found));
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
        double to = Objects.requireNonNullElse(line.percentTo(), from);
        return new Target(
                Target.Kind.METRES,
                whole(AerobicSpeed.metres(found.value(), from / 100, seconds)),
                whole(AerobicSpeed.metres(found.value(), to / 100, seconds)),
                null,
                basis(found),
                flags(found));
    }

    private double whole(double metres) {
        return Math.rint(units.ofMetres(metres));
    }

    private static List<String> flags(Found found) {
        List<String> flags = new ArrayList<>();
        Mark mark = found.mark();
        if (mark == null) {
            flags.add(NO_MARK);
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
