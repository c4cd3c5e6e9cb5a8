package weekwright.desk.view.sheet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalLong;
import java.util.stream.Stream;
import weekwright.desk.view.load.Presence;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Scenario;

/** How long an athlete has been without maximal sprinting. */
final class Returning {
    /** Share of best speed from which a measured run counts (Malone et al. 2017, J Sci Med Sport 20:250-254). */
    private static final double EXPOSURE = 0.95;

    private final Scenario scenario;
    private final Plan plan;
    private final Presence presence;
    private final Catalogue catalogue;

    Returning(Scenario scenario, Plan plan, Presence presence) {
        this.scenario = scenario;
        this.plan = plan;
        this.presence = presence;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    /** Days since the last exposure before a session of maximal sprinting; none where no exposure is known at all. */
    OptionalLong daysWithout(Athlete athlete, Placement session) {
        LocalDate day = session.start().date();
        Stream<LocalDate> past = scenario.history().stream()
                .filter(entry -> athlete.groups().contains(entry.group()) && isExposure(entry, athlete.id()))
                .map(entry -> entry.start().date());
        Stream<LocalDate> planned = plan.placements().stream()
                .filter(placement ->
                        isFast(placement.family()) && presence.meant(placement).contains(athlete))
                .filter(placement -> presence.out(athlete, placement) == null)
                .map(placement -> placement.start().date());
        return Stream.concat(past, planned)
                .filter(date -> date.isBefore(day))
                .mapToLong(date -> ChronoUnit.DAYS.between(date, day))
                .min();
    }

    private boolean isExposure(LogEntry entry, String athlete) {
        if (!entry.done() || entry.except().contains(athlete)) {
            return false;
        }
        return isFast(entry.family())
                || entry.people().stream()
                        .anyMatch(person -> person.athlete().equals(athlete)
                                && person.topSpeedShare() != null
                                && person.topSpeedShare() >= EXPOSURE);
    }

    private boolean isFast(String family) {
        Family known = catalogue.family(family);
        return known.high(Pathway.MAX_VELOCITY_SPRINT) && known.role() != Role.FIXTURE;
    }
}
