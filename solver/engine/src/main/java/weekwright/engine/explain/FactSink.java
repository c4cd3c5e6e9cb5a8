package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.AimView;
import weekwright.engine.rules.BookingView;
import weekwright.engine.rules.Breach;
import weekwright.engine.rules.GroupView;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.JudgedRule;
import weekwright.engine.rules.LeadsView;
import weekwright.engine.rules.LiftView;
import weekwright.engine.rules.PairView;
import weekwright.engine.rules.PlacementView;
import weekwright.engine.rules.Price;
import weekwright.engine.rules.Sink;
import weekwright.engine.rules.View;
import weekwright.model.catalogue.Demands;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Pathway;

/** Keeps every breach as a fact. */
final class FactSink implements Sink {
    private final Problem problem;
    private final Judge judge;
    private final List<Fact> facts = new ArrayList<>();
    private final Set<Key> known = new HashSet<>();
    private int part = Judge.FIXED;

    FactSink(Problem problem, Judge judge) {
        this.problem = problem;
        this.judge = judge;
    }

    /** All that is broken and told of a plan as it stands. */
    static List<Fact> all(Problem problem, Judge judge) {
        FactSink sink = new FactSink(problem, judge);
        judge.explainByPart(sink::in);
        judge.explainFixed(sink.in(Judge.FIXED));
        return sink.facts();
    }

    /** Says which part of the plan the next breaches belong to. */
    FactSink in(int number) {
        part = number;
        return this;
    }

    List<Fact> facts() {
        return facts;
    }

    @Override
    public void breach(JudgedRule rule, View view, Breach breach, int groupHeads) {
        boolean told = breach.isTold() || rule.level() == RuleLevel.TOLD;
        Key subject = Key.of(part, rule, view, breach);
        if (view instanceof PairView && known.contains(subject)) {
            return; // seen from the other side before
        }
        int[] cohorts = breach.cohorts();
        List<Stimulus> things = things(rule, view, breach, cohorts);
        facts.add(new Fact(
                key(subject, told),
                rule,
                told ? RuleLevel.TOLD : rule.level(),
                told ? 0 : Price.tenths(rule, breach, groupHeads),
                breach.heads(),
                view.group(),
                groups(view, things),
                Arrays.stream(cohorts).boxed().toList(),
                breach.athletes(),
                things,
                session(view),
                facility(rule, view),
                aim(view),
                firstDay(view, breach),
                lastDay(view, breach),
                breach.detail(),
                breach.measured(),
                breach.limit()));
    }

    private List<GroupInfo> groups(View view, List<Stimulus> things) {
        if (view instanceof PlacementView) {
            return List.of(view.group());
        }
        List<GroupInfo> ofSessions = things.stream()
                .filter(thing -> thing.placed() && !(view instanceof GroupView))
                .map(thing -> problem.groups.get(thing.group))
                .distinct()
                .toList();
        return ofSessions.isEmpty() ? List.of(view.group()) : ofSessions;
    }

    /** What is only told is never looked for again; what counts has a key of its own. */
    private Key key(Key key, boolean told) {
        Key own = key;
        while (!told && !known.add(own)) {
            own = own.next();
        }
        return own;
    }

    private static @Nullable Session session(View view) {
        return view instanceof PlacementView placement ? placement.session() : null;
    }

    private @Nullable FacilityInfo facility(JudgedRule rule, View view) {
        if (view instanceof BookingView booking) {
            return booking.facility();
        }
        boolean ofPlace = rule.id().startsWith("facility-") || rule.id().equals("preferred-facility");
        if (ofPlace && view instanceof PlacementView placement) {
            Stimulus at = placement.at();
            return at == null || at.facility < 0 ? null : problem.facilities.get(at.facility);
        }
        return null;
    }

    private static @Nullable AimInfo aim(View view) {
        if (view instanceof AimView aim) {
            return aim.aim();
        }
        if (view instanceof LiftView lift) {
            return lift.line().aim();
        }
        if (view instanceof LeadsView leads) {
            return leads.aim();
        }
        return view instanceof PlacementView placement ? placement.session().aim : null;
    }

    private int firstDay(View view, Breach breach) {
        if (view instanceof PairView pair) {
            return dayOf(pair);
        }
        if (view instanceof PlacementView placement) {
            Stimulus at = placement.at();
            return at == null ? breach.firstDay() : at.day;
        }
        return view instanceof BookingView booking ? booking.booking().day : breach.firstDay();
    }

    /** The day of the first that is placed; of two fixed things that of the first which lies in the plan. */
    private int dayOf(PairView pair) {
        Stimulus first = pair.first();
        Stimulus second = pair.second();
        boolean later = second.placed() || (!inPlan(first.day) && inPlan(second.day));
        return first.placed() || !later ? first.day : second.day;
    }

    private boolean inPlan(int day) {
        return day >= 0 && day < problem.calendar.days();
    }

    private int lastDay(View view, Breach breach) {
        boolean ofOneDay = view instanceof PairView || view instanceof PlacementView || view instanceof BookingView;
        return ofOneDay ? firstDay(view, breach) : breach.lastDay();
    }

    private List<Stimulus> things(JudgedRule rule, View view, Breach breach, int[] cohorts) {
        if (view instanceof PairView pair) {
            return List.of(pair.first(), pair.second());
        }
        if (view instanceof PlacementView placement) {
            Stimulus at = placement.at();
            return at == null
                    ? List.of()
                    : Stream.concat(Stream.of(at), breach.about().stream()).toList();
        }
        if (view instanceof BookingView booking) {
            return List.copyOf(booking.running());
        }
        if (view instanceof LiftView lift) {
            return List.copyOf(lift.shown());
        }
        if (view instanceof LeadsView leads) {
            return List.of(leads.first(), leads.second());
        }
        if (!breach.about().isEmpty()) {
            return breach.about();
        }
        if (view instanceof AimView aim) {
            return aim.aim().sessions.get(aim.week()).stream()
                    .map(judge::at)
                    .filter(java.util.Objects::nonNull)
                    .sorted(Stimulus::inOrder)
                    .toList();
        }
        return cohorts.length == 0 ? List.of() : onDays(rule, (GroupView) view, breach, cohorts[0]);
    }

    /** What lies on the days that a finding is about, for the first of the cohorts concerned. */
    private List<Stimulus> onDays(JudgedRule rule, GroupView view, Breach breach, int cohort) {
        return switch (rule.id()) {
            case "free-day", "six-days-running", "speed-exposure", "pathway-neglected" -> List.of();
            case "week-load", "load-spread", "load-ratio" -> List.of();
            case "college-in-season", "college-out-of-season", "youth" ->
                breach.firstDay() == breach.lastDay() ? between(cohort, breach, false) : List.of();
            case "taper" -> List.of(view.fixture());
            case "return-dose" -> sprints(cohort, breach.firstDay());
            case "night-rest", "night-rest-margin" -> eveningAndMorning(cohort, breach.firstDay());
            case "visits-per-day", "visit-size", "short-wait", "no-middle-day" -> between(cohort, breach, false);
            case "load-falls-to-fixture", "free-day-place" ->
                withFixture(view.fixture(), between(cohort, breach, false));
            default -> between(cohort, breach, true);
        };
    }

    private List<Stimulus> between(int cohort, Breach breach, boolean hardOnly) {
        List<Stimulus> found = new ArrayList<>();
        for (int day = breach.firstDay(); day <= breach.lastDay(); day++) {
            for (Stimulus thing : judge.things(cohort, day)) {
                if (thing.family != null && (!hardOnly || thing.demandFor(cohort) > Demands.LOW_TO)) {
                    found.add(thing);
                }
            }
        }
        return found;
    }

    private List<Stimulus> sprints(int cohort, int day) {
        return Stream.of(judge.things(cohort, day))
                .filter(thing ->
                        thing.placed() && thing.family != null && thing.family.family.high(Pathway.MAX_VELOCITY_SPRINT))
                .toList();
    }

    private List<Stimulus> eveningAndMorning(int cohort, int day) {
        Stimulus last = null;
        for (Stimulus thing : judge.things(cohort, day)) {
            boolean later = thing.family != null && (last == null || thing.occupiedEnd > last.occupiedEnd);
            last = later ? thing : last;
        }
        Stimulus first = null;
        for (Stimulus thing : judge.things(cohort, day + 1)) {
            boolean earlier = thing.family != null && (first == null || thing.occupiedStart < first.occupiedStart);
            first = earlier ? thing : first;
        }
        return last == null || first == null ? List.of() : List.of(last, first);
    }

    private static List<Stimulus> withFixture(Stimulus fixture, List<Stimulus> others) {
        List<Stimulus> all = new ArrayList<>();
        all.add(fixture);
        all.addAll(others);
        return all.stream().distinct().toList();
    }
}
