package weekwright.scenarios;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Share;

/** The three groups of a made-up club and what they want. */
final class ClubGroups {
    private static final List<Dose> ANY = List.of(Dose.FULL, Dose.REDUCED, Dose.MICRO);
    private static final List<Dose> FULL = List.of(Dose.FULL);

    private final Random random;

    private ClubGroups(Random random) {
        this.random = random;
    }

    static List<Group> of(Random random) {
        ClubGroups groups = new ClubGroups(random);
        return List.of(groups.squad(), groups.lifters(), groups.young());
    }

    private Group squad() {
        List<Aim> aims = new ArrayList<>(List.of(
                aim("max-velocity", 1, 2, Priority.KEY, ANY, true),
                aim("heavy-lower-knee", 1, 1, Priority.MAIN, ANY, true),
                aim("aerobic-intervals", 0, 1, Priority.SPARE, FULL, false),
                aim("primer", 0, 1, Priority.SPARE, FULL, false),
                learning("technique", 1, 2),
                notPlayed()));
        if (random.nextBoolean()) {
            aims.add(aim("mobility", 0, 2, Priority.SPARE, FULL, false));
        }
        return group("squad", GroupKind.FIELD, 9 + random.nextInt(4), aims, List.of());
    }

    private Group lifters() {
        GroupKind kind = random.nextBoolean() ? GroupKind.STRENGTH : GroupKind.SPRINT;
        List<Aim> aims = List.of(
                aim("heavy-lower-hip", 1, 2, Priority.KEY, List.of(Dose.FULL, Dose.REDUCED), false),
                power("weightlifting-power"),
                aim("aerobic-intervals", 0, 1, Priority.SPARE, FULL, false),
                aim("upper-strength", 0, 2, Priority.MAIN, FULL, false));
        List<String> packs = random.nextBoolean() ? List.of("college-in-season") : List.of();
        return group("lifters", kind, 5 + random.nextInt(4), aims, packs);
    }

    private Group young() {
        List<Aim> aims = List.of(
                aim("acceleration", 1, 2, Priority.MAIN, ANY, true),
                learning("skill-at-speed", 0, 2),
                sprints(),
                aim("small-sided-games", 0, 1, Priority.SPARE, FULL, false));
        return group("young", GroupKind.COURT, 4 + random.nextInt(5), aims, List.of("youth"));
    }

    private Group group(String id, GroupKind kind, int headcount, List<Aim> aims, List<String> packs) {
        return new Group(
                id,
                id,
                kind,
                Phase.values()[random.nextInt(4)],
                Level.values()[random.nextInt(3)],
                headcount,
                0.7 + random.nextInt(3) / 10.0,
                random.nextBoolean()
                        ? Hours.CHOICE.get(random.nextInt(Hours.CHOICE.size())).windows()
                        : List.of(),
                List.of(),
                random.nextInt(4) == 0 ? null : new PerWeek(1, 2, 3),
                aims,
                Map.of(),
                packs);
    }

    private Aim aim(String family, int least, int target, Priority priority, List<Dose> doses, boolean micro) {
        Prefer prefer = random.nextInt(3) == 0
                ? new Prefer(List.of(), ClockTime.parse("15:00"), ClockTime.parse("19:00"))
                : null;
        return full(
                family,
                Share.ALL,
                new PerWeek(least, target, target + random.nextInt(2)),
                priority,
                doses,
                prefer,
                micro,
                false,
                false,
                null);
    }

    private Aim learning(String family, int least, int target) {
        return full(
                family,
                Share.ALL,
                new PerWeek(least, target, target + 3),
                Priority.MAIN,
                FULL,
                null,
                false,
                true,
                false,
                null);
    }

    private Aim power(String family) {
        return full(family, Share.ALL, new PerWeek(0, 1, 2), Priority.MAIN, FULL, null, false, false, true, null);
    }

    private Aim sprints() {
        Metres metres =
                random.nextBoolean() ? new Metres(20 + 20 * random.nextInt(8), 150 + 50 * random.nextInt(8)) : null;
        return full(
                "max-velocity",
                Share.ALL,
                new PerWeek(0, 1, 1),
                Priority.SPARE,
                FULL,
                null,
                false,
                false,
                false,
                metres);
    }

    private Aim notPlayed() {
        return full(
                "top-up-run",
                Share.NOT_PLAYED,
                new PerWeek(0, 1, 2),
                Priority.SPARE,
                FULL,
                null,
                false,
                false,
                false,
                null);
    }

    private Aim full(
            String family,
            Share whom,
            PerWeek perWeek,
            Priority priority,
            List<Dose> doses,
            @Nullable Prefer prefer,
            boolean microCounts,
            boolean learning,
            boolean power,
            @Nullable Metres metres) {
        List<Double> weeks = random.nextInt(3) == 0 ? List.of(1.0, 1.2, 0.7) : List.of();
        return new Aim(
                family, whom, perWeek, priority, doses, prefer, microCounts, learning, power, weeks, null, metres);
    }
}
