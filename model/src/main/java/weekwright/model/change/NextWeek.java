package weekwright.model.change;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Window;

/**
 * A week that begins from an earlier one. What holds from week to week is carried over; commitments of the earlier week move by
 * whole weeks at the same time on the clock; fixtures are not carried over but for those that were known to come; absences,
 * closures and restrictions stay on their dates, and end with them; what was done becomes history.
 *
 * @param id id of the new week
 * @param firstDay its first day, whole weeks after that of the earlier one
 * @param week number of the week of the earlier scenario that is carried over, from 0
 * @param fixtures its fixtures besides those known before
 */
public record NextWeek(String id, String title, LocalDate firstDay, int week, List<Fixture> fixtures) {
    private static final int DAYS = 7;

    public NextWeek {
        fixtures = List.copyOf(fixtures);
    }

    /** First day of a week of a scenario, counted from 0. */
    public static LocalDate firstDay(Scenario scenario, int week) {
        return scenario.firstDay().plusWeeks(week);
    }

    /** Fixtures of a week of a scenario, counted from 0. */
    public static List<Fixture> fixtures(Scenario scenario, int week) {
        return in(scenario, week, scenario.fixtures(), Fixture::start);
    }

    /** Whether a week has a fixture, and none of its groups has two. */
    public static boolean hasOneGame(Scenario scenario, int week) {
        List<Fixture> all = fixtures(scenario, week);
        Set<String> groups = new HashSet<>();
        return !all.isEmpty()
                && all.stream().flatMap(one -> one.groups().stream()).allMatch(groups::add);
    }

    /** The latest week of a scenario with one game, or else its last; counted from 0. */
    public static int latestWithOneGame(Scenario scenario) {
        for (int week = scenario.weeks() - 1; week >= 0; week--) {
            if (hasOneGame(scenario, week)) {
                return week;
            }
        }
        return scenario.weeks() - 1;
    }

    private static <T> List<T> in(Scenario scenario, int week, List<T> all, Function<T, Moment> start) {
        LocalDate first = firstDay(scenario, week);
        return all.stream()
                .filter(one -> {
                    LocalDate day = start.apply(one).date();
                    return !day.isBefore(first) && day.isBefore(first.plusDays(DAYS));
                })
                .toList();
    }

    /**
     * The new week as a scenario; to be read as any document.
     *
     * @param done what was done in the earlier scenario
     * @throws IllegalArgumentException when the first day is not whole weeks later
     */
    public Scenario after(Scenario before, List<LogEntry> done) {
        Move move = move(before);
        return new Scenario(
                Scenario.VERSION,
                id,
                title,
                before.zone(),
                firstDay,
                Math.min(DAYS, before.days() - DAYS * week),
                before.gridMinutes(),
                before.groups().stream().map(one -> group(one, move)).toList(),
                before.athletes().stream().map(one -> athlete(one, move)).toList(),
                allFixtures(before),
                commitments(before, move),
                before.facilities().stream().map(one -> place(one, move)).toList(),
                before.transfers(),
                before.staff().stream().map(one -> staff(one, move)).toList(),
                history(before, done),
                before.catalogue(),
                before.rules(),
                before.packs());
    }

    /**
     * What was held in the plan of the earlier week, held at the same times of the new one.
     *
     * @return a plan of which nothing is judged
     */
    public Plan held(Scenario before, Plan plan) {
        Move move = move(before);
        String old = firstDay(before, week).toString();
        List<Placement> placements = in(before, week, plan.placements(), Placement::start).stream()
                .filter(one -> one.pin() != null)
                .map(one -> new Placement(
                        moved(one.id(), old),
                        one.group(),
                        one.family(),
                        move.of(one.start()),
                        one.minutes(),
                        one.facility(),
                        one.lead(),
                        one.dose(),
                        one.variant(),
                        move.of(one.held())))
                .toList();
        List<LeftOut> leftOut = new ArrayList<>();
        for (LeftOut one : plan.leftOut()) {
            String moved = moved(one.id(), old);
            Pin pin = one.pin();
            if (pin != null && moved != null) {
                leftOut.add(new LeftOut(
                        moved, one.need(), one.level(), one.cost(), move.of(pin), 0, List.of(), null, one.text()));
            }
        }
        return new Plan(Scenario.VERSION, id, null, null, null, placements, leftOut, List.of(), null, List.of());
    }

    /** The id of a session in the new week, or null where it is of another week. */
    private @Nullable String moved(@Nullable String session, String old) {
        String part = "/" + old + "/";
        return session != null && session.contains(part) ? session.replace(part, "/" + firstDay + "/") : null;
    }

    private Move move(Scenario before) {
        LocalDate first = firstDay(before, week);
        long days = ChronoUnit.DAYS.between(first, firstDay);
        if (days < DAYS || days % DAYS != 0) {
            throw new IllegalArgumentException(firstDay + " is not whole weeks after " + first + ": give "
                    + first.plusDays(DAYS) + ", " + first.plusDays(2L * DAYS) + " and so on");
        }
        return new Move(days);
    }

    /** So many days later, at the same time on the clock. */
    private record Move(long days) {
        Moment of(Moment moment) {
            return Moment.of(moment.local().plusDays(days));
        }

        @Nullable
        LocalDate of(@Nullable LocalDate date) {
            return date == null ? null : date.plusDays(days);
        }

        Window of(Window hours) {
            return new Window(
                    hours.days(),
                    of(hours.date()),
                    hours.from(),
                    hours.to(),
                    of(hours.firstDate()),
                    of(hours.lastDate()));
        }

        Pin of(Pin pin) {
            return new Pin(
                    pin.start(),
                    pin.day(),
                    pin.facility(),
                    pin.lead(),
                    pin.dose(),
                    pin.variant(),
                    pin.out(),
                    pin.notDays().stream().map(day -> day.plusDays(days)).toList());
        }
    }

    private Group group(Group one, Move move) {
        return one.withWindows(hours(one.windows(), move))
                .withAway(toCome(one.away()))
                .withAims(one.aims().stream().map(this::aim).toList());
    }

    /** An aim whose sizes change from week to week keeps that of the week carried over. */
    private Aim aim(Aim one) {
        return one.weeks().isEmpty() ? one : one.withWeeks(List.of(one.weekFactor(week)));
    }

    private Athlete athlete(Athlete one, Move move) {
        return one.withWindows(hours(one.windows(), move))
                .withAway(toCome(one.away()))
                .withRestrictions(one.restrictions().stream()
                        .filter(limit -> !limit.to().isBefore(firstDay))
                        .toList());
    }

    private Facility place(Facility one, Move move) {
        return one.withOpen(hours(one.open(), move)).withClosed(toCome(one.closed()));
    }

    private StaffMember staff(StaffMember one, Move move) {
        return one.withWindows(hours(one.windows(), move)).withAway(toCome(one.away()));
    }

    /** Hours that hold in the new week or later; where all have ended they move, since no hours would mean always. */
    private List<Window> hours(List<Window> all, Move move) {
        List<Window> toCome = all.stream().filter(this::isToCome).toList();
        return toCome.isEmpty() ? all.stream().map(move::of).toList() : toCome;
    }

    private boolean isToCome(Window hours) {
        LocalDate last = hours.date() != null ? hours.date() : hours.lastDate();
        return last == null || !last.isBefore(firstDay);
    }

    private List<Away> toCome(List<Away> all) {
        return all.stream()
                .filter(one -> one.to().local().isAfter(firstDay.atStartOfDay()))
                .toList();
    }

    private List<Fixture> allFixtures(Scenario before) {
        List<Fixture> all = new ArrayList<>(known(before));
        all.addAll(fixtures);
        return all;
    }

    /** Fixtures that were known to come in the new week or after it. */
    public List<Fixture> known(Scenario before) {
        return before.fixtures().stream()
                .filter(one -> !one.start().date().isBefore(firstDay))
                .toList();
    }

    /** Those that were known to come, and those of the earlier week, moved, unless they were known too. */
    private List<Commitment> commitments(Scenario before, Move move) {
        List<Commitment> all = new ArrayList<>(before.commitments().stream()
                .filter(one -> !one.start().date().isBefore(firstDay))
                .toList());
        for (Commitment one : in(before, week, before.commitments(), Commitment::start)) {
            Moment start = move.of(one.start());
            Predicate<Commitment> same = other -> other.label().equals(one.label())
                    && other.groups().equals(one.groups())
                    && other.athletes().equals(one.athletes())
                    && other.start().equals(start);
            if (all.stream().noneMatch(same)) {
                all.add(one.withStart(free(one.id(), all), start));
            }
        }
        return all;
    }

    private static String free(String id, List<Commitment> taken) {
        String free = id;
        for (int number = 2; isTaken(free, taken); number++) {
            free = id.substring(0, Math.min(id.length(), 44)) + "-" + number;
        }
        return free;
    }

    private static boolean isTaken(String id, List<Commitment> taken) {
        return taken.stream().anyMatch(one -> one.id().equals(id));
    }

    /** What was done in the four weeks before; ids of sessions and fixtures of the earlier week mean nothing in the new one. */
    private List<LogEntry> history(Scenario before, List<LogEntry> done) {
        List<LogEntry> all = new ArrayList<>(before.history());
        all.addAll(done);
        return all.stream()
                .filter(one -> one.start().date().isBefore(firstDay)
                        && !one.start().date().isBefore(firstDay.minusDays(Scenario.EDGE_DAYS)))
                .sorted(Comparator.comparing(one -> one.start().instant(before.zone())))
                .map(LogEntry::elsewhere)
                .toList();
    }
}
