package weekwright.desk.view.load;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.plan.Placement;
import weekwright.model.prescription.Taper;
import weekwright.model.prescription.Work;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** What sessions ask for: placed ones and done ones, with dose, week, taper and place. */
public final class SessionWorks {
    private final Scenario scenario;
    private final Catalogue catalogue;

    /** What sessions of a scenario ask for. */
    public SessionWorks(Scenario scenario) {
        this.scenario = scenario;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    /** The work of a placed session. */
    public Work of(Placement placement, Group group) {
        Family family = catalogue.family(placement.family());
        Aim aim = aim(placement.family(), Presence.share(placement), group);
        LocalDate day = placement.start().date();
        return new Work(
                family,
                group,
                placement.dose(),
                factor(aim, day),
                aim,
                placement.variant(),
                settings(group),
                Taper.share(scenario.fixtures(), group, day),
                hasBar(placement.facility(), family));
    }

    /** The work of a session that was done, as it was prescribed; a log has no sets and distances of its own. */
    public Work of(LogEntry entry, Group group) {
        Family family = catalogue.family(entry.family());
        Aim aim = aim(entry.family(), Share.ALL, group);
        LocalDate day = entry.start().date();
        return new Work(
                family,
                group,
                entry.dose(),
                factor(aim, day),
                aim,
                entry.variant(),
                settings(group),
                Taper.share(scenario.fixtures(), group, day),
                true);
    }

    private RuleSettings settings(Group group) {
        return RuleSettings.of(Rulebook.builtIn(), scenario, group);
    }

    private static @Nullable Aim aim(String family, Share share, Group group) {
        return group.aims().stream()
                .filter(aim -> aim.family().equals(family) && aim.whom() == share)
                .findFirst()
                .orElse(null);
    }

    /** Weeks before the plan have no factor. */
    private double factor(@Nullable Aim aim, LocalDate day) {
        long days = ChronoUnit.DAYS.between(scenario.firstDay(), day);
        return aim == null || days < 0 ? 1 : aim.weekFactor((int) days / 7);
    }

    /** Whether there are weights: at a place that has a weights room, and anywhere for families that need one. */
    private boolean hasBar(@Nullable String facility, Family family) {
        return family.facility().equals(List.of(FacilityKind.GYM))
                || scenario.facilities().stream()
                        .filter(known -> Objects.equals(known.id(), facility))
                        .anyMatch(known -> known.offers().contains(FacilityKind.GYM));
    }
}
