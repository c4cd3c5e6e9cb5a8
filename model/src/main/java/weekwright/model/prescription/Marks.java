package weekwright.model.prescription;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import weekwright.model.prescription.Found.Age;
import weekwright.model.prescription.SprintProfile.Split;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/**
 * An athlete's marks as they stand on a day: fresh ones before old ones, electronic times before hand times, and nothing
 * taken from one start or timing for another.
 */
public final class Marks {
    /** Days after which a mark is told to be old. Expert proposal. */
    public static final int OLD_AFTER = 90;
    /** Days after which no number is made of a mark. Expert proposal. */
    public static final int TOO_OLD_AFTER = 180;

    private final List<Mark> sound;
    private final List<String> refused = new ArrayList<>();
    private final LocalDate day;
    private final RepMax formula;

    /**
     * The marks of one athlete.
     *
     * @param marks all that were ever taken, in any order
     * @param day the day that numbers are wanted for; later marks do not count
     * @param formula turns repetitions at a weight into a one-repetition maximum
     */
    public Marks(List<Mark> marks, LocalDate day, RepMax formula) {
        this.day = day;
        this.formula = formula;
        sound = marks.stream()
                .filter(mark -> !mark.date().isAfter(day))
                .filter(this::isPossible)
                .toList();
    }

    private boolean isPossible(Mark mark) {
        String fault = MarkFaults.of(mark);
        if (fault != null) {
            refused.add(fault);
        }
        return fault == null;
    }

    /** Marks that are not used, each with the reason in words. */
    public List<String> refused() {
        return List.copyOf(refused);
    }

    /** The best time over a distance from a start. */
    public Found sprint(double metres, SprintStart start) {
        Found measured = best(
                mark -> isSprint(mark) && mark.start() == start && Objects.equals(mark.metres(), metres),
                mark -> -seconds(mark));
        if (measured.mark() != null) {
            return withValue(measured, measured.mark().seconds());
        }
        return start == SprintStart.FLYING ? byTopSpeed(metres) : predicted(metres, start);
    }

    private Found byTopSpeed(double metres) {
        Found speed = topSpeed();
        return speed.value() == null
                ? speed
                : new Found(metres / speed.value(), speed.mark(), speed.age(), true, speed.unsure());
    }

    private Found predicted(double metres, SprintStart start) {
        SprintProfile profile = profile(start);
        Mark longest = longestSplit(start);
        return profile == null || longest == null || metres > Objects.requireNonNull(longest.metres())
                ? Found.NOTHING
                : new Found(profile.seconds(metres), longest, age(longest), true, !profile.tested());
    }

    /** Top speed in metres a second: of the best flying split, else as a profile of splits from a standstill has it. */
    public Found topSpeed() {
        Found flying = best(
                mark -> isSprint(mark) && mark.start() == SprintStart.FLYING,
                mark -> Objects.requireNonNull(mark.metres()) / seconds(mark));
        Mark mark = flying.mark();
        if (mark != null) {
            return withValue(flying, Objects.requireNonNull(mark.metres()) / seconds(mark));
        }
        for (SprintStart start : List.of(SprintStart.STANDING, SprintStart.BLOCKS)) {
            SprintProfile profile = profile(start);
            Mark longest = longestSplit(start);
            if (profile != null && longest != null) {
                return new Found(profile.topSpeed(), longest, age(longest), true, !profile.tested());
            }
        }
        return Found.NOTHING;
    }

    /** The profile of the newest day with two electronic splits or more of this start, or null where none fits. */
    public @Nullable SprintProfile profile(SprintStart start) {
        List<Split> splits = splits(start).stream()
                .map(mark -> new Split(Objects.requireNonNull(mark.metres()), seconds(mark)))
                .toList();
        try {
            return SprintProfile.of(splits);
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    private @Nullable Mark longestSplit(SprintStart start) {
        return splits(start).stream()
                .max(Comparator.comparing(mark -> Objects.requireNonNull(mark.metres())))
                .orElse(null);
    }

    private List<Mark> splits(SprintStart start) {
        List<Mark> usable = sound.stream()
                .filter(mark -> isSprint(mark) && mark.start() == start && mark.timing() == Timing.ELECTRONIC)
                .filter(mark -> age(mark) != Age.TOO_OLD && Objects.requireNonNull(mark.metres()) <= 100)
                .toList();
        return usable.stream()
                .map(Mark::date)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .map(date ->
                        usable.stream().filter(mark -> mark.date().equals(date)).toList())
                .filter(sameDay -> sameDay.size() >= 2)
                .findFirst()
                .orElse(List.of());
    }

    /** The one-repetition maximum of a lift in kilograms, tested or estimated. */
    public Found lift(String lift) {
        Found found = best(mark -> lift.equals(mark.lift()), this::maximum);
        Mark mark = found.mark();
        if (mark == null || found.age() == Age.TOO_OLD) {
            return found;
        }
        int repetitions = Objects.requireNonNull(mark.repetitions());
        return new Found(maximum(mark), mark, found.age(), repetitions > 1, repetitions >= RepMax.UNSURE_FROM);
    }

    private double maximum(Mark mark) {
        return formula.maximum(Objects.requireNonNull(mark.kg()), Objects.requireNonNull(mark.repetitions()));
    }

    /** Maximal aerobic speed in metres a second, given or of a test run. */
    public Found aerobicSpeed() {
        Found found = best(Marks::isAerobic, Marks::aerobicSpeed);
        Mark mark = found.mark();
        return mark == null || found.age() == Age.TOO_OLD
                ? found
                : new Found(aerobicSpeed(mark), mark, found.age(), mark.measure() == Measure.SPRINT, false);
    }

    private static boolean isAerobic(Mark mark) {
        return mark.measure() == Measure.AEROBIC_SPEED
                || (isSprint(mark) && AerobicSpeed.isTest(Objects.requireNonNull(mark.metres()), seconds(mark)));
    }

    private static double aerobicSpeed(Mark mark) {
        return mark.metresPerSecond() != null
                ? mark.metresPerSecond()
                : AerobicSpeed.ofTest(Objects.requireNonNull(mark.metres()), seconds(mark));
    }

    /** The best mark of a kind: of the fresh ones if there are any, and never a hand time before an electronic one. */
    private Found best(Predicate<Mark> kind, ToDoubleFunction<Mark> worth) {
        List<Mark> all = sound.stream().filter(kind).toList();
        List<Mark> electronic =
                all.stream().filter(mark -> mark.timing() != Timing.HAND).toList();
        for (List<Mark> some : List.of(electronic, all)) {
            for (Age age : List.of(Age.FRESH, Age.OLD)) {
                Mark best = some.stream()
                        .filter(mark -> age(mark) == age)
                        .max(Comparator.comparingDouble(worth))
                        .orElse(null);
                if (best != null) {
                    return new Found(null, best, age, false, false);
                }
            }
        }
        return all.stream()
                .max(Comparator.comparing(Mark::date))
                .map(Found::tooOld)
                .orElse(Found.NOTHING);
    }

    private static Found withValue(Found found, @Nullable Double value) {
        return found.age() == Age.TOO_OLD ? found : new Found(value, found.mark(), found.age(), false, found.unsure());
    }

    private Age age(Mark mark) {
        long days = ChronoUnit.DAYS.between(mark.date(), day);
        return days > TOO_OLD_AFTER ? Age.TOO_OLD : days > OLD_AFTER ? Age.OLD : Age.FRESH;
    }

    private static boolean isSprint(Mark mark) {
        return mark.measure() == Measure.SPRINT;
    }

    private static double seconds(Mark mark) {
        return Objects.requireNonNull(mark.seconds());
    }
}
