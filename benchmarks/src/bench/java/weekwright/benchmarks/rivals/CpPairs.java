package weekwright.benchmarks.rivals;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** In the model, what two sessions of one or two aims say to each other, day by day. */
final class CpPairs {
    private final CpModelling cp;
    private final Problem problem;

    CpPairs(CpModelling cp, Problem problem) {
        this.cp = cp;
        this.problem = problem;
    }

    /** Options of an aim on a day for the same people; one of them at most is taken, except of recovery. */
    private record Bunch(AimWeek aim, int day, List<Integer> cohorts, List<CpOption> options) {
        FamilyInfo family() {
            return aim.aim().family;
        }
    }

    /** Ties all options together. */
    void tie(List<CpOption> options) {
        Map<List<Object>, Bunch> bunches = new LinkedHashMap<>();
        Map<List<Object>, List<CpOption>> onceADay = new LinkedHashMap<>();
        for (CpOption option : options) {
            List<Integer> cohorts = Arrays.stream(option.at().cohorts).boxed().toList();
            bunches.computeIfAbsent(
                            List.of(option.aim(), option.at().day, cohorts),
                            key -> new Bunch(option.aim(), option.at().day, cohorts, new ArrayList<>()))
                    .options()
                    .add(option);
            if (!option.family().recovery && !option.family().practice) {
                onceADay.computeIfAbsent(List.of(option.family(), option.at().day), key -> new ArrayList<>())
                        .add(option);
            }
        }
        onceADay.values()
                .forEach(own -> cp.model.addAtMostOne(
                        own.stream().map(CpOption::placed).toArray(com.google.ortools.sat.Literal[]::new)));
        List<Bunch> all = List.copyOf(bunches.values());
        for (Bunch one : all) {
            for (Bunch other : all) {
                tie(one, other);
            }
        }
    }

    private void tie(Bunch earlier, Bunch later) {
        int heads = commonHeads(earlier, later);
        if (heads == 0) {
            return;
        }
        if (earlier.day() == later.day()) {
            freshestFirst(earlier, later, heads);
        } else if (earlier.day() < later.day() && (earlier.family().high & later.family().high) != 0) {
            again(earlier, later, heads);
        }
    }

    private int commonHeads(Bunch one, Bunch other) {
        return one.cohorts().stream()
                .filter(other.cohorts()::contains)
                .mapToInt(cohort -> problem.cohorts.get(cohort).heads())
                .sum();
    }

    /** What comes later in the order of a day lies before what comes earlier in it. */
    private void freshestFirst(Bunch first, Bunch second, int heads) {
        if (second.family().order == FamilyInfo.NO_ORDER || first.family().order <= second.family().order) {
            return;
        }
        int units = PairRules.units(first.family().order, second.aim().aim().aim.learning());
        int tenths = Units.share((long) units * heads, groupHeads(second));
        var broken = cp.bool();
        TreeSet<Integer> starts = new TreeSet<>();
        second.options().forEach(option -> starts.add(option.at().start));
        for (int start : starts) {
            LinearExprBuilder together = LinearExpr.newBuilder().addTerm(broken, -1);
            int before = 0;
            for (CpOption option : first.options()) {
                if (option.at().start < start) {
                    together.add(option.placed());
                    before++;
                }
            }
            for (CpOption option : second.options()) {
                if (option.at().start >= start) {
                    together.add(option.placed());
                }
            }
            if (before > 0) {
                cp.model.addLessOrEqual(together.build(), 1);
            }
        }
        cp.want.addTerm(broken, tenths);
    }

    private int groupHeads(Bunch of) {
        return of.aim().aim().group.heads;
    }

    /** The same quality on another day: hours that must pass, and hours that should. */
    private void again(Bunch earlier, Bunch later, int heads) {
        int base = later.options().stream()
                .mapToInt(option -> option.at().start)
                .min()
                .orElseThrow();
        LinearExpr floor =
                missing(earlier, later, base, option -> PairRules.hours(earlier.family().againMust, option.dose));
        if (floor != null) {
            cp.model.addLessOrEqual(floor, 0);
        }
        LinearExpr wanted = missing(earlier, later, base, option -> counted(earlier, later, option));
        if (wanted != null) {
            int most = earlier.family().againWant;
            IntVar minutes = cp.shortMinutes(most);
            cp.model.addGreaterOrEqual(minutes, wanted);
            LinearExprBuilder dear = LinearExpr.newBuilder().addTerm(wanted, 2).add(-Units.DEAR_AFTER);
            cp.model.addGreaterOrEqual(minutes, dear.build());
            LinearExpr units = LinearExpr.newBuilder()
                    .addTerm(minutes, (long) Units.A_MINUTE * heads)
                    .build();
            cp.pay(cp.want, units, groupHeads(later), most);
        }
    }

    private static int counted(Bunch earlier, Bunch later, Stimulus option) {
        int wanted = PairRules.wanted(earlier.aim().aim().group, earlier.family(), later.family(), option.dose);
        return wanted == 0 ? 0 : wanted - Units.TOLERANCE;
    }

    /** Minutes that a dose asks for. */
    private interface Asked {
        int of(Stimulus option);
    }

    /**
     * Minutes by which the gap between two sessions is too short, at least; none or less where one of them is missing.
     * Null where it can never be too short.
     */
    private @org.jspecify.annotations.Nullable LinearExpr missing(Bunch earlier, Bunch later, int base, Asked asked) {
        LinearExprBuilder missing = LinearExpr.newBuilder();
        int most = 0;
        for (CpOption option : earlier.options()) {
            int until = asked.of(option.at()) == 0 ? 0 : Math.max(0, option.at().end + asked.of(option.at()) - base);
            missing.addTerm(option.placed(), until);
            most = Math.max(most, until);
        }
        if (most == 0) {
            return null;
        }
        for (CpOption option : later.options()) {
            missing.addTerm(option.placed(), most - (option.at().start - base));
        }
        return missing.add(-most).build();
    }
}
