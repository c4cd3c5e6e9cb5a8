package weekwright.engine.weeks;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A plan that was really searched for, with the questions that a coach would ask of it. */
record SolvedWeek(Scenario scenario, Judged judged) {
    private static final long MOVES = 48_000;
    private static final int TWO_MONTHS = 8;
    private static final Map<String, SolvedWeek> SOLVED = new ConcurrentHashMap<>();

    /** A demo scenario, searched for once for each seed and shared by all tests. */
    static SolvedWeek of(String demo, long seed) {
        return SOLVED.computeIfAbsent(demo + " " + seed, key -> of(Scenarios.read(demo), seed));
    }

    /** Longer plans get more moves: a budget for each week and about eight sessions, twice that beyond two months. */
    static SolvedWeek of(Scenario scenario, long seed) {
        int goals = scenario.groups().stream()
                .mapToInt(group -> group.aims().size())
                .sum();
        long moves = MOVES * Math.max(1, scenario.weeks() * (long) goals / 8);
        long enough = scenario.weeks() > TWO_MONTHS ? 2 * moves : moves;
        Proposal proposal = new Proposal(scenario, null, Budget.moves(enough), seed, 2, null);
        return new SolvedWeek(scenario, Engine.propose(proposal, Progress.SILENT));
    }

    Plan plan() {
        return judged.plan();
    }

    Totals totals() {
        return java.util.Objects.requireNonNull(plan().totals());
    }

    /** Sessions of some families, in order of start. */
    List<Placement> placed(String... families) {
        return plan().placements().stream()
                .filter(placement -> Arrays.asList(families).contains(placement.family()))
                .toList();
    }

    /** The same of one group. */
    List<Placement> placedFor(String group, String... families) {
        return placed(families).stream()
                .filter(placement -> placement.group().equals(group))
                .toList();
    }

    List<LocalDate> dates(String... families) {
        return placed(families).stream()
                .map(placement -> placement.start().date())
                .toList();
    }

    /** Days to the next fixture, as -6 to -1, of each session of a family. */
    List<Integer> matchDays(String family) {
        return placed(family).stream().map(this::matchDay).toList();
    }

    int matchDay(Placement placement) {
        Integer matchDay = day(placement.group(), placement.start().date()).matchDay();
        return matchDay == null ? 99 : matchDay;
    }

    DayPicture day(String group, LocalDate date) {
        return days(group).stream()
                .filter(day -> day.date().equals(date))
                .findFirst()
                .orElseThrow();
    }

    List<DayPicture> days(String group) {
        return judged.days().stream().filter(day -> day.group().equals(group)).toList();
    }

    /** The days of one week of the plan, the first is 0. */
    List<DayPicture> week(String group, int week) {
        return days(group).subList(7 * week, Math.min(scenario.days(), 7 * week + 7));
    }

    List<LocalDate> days(String group, DayClass dayClass) {
        return days(group).stream()
                .filter(day -> day.dayClass() == dayClass)
                .map(DayPicture::date)
                .toList();
    }

    List<DayOfWeek> weekdays(String group, DayClass dayClass) {
        return days(group, dayClass).stream().map(LocalDate::getDayOfWeek).toList();
    }

    double load(String group, int matchDay) {
        return days(group).stream()
                .filter(day -> Integer.valueOf(matchDay).equals(day.matchDay()))
                .mapToDouble(DayPicture::load)
                .sum();
    }

    int mostHighRunning(String group) {
        int most = 0;
        int running = 0;
        for (DayPicture day : days(group)) {
            running = day.dayClass() == DayClass.HIGH ? running + 1 : 0;
            most = Math.max(most, running);
        }
        return most;
    }

    Instant start(Placement placement) {
        return placement.start().instant(scenario.zone());
    }

    Instant end(Placement placement) {
        return start(placement).plus(Duration.ofMinutes(placement.minutes()));
    }

    /** Hours that pass from the end of a session to the kick-off of a fixture. */
    double hoursBefore(Placement placement, String fixture) {
        Instant kickOff = scenario.fixtures().stream()
                .filter(one -> one.id().equals(fixture))
                .map(one -> one.start().instant(scenario.zone()))
                .findFirst()
                .orElseThrow();
        return Duration.between(end(placement), kickOff).toMinutes() / 60.0;
    }

    /** What of its group lies on the day of a session before it. */
    List<Placement> before(Placement placement) {
        return plan().placements().stream()
                .filter(other -> other.group().equals(placement.group())
                        && other.start().date().equals(placement.start().date())
                        && start(other).isBefore(start(placement)))
                .toList();
    }

    List<LeftOut> leftOut(String family) {
        return plan().leftOut().stream()
                .filter(left -> left.id().contains("/" + family + "/"))
                .toList();
    }

    /** What a rule costs here. */
    List<Finding> costs(String rule) {
        return plan().findings().stream()
                .filter(finding -> finding.rule().equals(rule) && finding.cost() > 0)
                .toList();
    }

    /** Days from each of some dates to the next. */
    static List<Long> daysBetween(List<LocalDate> dates) {
        return IntStream.range(1, dates.size())
                .mapToObj(i -> ChronoUnit.DAYS.between(dates.get(i - 1), dates.get(i)))
                .toList();
    }

    /** How often each of a line comes running. */
    static List<Integer> runs(List<String> line) {
        List<Integer> runs = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            if (i > 0 && line.get(i).equals(line.get(i - 1))) {
                runs.set(runs.size() - 1, runs.get(runs.size() - 1) + 1);
            } else {
                runs.add(1);
            }
        }
        return runs;
    }
}
