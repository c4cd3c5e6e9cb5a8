package weekwright.scenarios;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Share;

/** Draws the aims of a made-up squad: strength and speed first, then whatever else until the week is full. */
final class WishList {
    private static final List<Dose> ANY = List.of(Dose.FULL, Dose.REDUCED, Dose.MICRO);
    private static final List<Dose> FULL_OR_REDUCED = List.of(Dose.FULL, Dose.REDUCED);
    private static final List<Dose> FULL = List.of(Dose.FULL);

    private static final List<Wish> KEY = List.of(
            new Wish("heavy-lower-knee", Priority.KEY, 1, FULL_OR_REDUCED),
            new Wish("max-velocity", Priority.KEY, 1, ANY));

    private static final List<Wish> OTHERS = List.of(
            new Wish("acceleration", Priority.MAIN, 2, FULL_OR_REDUCED),
            new Wish("upper-strength", Priority.MAIN, 2, FULL_OR_REDUCED),
            new Wish("heavy-lower-hip", Priority.MAIN, 1, ANY),
            new Wish("intensive-plyometrics", Priority.MAIN, 1, FULL_OR_REDUCED),
            new Wish("aerobic-intervals", Priority.MAIN, 1, FULL),
            new Wish("change-of-direction", Priority.SPARE, 1, FULL_OR_REDUCED),
            new Wish("weightlifting-power", Priority.SPARE, 1, FULL),
            new Wish("tempo-run", Priority.SPARE, 3, FULL),
            new Wish("primer", Priority.SPARE, 1, FULL),
            new Wish("technique", Priority.MAIN, 3, FULL),
            new Wish("trunk-and-balance", Priority.SPARE, 4, FULL),
            new Wish("mobility", Priority.SPARE, 5, FULL),
            new Wish("skill-at-speed", Priority.SPARE, 2, FULL),
            new Wish("low-day-hypertrophy", Priority.SPARE, 2, FULL),
            new Wish("pool-recovery", Priority.SPARE, 3, FULL),
            new Wish("easy-bike", Priority.SPARE, 3, FULL));

    private static final List<Wish> SMALL = List.of(
            new Wish("heavy-lower-knee", Priority.KEY, 1, FULL_OR_REDUCED),
            new Wish("max-velocity", Priority.KEY, 1, ANY),
            new Wish("acceleration", Priority.MAIN, 1, FULL),
            new Wish("upper-strength", Priority.MAIN, 2, FULL),
            new Wish("tempo-run", Priority.SPARE, 2, FULL),
            new Wish("primer", Priority.SPARE, 1, FULL),
            new Wish("technique", Priority.SPARE, 2, FULL),
            new Wish("mobility", Priority.SPARE, 1, FULL));

    /** Hard work that does not go well together. */
    private static final List<Wish> CROWDED = List.of(
            new Wish("acceleration", Priority.MAIN, 2, FULL_OR_REDUCED),
            new Wish("heavy-lower-hip", Priority.MAIN, 1, ANY),
            new Wish("upper-strength", Priority.MAIN, 2, FULL),
            new Wish("weightlifting-power", Priority.MAIN, 1, FULL),
            new Wish("aerobic-intervals", Priority.MAIN, 1, FULL),
            new Wish("tempo-run", Priority.SPARE, 1, FULL),
            new Wish("technique", Priority.SPARE, 2, FULL));

    private WishList() {}

    /** A family that a coach may wish for, with the most that anybody would want in a week. */
    private record Wish(String family, Priority priority, int cap, List<Dose> doses) {}

    /** Aims with about so many sessions a week in all. */
    static List<Aim> squad(int sessions, boolean fixtures, Random random) {
        List<Wish> wishes = new ArrayList<>(OTHERS);
        Collections.shuffle(wishes, random);
        wishes.addAll(0, KEY);
        List<Aim> aims = aims(wishes, sessions, random);
        if (fixtures && random.nextInt(3) == 0) {
            aims.add(topUp());
        }
        return aims;
    }

    /** A few aims with so many sessions wanted in all, heavy strength and speed among them, and never more than wanted. */
    static List<Aim> few(int sessions, Random random) {
        List<Wish> wishes = new ArrayList<>(CROWDED);
        Collections.shuffle(wishes, random);
        wishes.addAll(0, KEY);
        return aims(wishes, sessions, random).stream()
                .map(aim -> new Aim(
                        aim.family(),
                        aim.whom(),
                        new PerWeek(
                                aim.perWeek().least(),
                                aim.perWeek().target(),
                                aim.perWeek().target()),
                        aim.priority(),
                        FULL,
                        aim.prefer(),
                        false,
                        aim.learning(),
                        false,
                        List.of(),
                        null,
                        null))
                .toList();
    }

    /** A few aims with so many sessions in all. */
    static List<Aim> small(int sessions, Random random) {
        List<Wish> wishes = new ArrayList<>(SMALL);
        Collections.shuffle(wishes, random);
        return aims(wishes, sessions, random);
    }

    private static List<Aim> aims(List<Wish> wishes, int sessions, Random random) {
        int[] targets = new int[wishes.size()];
        int left = sessions;
        boolean more = true;
        while (left > 0 && more) {
            more = false;
            for (int i = 0; i < targets.length && left > 0; i++) {
                if (targets[i] < wishes.get(i).cap()) {
                    targets[i]++;
                    left--;
                    more = true;
                }
            }
        }
        List<Aim> aims = new ArrayList<>();
        for (int i = 0; i < targets.length; i++) {
            if (targets[i] > 0) {
                aims.add(aim(wishes.get(i), targets[i], random));
            }
        }
        return aims;
    }

    private static Aim aim(Wish wish, int target, Random random) {
        int least =
                wish.priority() == Priority.SPARE ? 0 : wish.priority() == Priority.KEY ? target : random.nextInt(2);
        int most = target + (wish.cap() > target ? random.nextInt(2) : 0);
        return new Aim(
                wish.family(),
                Share.ALL,
                new PerWeek(least, target, most),
                wish.priority(),
                wish.doses(),
                prefer(random),
                wish.doses().contains(Dose.MICRO) && random.nextBoolean(),
                wish.family().equals("technique") && random.nextBoolean(),
                false,
                wish.priority() == Priority.KEY && random.nextInt(4) == 0 ? List.of(1.0, 1.1, 1.2, 0.7) : List.of(),
                null,
                null);
    }

    private static Prefer prefer(Random random) {
        ClockTime from = new ClockTime(60 * (9 + random.nextInt(4)));
        ClockTime to = new ClockTime(60 * (15 + random.nextInt(5)));
        return random.nextInt(4) == 0 ? new Prefer(List.of(), from, to) : new Prefer(List.of(), null, null);
    }

    private static Aim topUp() {
        return new Aim(
                "top-up-run",
                Share.NOT_PLAYED,
                new PerWeek(0, 1, 1),
                Priority.SPARE,
                FULL,
                null,
                false,
                false,
                false,
                List.of(),
                null,
                null);
    }
}
