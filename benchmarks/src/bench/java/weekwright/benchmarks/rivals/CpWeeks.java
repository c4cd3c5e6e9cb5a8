package weekwright.benchmarks.rivals;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import weekwright.benchmarks.rivals.PairRules.Found;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;

/**
 * Whole weeks of one squad under the yardstick rules for CP-SAT. No plan here breaks a must. A day is modelled once for all
 * cohorts for whom it is the same.
 */
final class CpWeeks {
    private static final int RUN = 4;
    private static final int NIGHT = 8 * 60;
    private static final int MOST_TENTHS = 100_000;

    final CpModelling cp = new CpModelling();
    final List<CpOption> options = new ArrayList<>();
    private final Map<Integer, List<CpOption>> byDay = new LinkedHashMap<>();
    private final Problem problem;
    private final int zero;
    private final List<CohortWeek> weeks;
    /** By cohort and day, from {@link CohortDay#EDGE} days before the plan on. */
    private final CpDay[][] days;

    CpWeeks(Problem problem) {
        this.problem = problem;
        if (problem.groups.size() > 1 || problem.calendar.days() % 7 != 0) {
            throw new IllegalArgumentException("the model is for whole weeks of one squad");
        }
        zero = problem.calendar.minute(problem.calendar.date(0).atStartOfDay());
        weeks = CohortWeek.all(problem);
        AimWeek.all(problem).forEach(this::addOptions);
        days = days();
        new CpPairs(cp, problem).tie(options);
        AimWeek.all(problem).forEach(this::count);
        rooms();
        nights();
        middleDays();
        blocks();
        weeks.forEach(this::runsAndFreeDays);
        highDays();
    }

    private void addOptions(AimWeek aim) {
        List<Session> sessions = aim.aim().sessions.get(aim.week());
        if (sessions.isEmpty()) {
            return;
        }
        Found[] alone = new AloneRules(problem).of(sessions.get(0));
        for (Stimulus at : sessions.get(0).options) {
            if (alone[at.option].musts() == 0 && somebodyLeads(at)) {
                CpOption option = new CpOption(aim, at, cp.bool());
                options.add(option);
                byDay.computeIfAbsent(at.day, day -> new ArrayList<>()).add(option);
                cp.want.addTerm(option.placed(), alone[at.option].tenths());
            }
        }
    }

    /** One squad never has two sessions of all at once, so that whoever works then is free. */
    private boolean somebodyLeads(Stimulus at) {
        boolean needed = problem.staff.stream().anyMatch(member -> problem.mayLead(member.index, at.index));
        return !needed
                || problem.staff.stream()
                        .anyMatch(member -> problem.mayLead(member.index, at.index) && member.works(at.start, at.end));
    }

    private CpDay[][] days() {
        CpDay[][] made = new CpDay[problem.cohorts.size()][problem.calendar.days() + 2 * CohortDay.EDGE];
        Map<List<Object>, CpDay> alike = new LinkedHashMap<>();
        for (CohortDay day : CohortDay.all(problem)) {
            List<CpOption> own = onDay(day.day()).stream()
                    .filter(option -> option.at().has(day.cohort()))
                    .toList();
            List<Object> key = new ArrayList<>(List.of(day.day(), own, day.fixed(), day.longTravel()));
            day.fixed().forEach(thing -> {
                key.add(thing.demandFor(day.cohort()));
                key.add(thing.loadFor(day.cohort()));
                key.add(thing.playedBy(day.cohort()));
            });
            made[day.cohort()][day.day() + CohortDay.EDGE] =
                    alike.computeIfAbsent(key, k -> new CpDay(cp, problem, day, own, zero));
        }
        return made;
    }

    private CpDay day(int cohort, int day) {
        return days[cohort][day + CohortDay.EDGE];
    }

    private void count(AimWeek aim) {
        List<CpOption> own =
                options.stream().filter(option -> option.aim().equals(aim)).toList();
        LinearExpr all = CpModelling.sum(own.stream().map(CpOption::placed).toList());
        LinearExpr counted = CpModelling.sum(own.stream()
                .filter(option -> aim.counts(option.at().dose))
                .map(CpOption::placed)
                .toList());
        cp.model.addLessOrEqual(all, aim.most());
        int least = aim.aim().least(aim.week());
        int target = aim.aim().target(aim.week());
        IntVar owed = cp.number(0, aim.owed(0));
        cp.model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(owed).add(counted).build(), aim.owed(0));
        long tenths = (long) Units.TENTHS * (aim.priority() == Priority.SPARE ? aim.points() : 1);
        LinearExprBuilder level = switch (aim.priority()) {
            case KEY -> cp.key;
            case MAIN -> cp.main;
            case SPARE -> cp.want;
        };
        level.addTerm(owed, tenths);
        // Below the least nothing more is missing of the target than lies between the two.
        IntVar reached = cp.number(least, 100);
        LinearExpr there =
                LinearExpr.newBuilder().add(all).add(aim.commitments()).build();
        cp.model.addMaxEquality(reached, new LinearExpr[] {there, LinearExpr.constant(least)});
        IntVar wanted = cp.number(0, Math.max(0, target - least));
        cp.model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(wanted).add(reached).build(), target);
        cp.want.addTerm(wanted, (long) Units.TENTHS * aim.points());
    }

    private void rooms() {
        Common common = new Common(problem);
        Map<List<Integer>, List<CpOption>> starts = new LinkedHashMap<>();
        for (CpOption option : options) {
            if (option.at().facility >= 0) {
                starts.computeIfAbsent(List.of(option.at().facility, option.at().start), k -> new ArrayList<>())
                        .add(option);
            }
        }
        starts.forEach((key, beginning) -> {
            List<Literal> there = onDay(beginning.get(0).at().day).stream()
                    .filter(option -> option.at().facility == key.get(0))
                    .filter(option -> option.at().start <= key.get(1) && option.at().end > key.get(1))
                    .<Literal>map(CpOption::placed)
                    .toList();
            cp.model.addLessOrEqual(
                    CpModelling.sum(there),
                    common.roomAtStartOf(beginning.get(0).at()));
        });
    }

    private void nights() {
        for (CpOption evening : options) {
            for (int day : List.of(evening.at().day - 1, evening.at().day + 1)) {
                boolean tooShort = Arrays.stream(evening.at().cohorts)
                        .mapToObj(cohort -> day(cohort, day).of.fixed())
                        .flatMap(List::stream)
                        .anyMatch(fixed -> fixed.family != null && nightTooShort(evening.at(), fixed));
                if (tooShort) {
                    cp.never(List.of(evening.placed()));
                }
            }
            for (CpOption morning : onDay(evening.at().day + 1)) {
                boolean tooShort = morning.at().start - evening.at().end < NIGHT;
                if (tooShort && AloneRules.sharesSomebody(evening.at(), morning.at())) {
                    cp.never(List.of(evening.placed(), morning.placed()));
                }
            }
        }
    }

    private List<CpOption> onDay(int day) {
        return byDay.getOrDefault(day, List.of());
    }

    private static boolean nightTooShort(Stimulus one, Stimulus fixed) {
        return one.day < fixed.day ? fixed.occupiedStart - one.end < NIGHT : one.start - fixed.occupiedEnd < NIGHT;
    }

    private int groupHeads() {
        return problem.groups.get(0).heads;
    }

    private void middleDays() {
        int units = Units.MIDDLE_DAY * (problem.groups.get(0).keepsDaysApart() ? 2 : 1);
        for (int day = 0; day < problem.calendar.days(); day++) {
            LinearExprBuilder cost = LinearExpr.newBuilder();
            boolean judged = false;
            for (int cohort = 0; cohort < days.length; cohort++) {
                CpDay its = day(cohort, day);
                judged |= its.of.judgesMiddle();
                Literal ours = its.of.fixedDay().middle() ? cp.both(its.middle, placed(its)) : its.middle;
                cost.addTerm(ours, (long) units * problem.cohorts.get(cohort).heads());
            }
            if (judged) {
                cp.pay(cp.want, cost.build(), groupHeads(), MOST_TENTHS);
            }
        }
    }

    private Literal placed(CpDay its) {
        return cp.anyOf(onDay(its.of.day()).stream()
                .filter(option -> option.at().has(its.of.cohort()))
                .<Literal>map(CpOption::placed)
                .toList());
    }

    /** From each high block to the next within five days. */
    private void blocks() {
        Map<List<CpDay>, IntVar> known = new LinkedHashMap<>();
        for (int day = -CohortDay.EDGE; day < problem.calendar.days(); day++) {
            for (int next = Math.max(0, day + 1);
                    next <= day + CohortDay.EDGE && next < problem.calendar.days() + CohortDay.EDGE;
                    next++) {
                LinearExprBuilder cost = LinearExpr.newBuilder();
                boolean any = false;
                for (int cohort = 0; cohort < days.length; cohort++) {
                    List<CpDay> stretch = new ArrayList<>();
                    for (int of = day; of <= next; of++) {
                        stretch.add(day(cohort, of));
                    }
                    IntVar minutes = known.containsKey(stretch) ? known.get(stretch) : tie(stretch);
                    known.put(stretch, minutes);
                    if (minutes != null) {
                        any = true;
                        cost.addTerm(
                                minutes,
                                (long) Units.A_MINUTE
                                        * problem.cohorts.get(cohort).heads());
                    }
                }
                if (any) {
                    cp.pay(cp.want, cost.build(), groupHeads(), MOST_TENTHS);
                }
            }
        }
    }

    /** Minutes short between the first and the last day's blocks, where those between have none; null if never. */
    private @org.jspecify.annotations.Nullable IntVar tie(List<CpDay> stretch) {
        CpDay earlier = stretch.get(0);
        CpDay later = stretch.get(stretch.size() - 1);
        boolean ours = earlier.of.inPlan() || later.of.inPlan();
        int counted = later.of.wantedBetweenBlocks() - Units.TOLERANCE;
        int least = 24 * 60 * (stretch.size() - 2);
        if (!ours || !earlier.canBeBlock() || !later.canBeBlock() || least > Math.max(counted, 24 * 60)) {
            return null;
        }
        List<Literal> when = new ArrayList<>(List.of(earlier.block, later.block));
        stretch.subList(1, stretch.size() - 1).forEach(between -> when.add(between.block.not()));
        Literal[] inTurn = when.toArray(Literal[]::new);
        LinearExprBuilder gap = LinearExpr.newBuilder().add(later.blockStart).addTerm(earlier.blockEnd, -1);
        LinearExprBuilder floor = LinearExpr.newBuilder().add(gap.build()).addTerm(earlier.blockCross, -1);
        cp.model.addGreaterOrEqual(floor.build(), 0).onlyEnforceIf(inTurn);
        when.add(alike(earlier, later).not());
        Literal[] different = when.toArray(Literal[]::new);
        IntVar minutes = cp.shortMinutes(counted + 24 * 60);
        LinearExpr gapOnly = gap.build();
        cp.model
                .addGreaterOrEqual(
                        LinearExpr.newBuilder().add(minutes).add(gapOnly).build(), counted)
                .onlyEnforceIf(different);
        cp.model
                .addGreaterOrEqual(
                        LinearExpr.newBuilder().add(minutes).addTerm(gapOnly, 2).build(),
                        2L * counted - Units.DEAR_AFTER)
                .onlyEnforceIf(different);
        return minutes;
    }

    private Literal alike(CpDay earlier, CpDay later) {
        int qualities = 0;
        for (CpOption option : options) {
            qualities |= option.family().high;
        }
        for (Stimulus fixed : problem.fixed) {
            qualities |= fixed.family == null ? 0 : fixed.family.high;
        }
        List<Literal> both = new ArrayList<>();
        for (int bit = 0; qualities >> bit != 0; bit++) {
            if ((qualities >> bit & 1) != 0) {
                both.add(cp.both(earlier.quality(bit), later.quality(bit)));
            }
        }
        return cp.anyOf(both);
    }

    private void runsAndFreeDays(CohortWeek week) {
        int first = 7 * week.week();
        for (int start = first - RUN + 1; start < first + 7; start++) {
            List<CpDay> run = new ArrayList<>();
            for (int day = start; day < start + RUN; day++) {
                run.add(day(week.cohort(), day));
            }
            if (!run.stream().allMatch(day -> day.of.fixedDay().highRunning())) {
                cp.never(run.stream().map(day -> day.highRunning).toList());
            }
        }
        if (week.couldBeFree()) {
            cp.model.addLessOrEqual(CpModelling.sum(ofWeek(week, day -> day.busy)), 6);
        }
    }

    private List<Literal> ofWeek(CohortWeek week, java.util.function.Function<CpDay, Literal> what) {
        List<Literal> all = new ArrayList<>();
        for (int day = 7 * week.week(); day < 7 * week.week() + 7; day++) {
            all.add(what.apply(day(week.cohort(), day)));
        }
        return all;
    }

    private void highDays() {
        for (int week = 0; week < problem.calendar.weeks(); week++) {
            LinearExprBuilder owed = LinearExpr.newBuilder();
            LinearExprBuilder wanted = LinearExpr.newBuilder();
            for (CohortWeek its : weeks) {
                if (its.week() == week && its.asked() != null) {
                    highDays(its, Objects.requireNonNull(its.asked()), owed, wanted);
                }
            }
            cp.pay(cp.key, owed.build(), groupHeads(), MOST_TENTHS);
            cp.pay(cp.want, wanted.build(), groupHeads(), MOST_TENTHS);
        }
    }

    private void highDays(CohortWeek week, PerWeek asked, LinearExprBuilder owed, LinearExprBuilder wanted) {
        LinearExpr high = CpModelling.sum(ofWeek(week, day -> day.high));
        LinearExpr ours =
                CpModelling.sum(ofWeek(week, day -> day.of.fixedDay().high() ? cp.constant(false) : day.high));
        int fixed = 0;
        for (int day = 7 * week.week(); day < 7 * week.week() + 7; day++) {
            fixed += day(week.cohort(), day).of.fixedDay().high() ? 1 : 0;
        }
        cp.model.addLessOrEqual(ours, Math.max(0, asked.most() - fixed));
        if (week.restricted()) {
            return;
        }
        owed.addTerm(missing(asked.least(), high), (long) Units.POINT * week.heads());
        wanted.addTerm(missing(asked.target(), high), (long) Units.MISSING_HIGH_DAY * week.heads());
        IntVar over = cp.number(0, 7);
        cp.model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(over).addTerm(ours, -1).build(), -Math.max(0, asked.target() - fixed));
        wanted.addTerm(over, (long) Units.HIGH_DAY_TOO_MANY * week.heads());
    }

    private IntVar missing(int asked, LinearExpr there) {
        IntVar missing = cp.number(0, asked);
        cp.model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(missing).add(there).build(), asked);
        return missing;
    }
}
