package weekwright.desk.intake;

import java.util.List;
import java.util.function.BiFunction;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Named;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/**
 * Whose hours and spans of time are taken in.
 *
 * @param name who or what it is, for sentences
 * @param windows hours it has now
 * @param spans spans in which it is away or closed now
 * @param isPerson whether it is an athlete, whose reasons are nobody else's concern
 * @param withWindows the scenario with other hours of it
 * @param withSpans the scenario with other spans of it
 */
record SpanOwner(
        String name,
        List<Window> windows,
        List<Away> spans,
        boolean isPerson,
        BiFunction<Scenario, List<Window>, Scenario> withWindows,
        BiFunction<Scenario, List<Away>, Scenario> withSpans) {
    /** Who is meant: a facility, an athlete or a group; throws {@link InputFault} where that is not clear. */
    static SpanOwner of(Scenario scenario, Wanted wanted, Answers answers) {
        boolean closures = wanted.what() == What.CLOSURES;
        String facility = wanted.facility();
        String athlete = wanted.athlete();
        if (closures && facility == null) {
            throw new InputFault("say which facility is closed with " + answers.way(Answers.FACILITY) + ", one of "
                    + String.join(
                            ", ",
                            scenario.facilities().stream().map(Facility::id).toList()));
        }
        if (wanted.what() == What.AWAY && facility != null) {
            throw new InputFault("a facility is not away: take it as closures");
        }
        if (facility != null) {
            return of(Named.facility(scenario, facility));
        }
        return athlete == null ? of(wanted.group(scenario, answers)) : of(Named.athlete(scenario, athlete));
    }

    private static SpanOwner of(Facility facility) {
        return new SpanOwner(
                facility.label(),
                facility.open(),
                facility.closed(),
                false,
                (scenario, open) -> change(scenario, facility.id(), old -> old.withOpen(open)),
                (scenario, closed) -> change(scenario, facility.id(), old -> old.withClosed(closed)));
    }

    private static Scenario change(Scenario scenario, String id, java.util.function.UnaryOperator<Facility> change) {
        return scenario.withFacilities(Revised.changed(scenario.facilities(), Facility::id, id, change));
    }

    private static SpanOwner of(Athlete athlete) {
        return new SpanOwner(
                athlete.name(),
                athlete.windows(),
                athlete.away(),
                true,
                (scenario, windows) -> scenario.withAthletes(Revised.changed(
                        scenario.athletes(), Athlete::id, athlete.id(), old -> old.withWindows(windows))),
                (scenario, away) -> scenario.withAthletes(
                        Revised.changed(scenario.athletes(), Athlete::id, athlete.id(), old -> old.withAway(away))));
    }

    private static SpanOwner of(Group group) {
        return new SpanOwner(
                group.label(),
                group.windows(),
                group.away(),
                false,
                (scenario, windows) -> scenario.withGroups(
                        Revised.changed(scenario.groups(), Group::id, group.id(), old -> old.withWindows(windows))),
                (scenario, away) -> scenario.withGroups(
                        Revised.changed(scenario.groups(), Group::id, group.id(), old -> old.withAway(away))));
    }
}
