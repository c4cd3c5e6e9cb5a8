package weekwright.scenarios;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * Plans as a careless hand would write them: sessions of the aims at random times and places, legal or not, with the
 * odd extra session, lead and pin.
 */
public final class RandomPlans {
    private static final Comparator<Placement> BY_START =
            Comparator.comparing((Placement placement) -> placement.start().local());

    private final Scenario scenario;
    private final Catalogue catalogue;
    private final Random random;

    private RandomPlans(Scenario scenario, Random random) {
        this.scenario = scenario;
        this.catalogue = Catalogue.builtIn().with(scenario.catalogue());
        this.random = random;
    }

    /** A plan in which each aim gets none to one more than its most; ids count up in order of start. */
    public static Plan randomPlan(Scenario scenario, Random random) {
        return new RandomPlans(scenario, random).plan();
    }

    private Plan plan() {
        List<Placement> placements = new ArrayList<>();
        int sparse = random.nextInt(3);
        for (Group group : scenario.groups()) {
            for (Aim aim : group.aims()) {
                for (int week = 0; week < scenario.weeks(); week++) {
                    if (random.nextInt(4) >= sparse) {
                        placements.addAll(week(group, aim, week));
                    }
                }
            }
        }
        placements.sort(BY_START.thenComparing(Placement::id, Comparator.nullsFirst(Comparator.naturalOrder())));
        return new Plan(
                Scenario.VERSION, scenario.id(), null, null, null, placements, List.of(), List.of(), null, List.of());
    }

    private List<Placement> week(Group group, Aim aim, int week) {
        int count = random.nextInt(aim.perWeek().most() + 1);
        if (count == aim.perWeek().most() && random.nextInt(8) == 0) {
            count++;
        }
        List<Placement> drawn = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            drawn.add(draw(group, aim, week));
        }
        drawn.sort(BY_START);
        LocalDate key = scenario.firstDay().plusWeeks(week);
        List<Placement> named = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            boolean extra = i >= aim.perWeek().most();
            String id = group.id() + "/" + aim.key() + "/" + key + "/" + (i + 1);
            named.add(withId(extra ? null : id, drawn.get(i)));
        }
        return named;
    }

    private static Placement withId(@Nullable String id, Placement placement) {
        return new Placement(
                id,
                placement.group(),
                placement.family(),
                placement.start(),
                placement.minutes(),
                placement.facility(),
                placement.lead(),
                placement.dose(),
                placement.variant(),
                placement.pin());
    }

    private Placement draw(Group group, Aim aim, int week) {
        Family family = catalogue.family(aim.family());
        Dose dose = aim.doses().get(random.nextInt(aim.doses().size()));
        String lead = scenario.staff().isEmpty() || random.nextInt(4) > 0
                ? null
                : scenario.staff().get(random.nextInt(scenario.staff().size())).id();
        Pin pin = random.nextInt(6) == 0 ? new Pin(true, false, false, false, false, false, false, List.of()) : null;
        Placement drawn = new Placement(
                null,
                group.id(),
                family.id(),
                start(group, week),
                null,
                place(family),
                lead,
                dose,
                variant(family),
                pin);
        return dose == Dose.MICRO && random.nextBoolean() ? lent(drawn, week) : drawn;
    }

    /** Written now and then, mostly the first; the rest is left open. */
    private @Nullable String variant(Family family) {
        if (family.variants().isEmpty() || random.nextInt(5) < 2) {
            return null;
        }
        int any = random.nextInt(family.variants().size());
        return family.variants().get(random.nextInt(4) > 0 ? 0 : any).id();
    }

    /** The same somewhere in the lent minutes of a practice of its week, where there is one. */
    private Placement lent(Placement drawn, int week) {
        List<Commitment> lenders = scenario.commitments().stream()
                .filter(one -> one.lends() != null && one.groups().contains(drawn.group()))
                .filter(one ->
                        ChronoUnit.DAYS.between(scenario.firstDay(), one.start().date()) / 7 == week)
                .filter(one -> !one.start().date().isAfter(scenario.lastDay()))
                .toList();
        if (lenders.isEmpty()) {
            return drawn;
        }
        Commitment lender = lenders.get(random.nextInt(lenders.size()));
        Lends lends = Objects.requireNonNull(lender.lends());
        int into = lends.at() == LendsAt.START ? 15 : lender.minutes() - lends.minutes();
        Moment start = Moment.of(lender.start().local().plusMinutes(into + 5L * random.nextInt(8)));
        String place = random.nextInt(3) > 0 ? lender.facility() : drawn.facility();
        return new Placement(
                null,
                drawn.group(),
                drawn.family(),
                start,
                null,
                place,
                drawn.lead(),
                Dose.MICRO,
                drawn.variant(),
                drawn.pin());
    }

    /** Half of them in the group's windows, where a few draws find one. */
    private Moment start(Group group, int week) {
        LocalDateTime start = anyStart(week);
        for (int tries = random.nextBoolean() ? 20 : 0; tries > 0 && !inWindow(group, start); tries--) {
            start = anyStart(week);
        }
        return Moment.of(start);
    }

    /** On the grid as a rule, now and then at an odd minute; from early to late, but when no clocks change. */
    private LocalDateTime anyStart(int week) {
        int daysOfWeek = Math.min(7, scenario.days() - 7 * week);
        LocalDate day = scenario.firstDay().plusDays(7L * week + random.nextInt(daysOfWeek));
        int grid = random.nextInt(10) == 0 ? 5 : scenario.gridMinutes();
        return day.atTime(5, 0).plusMinutes((long) grid * random.nextInt(18 * 60 / grid));
    }

    private static boolean inWindow(Group group, LocalDateTime start) {
        return group.windows().stream()
                .anyMatch(window -> window.holdsOn(start.toLocalDate())
                        && !start.isBefore(window.from().on(start.toLocalDate()))
                        && start.isBefore(window.to().on(start.toLocalDate())));
    }

    private @Nullable String place(Family family) {
        List<String> fitting = scenario.facilities().stream()
                .filter(facility -> family.facility().isEmpty()
                        || facility.offers().stream().anyMatch(family.facility()::contains))
                .map(Facility::id)
                .toList();
        boolean careless = random.nextInt(12) == 0;
        List<String> choice =
                careless ? scenario.facilities().stream().map(Facility::id).toList() : fitting;
        return choice.isEmpty() || (careless && random.nextBoolean())
                ? null
                : choice.get(random.nextInt(choice.size()));
    }
}
