package weekwright.desk.app;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Comparisons;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Comparison;
import weekwright.model.change.AthleteLost;
import weekwright.model.change.DayLost;
import weekwright.model.change.Event;
import weekwright.model.change.FacilityClosed;
import weekwright.model.change.FixtureMoved;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Says what would come of a change of the scenario: what it breaks by itself, and the plan that is found after it. */
public final class WhatIfs {
    private final Planner planner;

    /** What-ifs of which a planner finds the plans. */
    public WhatIfs(Planner planner) {
        this.planner = planner;
    }

    /**
     * What comes of a change.
     *
     * @param scenario the scenario after it
     * @param judged the plan that was found after it
     * @param comparison the plan before beside the one found
     */
    public record Answer(Scenario scenario, Judged judged, Comparison comparison) {}

    /** A fixture that is played at another time. */
    public static Event moved(Scenario scenario, String fixture, Moment to) {
        return new FixtureMoved(Named.fixture(scenario, fixture).id(), to);
    }

    /** A place that is shut on a day. */
    public static Event closed(Scenario scenario, String facility, LocalDate day) {
        return new FacilityClosed(Named.facility(scenario, facility).id(), within(scenario, day));
    }

    /** A day on which a group, or where none is named nobody, can train. */
    public static Event lost(Scenario scenario, LocalDate day, @Nullable String group) {
        return new DayLost(
                within(scenario, day),
                group == null ? null : Named.group(scenario, group).id());
    }

    /** An athlete who is not with the squad. */
    public static Event without(Scenario scenario, String athlete) {
        return new AthleteLost(Named.athlete(scenario, athlete).id());
    }

    private static LocalDate within(Scenario scenario, LocalDate day) {
        if (day.isBefore(scenario.firstDay()) || day.isAfter(scenario.lastDay())) {
            throw new InputFault(day + " is no day of this plan: give one from " + scenario.firstDay() + " to "
                    + scenario.lastDay());
        }
        return day;
    }

    /**
     * The scenario after some events, checked like any other.
     *
     * @throws InputFault when it could not be written down so
     */
    public static Scenario after(Scenario scenario, List<Event> events) {
        try {
            Scenario changed = scenario;
            for (Event event : events) {
                changed = event.after(changed);
            }
            byte[] written = Documents.write(changed).getBytes(StandardCharsets.UTF_8);
            return Documents.readScenario("the changed scenario", written);
        } catch (DocumentException e) {
            // Where it would stand in a document that nobody has seen is of no use to a coach.
            throw new InputFault(e.problems().stream()
                    .map(problem -> problem.wrong() + ". " + problem.right())
                    .toList());
        } catch (IllegalArgumentException e) {
            throw new InputFault(String.valueOf(e.getMessage()));
        }
    }

    /**
     * What comes of some events.
     *
     * @param asked the scenario as it is, its plan and how to search
     * @param plan the plan that it has
     * @param search searches for a plan; it starts from the plan that there is, holds its pins and stays close to it
     * @throws InputFault when the changed scenario is none, or the plan cannot belong to it
     */
    public Answer of(Proposal asked, Plan plan, List<Event> events, Function<Proposal, Judged> search) {
        Scenario scenario = after(asked.scenario(), events);
        Plan before = planner.judgeWithoutRemedies(asked.scenario(), plan).plan();
        Plan standing = planner.judgeWithoutRemedies(scenario, Comparing.moved(before, scenario))
                .plan();
        // It is the old plan that is searched from: that it was made for another scenario is what has to be seen.
        Plan from = Comparing.moved(before, scenario);
        Judged found =
                search.apply(new Proposal(scenario, from, asked.budget(), asked.seed(), asked.threads(), asked.now()));
        return new Answer(scenario, found, Comparisons.underChange(scenario, before, standing, found.plan()));
    }
}
