package weekwright.desk.app;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.model.change.AsPlanned;
import weekwright.model.change.NextWeek;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Travel;

/** A week that begins from an earlier one: its fixtures, and what is kept in a folder of its own. */
public final class NextWeeks {
    /** How long a fixture lasts where the week before has none to go by. */
    private static final int USUAL_MINUTES = 110;

    private static final int DAYS = 7;

    private final Scenario before;
    private final List<Fixture> likes;

    /** Weeks that carry over a week of a scenario, counted from 0. */
    public NextWeeks(Scenario before, int week) {
        this.before = before;
        List<Fixture> old = NextWeek.fixtures(before, week).stream()
                .sorted(Comparator.comparing(fixture -> fixture.start().local()))
                .toList();
        likes = Stream.concat(old.stream(), Stream.of(old.isEmpty() ? plain() : old.get(0)))
                .toList();
    }

    private Fixture plain() {
        List<String> groups = before.groups().stream().map(Group::id).toList();
        return Fixture.plain(
                "fixture", "", groups, null, Moment.of(before.firstDay().atTime(15, 0)), USUAL_MINUTES);
    }

    /** What the new fixtures are like in turn: those of the week that is carried over, and one for any more. */
    public List<Fixture> likes() {
        return likes;
    }

    /**
     * A fixture of the new week, of the groups, kind and length of the one that it comes in place of.
     *
     * @param row its number among {@link #likes}, from 0; whatever lies past them is like the last
     * @param others those that the new week has so far
     */
    public Fixture fixture(int row, String label, Moment start, List<Fixture> others) {
        Fixture like = likes.get(Math.min(row, likes.size() - 1));
        return new Fixture(
                id(row + 1, others),
                label,
                like.groups(),
                like.family(),
                start,
                like.minutes(),
                like.playMinutes(),
                like.weight(),
                Travel.NONE,
                like.taperDays(),
                List.of(),
                List.of());
    }

    private String id(int number, List<Fixture> others) {
        List<String> taken = Stream.concat(before.fixtures().stream(), others.stream())
                .map(Fixture::id)
                .toList();
        int free = number;
        while (taken.contains("game-" + free)) {
            free++;
        }
        return "game-" + free;
    }

    /** What is to be said of a fixture that lies neither in the new week nor in the four weeks after it. */
    public static Optional<String> outside(Fixture fixture, LocalDate firstDay) {
        LocalDate day = fixture.start().date();
        LocalDate latest = firstDay.plusDays(DAYS - 1L + Scenario.EDGE_DAYS);
        if (!day.isBefore(firstDay) && !day.isAfter(latest)) {
            return Optional.empty();
        }
        return Optional.of("the fixture \"" + fixture.label() + "\" is on " + day
                + ", which is neither in the new week nor in the four weeks after it: give a date from " + firstDay
                + " to " + latest);
    }

    /**
     * The week that is carried over.
     *
     * @param plan its judged plan, or null where it has none
     * @param log what was done, or null where nothing was written down
     */
    public record Before(
            Scenario scenario,
            @Nullable Plan plan,
            @Nullable Log log) {}

    /**
     * What the new folder begins with.
     *
     * @param asPlanned whether what was not written down is taken as done as planned
     * @param held whether what is held in the earlier week is held at the same times of the new one
     * @throws InputFault when the first day is not whole weeks later
     */
    public static Contents contents(Before before, NextWeek next, boolean asPlanned, boolean held, Planner planner) {
        Plan plan = before.plan();
        try {
            Scenario after = next.after(before.scenario(), done(before, asPlanned));
            if (!held || plan == null) {
                return new Contents(after, null, null);
            }
            Plan fitting = Refit.of(next.held(before.scenario(), plan), after).plan();
            return new Contents(after, planner.quick().judge(after, fitting).plan(), null);
        } catch (IllegalArgumentException e) {
            throw new InputFault("the first day " + e.getMessage());
        }
    }

    private static List<LogEntry> done(Before before, boolean asPlanned) {
        Log log = before.log();
        if (!asPlanned) {
            return log == null ? List.of() : log.entries();
        }
        Plan plan = before.plan();
        List<Placement> placements = plan == null ? List.of() : plan.placements();
        return AsPlanned.done(before.scenario(), placements, log);
    }
}
