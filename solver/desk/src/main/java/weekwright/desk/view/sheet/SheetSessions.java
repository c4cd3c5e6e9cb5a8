package weekwright.desk.view.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.load.Presence;
import weekwright.desk.view.load.SessionWorks;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.answer.DaySheet.Out;
import weekwright.model.answer.DaySheet.Plan;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.answer.DaySheet.Why;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.prescription.Work;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** The sessions of a day sheet. */
final class SheetSessions {
    private final Scenario scenario;
    private final DaySheets.Wish wish;
    private final Names names;
    private final Catalogue catalogue;
    private final Presence presence;
    private final SessionWorks works;
    private final SheetNumbers numbers;

    SheetSessions(Scenario scenario, weekwright.model.plan.Plan plan, List<PersonPicture> people, DaySheets.Wish wish) {
        this.scenario = scenario;
        this.wish = wish;
        names = new Names(scenario);
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
        presence = new Presence(scenario, plan, people);
        works = new SessionWorks(scenario);
        numbers = new SheetNumbers(scenario, presence, new Returning(scenario, plan, presence), wish);
    }

    /**
     * A session with its people; none where the only athlete wanted is not meant to come.
     *
     * @param today the group's sessions of the day in order
     */
    Optional<Session> session(Placement placement, Group group, List<Placement> today) {
        List<Athlete> meant = presence.meant(placement).stream()
                .filter(athlete -> wish.athlete() == null || athlete.id().equals(wish.athlete()))
                .toList();
        if (wish.athlete() != null && meant.isEmpty()) {
            return Optional.empty();
        }
        Family family = catalogue.family(placement.family());
        Work work = works.of(placement, group);
        Variant variant = work.done();
        Commitment lending = lending(placement);
        return Optional.of(new Session(
                Objects.requireNonNullElse(placement.id(), ""),
                family.id(),
                family.label(),
                placement.dose(),
                variant == null ? null : variant.label(),
                placement.start(),
                Moment.at(presence.end(placement), scenario.zone()),
                names.facility(placement.facility()),
                names.staff(placement.lead()),
                lending == null ? warmUp(placement, family, today) : 0,
                remarks(placement, work, lending),
                plans(placement, group, work, meant),
                out(placement, work, meant)));
    }

    /** Who has just warmed up needs less. */
    private int warmUp(Placement placement, Family family, List<Placement> today) {
        Instant start = instant(placement.start());
        boolean warm = Stream.concat(
                        today.stream().map(presence::end),
                        scenario.commitments().stream()
                                .filter(one -> one.groups().contains(placement.group()) && one.family() != null)
                                .map(one -> instant(one.start()).plusSeconds(60L * one.minutes())))
                .map(end -> Duration.between(end, start).toMinutes())
                .anyMatch(gap -> gap >= 0 && gap <= Demands.SHARED_WARM_UP_GAP_MINUTES);
        if (!warm) {
            return family.warmUpMinutes();
        }
        List<Family> before = today.stream()
                .filter(other -> instant(other.start()).isBefore(start))
                .map(other -> catalogue.family(other.family()))
                .toList();
        boolean first = (family.sprint() && before.stream().noneMatch(Family::sprint))
                || (family.lift() && before.stream().noneMatch(Family::lift));
        return Demands.sharedWarmUp(family.warmUpMinutes(), first);
    }

    /** The practice within whose lent minutes a micro session lies, or null. */
    private @Nullable Commitment lending(Placement placement) {
        if (placement.dose() != Dose.MICRO) {
            return null;
        }
        Instant start = instant(placement.start());
        return scenario.commitments().stream()
                .filter(one -> one.lends() != null && one.groups().contains(placement.group()))
                .filter(one -> !start.isBefore(instant(one.start())))
                .filter(one -> start.isBefore(instant(one.start()).plusSeconds(60L * one.minutes())))
                .findFirst()
                .orElse(null);
    }

    private static List<String> remarks(Placement placement, Work work, @Nullable Commitment lending) {
        List<String> remarks = new ArrayList<>();
        if (lending != null) {
            remarks.add("Inside " + lending.label() + ", after its own warm-up.");
        }
        switch (placement.dose()) {
            case FULL -> {}
            case REDUCED -> remarks.add("Reduced dose: two thirds of the main part.");
            case MICRO -> remarks.add("Micro dose: one third of the main part.");
        }
        if (work.weekFactor() != 1) {
            remarks.add("This week " + Dates.exact(Math.rint(work.weekFactor() * 100)) + " % of the usual main part.");
        }
        if (work.most() < 1) {
            remarks.add("Taper: at most " + Dates.exact(Math.rint(work.most() * 100))
                    + " % of the sets, as fast and as heavy as ever.");
        }
        return remarks;
    }

    /** The group's own level first, then every other that somebody has. */
    private List<Plan> plans(Placement placement, Group group, Work work, List<Athlete> meant) {
        List<Athlete> here = meant.stream()
                .filter(athlete -> presence.out(athlete, placement) == null)
                .toList();
        int others = wish.athlete() == null ? others(group, placement) : 0;
        boolean nobody = here.isEmpty() && wish.athlete() == null;
        List<Plan> plans = new ArrayList<>();
        for (Level level : levels(group)) {
            boolean own = level == group.level();
            List<Athlete> some = here.stream()
                    .filter(athlete -> level(athlete, group) == level)
                    .toList();
            if (!some.isEmpty() || (own && (others > 0 || nobody))) {
                plans.add(numbers.plan(placement, work, level, some, own ? others : 0));
            }
        }
        return plans;
    }

    private static List<Level> levels(Group group) {
        return Stream.concat(Stream.of(group.level()), Stream.of(Level.values()))
                .distinct()
                .toList();
    }

    /** People of the group who are not listed by name; they play every fixture. */
    private int others(Group group, Placement placement) {
        if (Presence.share(placement) == Share.NOT_PLAYED || group.headcount() == null) {
            return 0;
        }
        long listed = scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(group.id()))
                .count();
        return (int) Math.max(0, group.headcount() - listed);
    }

    static Level level(Athlete athlete, Group group) {
        return athlete.level() == null ? group.level() : athlete.level();
    }

    private List<Out> out(Placement placement, Work work, List<Athlete> meant) {
        List<Out> out = new ArrayList<>();
        for (Athlete athlete : meant) {
            Why why = presence.out(athlete, placement);
            if (why != null) {
                out.add(new Out(
                        athlete.id(),
                        athlete.name(),
                        why,
                        why == Why.SITS_OUT ? numbers.instead(placement, work, athlete) : null));
            }
        }
        return out;
    }

    private Instant instant(Moment moment) {
        return moment.instant(scenario.zone());
    }
}
