package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Longer.Whose;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** What could be given up so that wishes which clash can be had. */
final class Offers {
    /** Each is searched for anew, so there is an end to them. */
    private static final int MOST = 40;

    private final Problem problem;
    private final Scenario scenario;
    private final Plan plan;
    private final Wishes wishes;
    private final Names names;
    private final Map<String, Offer> offers = new LinkedHashMap<>();

    /**
     * Offers for a plan.
     *
     * @param problem the problem built from the plan
     */
    Offers(Problem problem, Plan plan, Wishes wishes) {
        this.problem = problem;
        this.wishes = wishes;
        this.plan = plan;
        scenario = problem.scenario;
        names = new Names(problem);
    }

    /** All of them, the plainest first. */
    List<Offer> all() {
        return offers.values().stream().limit(MOST).toList();
    }

    private void add(String step, Scenario changed) {
        offers.putIfAbsent(step, Offer.of(step, changed, plan));
    }

    /** A wish goes. */
    void without(Wish wish) {
        if (wish.held() != null) {
            letGo(wish.held());
        } else {
            String step = "Do without " + wish.name();
            boolean onlyWeek = problem.calendar.weeks() == 1;
            offers.putIfAbsent(
                    step,
                    onlyWeek
                            ? Offer.of(step, notAsked(wish), plan)
                            : new Offer(step, scenario, plan, Wishes.without(List.of(wish))));
        }
    }

    /** The scenario of one week without a wish; of several weeks a document cannot say it of one alone. */
    private Scenario notAsked(Wish wish) {
        Group group = wish.group().group;
        PerWeek highDays = group.highDays();
        if (wish.aim() == null) {
            return Amended.with(
                    scenario,
                    group.withHighDays(highDays == null ? null : new PerWeek(0, highDays.target(), highDays.most())));
        }
        String key = wish.aim().aim.key();
        List<Aim> aims = group.aims().stream()
                .map(aim -> aim.key().equals(key) ? unasked(aim) : aim)
                .toList();
        return Amended.with(scenario, group.withAims(aims));
    }

    private static Aim unasked(Aim aim) {
        return aim.withPerWeek(new PerWeek(0, 0, aim.perWeek().most()), aim.priority());
    }

    private void letGo(Session session) {
        boolean extra = session.aim == null;
        List<Placement> placements = new ArrayList<>();
        for (Placement placement : plan.placements()) {
            if (!session.id.equals(placement.id())) {
                placements.add(placement);
            } else if (!extra) {
                placements.add(placement.withPin(null));
            }
        }
        List<LeftOut> leftOut = plan.leftOut().stream()
                .filter(left -> !left.id().equals(session.id))
                .toList();
        String step = (extra ? "Leave out " : "Unpin ") + wishes.subject(session);
        offers.putIfAbsent(step, Offer.of(step, scenario, Plans.with(plan, placements, leftOut)));
    }

    /** An aim may be done in a smaller dose than it allows so far. */
    void smaller(Wish wish) {
        if (wish.aim() == null) {
            return;
        }
        Aim aim = wish.aim().aim;
        if (!aim.doses().contains(Dose.REDUCED)) {
            smaller(wish, Dose.REDUCED);
        }
        if (!aim.doses().contains(Dose.MICRO) || !aim.microCounts()) {
            smaller(wish, Dose.MICRO);
        }
    }

    private void smaller(Wish wish, Dose dose) {
        Group group = wish.group().group;
        String key = Objects.requireNonNull(wish.aim()).aim.key();
        List<Aim> aims = group.aims().stream()
                .map(aim -> aim.key().equals(key) ? withDose(aim, dose) : aim)
                .toList();
        String whose = problem.groups.size() < 2 ? "" : " of " + group.label();
        add(
                "Let " + wish.aim().family.family.label() + whose + " be done in a " + dose.id() + " dose"
                        + (dose == Dose.MICRO ? ", and count it" : ""),
                Amended.with(scenario, group.withAims(aims)));
    }

    private static Aim withDose(Aim aim, Dose dose) {
        List<Dose> doses = new ArrayList<>(aim.doses());
        doses.add(dose);
        return aim.withDoses(doses.stream().distinct().sorted().toList(), aim.microCounts() || dose == Dose.MICRO);
    }

    /** All that a survey has noted. */
    void surveyed(Obstacles survey) {
        survey.longer.forEach(this::longer);
        survey.opened.forEach((place, days) -> days.forEach(day -> opened(place, day)));
        survey.softer.values().forEach(softer -> add(softer.step(), softer.scenario()));
        survey.commitments.forEach(this::withoutCommitment);
    }

    private void longer(Longer longer) {
        Scenario given = longer.given(problem);
        if (given != null) {
            add(longer.said(problem), given);
        }
    }

    private void opened(int place, int day) {
        Facility facility = problem.facilities.get(place).facility;
        List<Away> closed = without(facility.closed(), day);
        if (closed != null) {
            add(
                    "Have " + facility.label() + " open on " + names.day(day),
                    Amended.with(scenario, facility.withClosed(closed)));
        }
    }

    private void withoutCommitment(int index) {
        Commitment commitment = scenario.commitments().get(index);
        add(
                "Give up " + commitment.label() + " (" + Names.moment(commitment.start()) + ")",
                Amended.without(scenario, commitment));
    }

    /** The group of a wish is there on a day of its week on which it is away. */
    void there(Wish wish) {
        Group group = wish.group().group;
        for (int day : days(wish)) {
            List<Away> away = without(group.away(), day);
            if (away != null) {
                add(
                        "Have " + group.label() + " there on " + names.day(day),
                        Amended.with(scenario, group.withAway(away)));
            }
        }
    }

    /** Everybody that a wish needs gives an hour more at the end of a day, one of them on one day. */
    void anHourMore(Wish wish) {
        if (wish.aim() == null) {
            return;
        }
        for (int day : days(wish)) {
            hourMore(Whose.GROUP, wish.group().index, wish.group().group.windows(), day);
        }
        for (FacilityInfo facility : problem.facilities) {
            boolean needed = facility.offers(wish.aim().family.family)
                    && !wish.aim().family.family.facility().isEmpty();
            for (int day : needed ? days(wish) : List.<Integer>of()) {
                hourMore(Whose.FACILITY, facility.index, facility.facility.open(), day);
            }
        }
    }

    private List<Integer> days(Wish wish) {
        int first = 7 * wish.week();
        return java.util.stream.IntStream.range(first, first + problem.calendar.daysIn(wish.week()))
                .boxed()
                .toList();
    }

    private void hourMore(Whose whose, int index, List<Window> hours, int day) {
        hours.stream()
                .filter(window -> window.holdsOn(problem.calendar.date(day)))
                .mapToInt(window -> problem.calendar.minute(window.to().on(problem.calendar.date(day))))
                .max()
                .ifPresent(end -> longer(new Longer(whose, index, end, end + Longer.MOST, true)));
    }

    /** Absences without one day; null where nothing lies on it. */
    private @Nullable List<Away> without(List<Away> away, int day) {
        int from = problem.calendar.minute(problem.calendar.date(day).atStartOfDay());
        int to = problem.calendar.minute(problem.calendar.date(day + 1).atStartOfDay());
        List<Away> rest = new ArrayList<>();
        for (Away one : away) {
            int first = problem.calendar.minute(one.from());
            int last = problem.calendar.minute(one.to());
            if (first >= to || last <= from) {
                rest.add(one);
                continue;
            }
            if (first < from) {
                rest.add(new Away(one.from(), moment(from), one.why()));
            }
            if (last > to) {
                rest.add(new Away(moment(to), one.to(), one.why()));
            }
        }
        return rest.equals(away) ? null : rest;
    }

    private Moment moment(int minute) {
        return problem.calendar.moment(minute);
    }
}
