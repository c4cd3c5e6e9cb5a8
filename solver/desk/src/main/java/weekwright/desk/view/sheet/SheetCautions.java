package weekwright.desk.view.sheet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weekwright.model.answer.DaySheet.GroupDay;
import weekwright.model.answer.DaySheet.Row;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.answer.DaySheet.Why;
import weekwright.model.prescription.Caution;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Scenario;

/** Which cautions a day calls for. */
final class SheetCautions {
    /** Age in years from which somebody is no minor. */
    static final int OF_AGE = 18;
    /** The family of maximal tests. */
    static final String TESTING = "testing";

    private static final Set<FacilityKind> OUTSIDE = Set.of(FacilityKind.FIELD, FacilityKind.TRACK, FacilityKind.HILL);

    private SheetCautions() {}

    static List<String> of(Scenario scenario, LocalDate day, List<GroupDay> groups) {
        List<Session> sessions =
                groups.stream().flatMap(group -> group.sessions().stream()).toList();
        List<Caution> cautions = new ArrayList<>(List.of(Caution.STOP));
        add(
                cautions,
                Caution.HELD_BACK,
                sessions.stream().flatMap(one -> one.out().stream()).anyMatch(out -> out.why() == Why.SITS_OUT));
        add(cautions, Caution.MINORS, hasMinors(scenario, day, sessions));
        add(
                cautions,
                Caution.TESTS,
                sessions.stream().anyMatch(one -> one.family().equals(TESTING)));
        add(cautions, Caution.RETURN, isReturn(scenario, groups));
        add(cautions, Caution.WEATHER, isOutside(scenario, groups));
        return cautions.stream().map(Caution::text).toList();
    }

    private static void add(List<Caution> cautions, Caution caution, boolean holds) {
        if (holds) {
            cautions.add(caution);
        }
    }

    /** Whether an athlete is known to be under 18 on a day. */
    static boolean isMinor(Athlete athlete, LocalDate day) {
        return athlete.born() != null && ChronoUnit.YEARS.between(athlete.born(), day) < OF_AGE;
    }

    private static boolean hasMinors(Scenario scenario, LocalDate day, List<Session> sessions) {
        Set<String> minors = scenario.athletes().stream()
                .filter(athlete -> isMinor(athlete, day))
                .map(Athlete::id)
                .collect(Collectors.toSet());
        return people(sessions).anyMatch(minors::contains);
    }

    private static Stream<String> people(List<Session> sessions) {
        return Stream.concat(
                sessions.stream()
                        .flatMap(one -> one.plans().stream())
                        .flatMap(plan -> plan.athletes().stream())
                        .map(Row::athlete),
                sessions.stream().flatMap(one -> one.out().stream()).map(out -> out.athlete()));
    }

    private static boolean isReturn(Scenario scenario, List<GroupDay> groups) {
        return scenario.groups().stream()
                .filter(group -> group.phase() == Phase.RETURN)
                .anyMatch(group -> groups.stream().anyMatch(day -> day.group().equals(group.id())));
    }

    /** A place that the sheet names and that offers ground under the sky. */
    private static boolean isOutside(Scenario scenario, List<GroupDay> groups) {
        Set<String> outside = scenario.facilities().stream()
                .filter(facility -> facility.offers().stream().anyMatch(OUTSIDE::contains))
                .map(Facility::label)
                .collect(Collectors.toSet());
        return groups.stream()
                .anyMatch(group ->
                        group.fixed().stream().anyMatch(fixed -> fixed.match() || outside.contains(fixed.facility()))
                                || group.sessions().stream().anyMatch(one -> outside.contains(one.facility())));
    }
}
