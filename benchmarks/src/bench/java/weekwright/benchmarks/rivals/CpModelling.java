package weekwright.benchmarks.rivals;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.Collection;

/** A model for CP-SAT under construction, with the few turns of phrase that the rules need. */
final class CpModelling {
    static {
        Loader.loadNativeLibraries();
    }

    final CpModel model = new CpModel();
    final LinearExprBuilder key = LinearExpr.newBuilder();
    final LinearExprBuilder main = LinearExpr.newBuilder();
    final LinearExprBuilder want = LinearExpr.newBuilder();

    Literal constant(boolean value) {
        return value ? model.trueLiteral() : model.falseLiteral();
    }

    BoolVar bool() {
        return model.newBoolVar("");
    }

    IntVar number(long least, long most) {
        return model.newIntVar(least, most, "");
    }

    static LinearExpr sum(Collection<? extends LinearArgument> terms) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        terms.forEach(sum::add);
        return sum.build();
    }

    /** A literal that is true exactly when one of some is. */
    Literal anyOf(Collection<? extends Literal> some) {
        if (some.isEmpty()) {
            return constant(false);
        }
        BoolVar any = bool();
        some.forEach(one -> model.addImplication(one, any));
        onlyIfOneOf(any, some);
        return any;
    }

    /** A literal may be true only when one of some is. */
    void onlyIfOneOf(Literal that, Collection<? extends Literal> some) {
        Literal[] clause = new Literal[some.size() + 1];
        int at = 0;
        for (Literal one : some) {
            clause[at++] = one;
        }
        clause[at] = that.not();
        model.addBoolOr(clause);
    }

    /** A literal that is true exactly when a sum is at least so much. */
    Literal atLeast(LinearExpr sum, long least) {
        BoolVar is = bool();
        model.addGreaterOrEqual(sum, least).onlyEnforceIf(is);
        model.addLessOrEqual(sum, least - 1).onlyEnforceIf(is.not());
        return is;
    }

    /** A literal that is true exactly when both are. */
    Literal both(LinearArgument one, Literal other) {
        BoolVar both = bool();
        model.addLessOrEqual(both, one);
        model.addImplication(both, other);
        LinearExprBuilder less = LinearExpr.newBuilder().add(one).add(other).addTerm(both, -1);
        model.addLessOrEqual(less.build(), 1);
        return both;
    }

    void never(Collection<? extends Literal> together) {
        model.addBoolOr(together.stream().map(Literal::not).toArray(Literal[]::new));
    }

    /**
     * Adds what a group pays to the wants.
     *
     * @param unitsTimesHeads units of cost times heads of those concerned
     * @param most tenths of a point that it can be at most
     */
    void pay(LinearExprBuilder into, LinearExpr unitsTimesHeads, int groupHeads, int most) {
        // Half up: twice the whole times the tenths is at least twice the cost in tenths less the whole, plus one.
        long whole = (long) Units.POINT * groupHeads;
        IntVar tenths = number(0, most);
        LinearExprBuilder enough = LinearExpr.newBuilder();
        enough.addTerm(tenths, 2 * whole).addTerm(unitsTimesHeads, -2L * Units.TENTHS);
        model.addGreaterOrEqual(enough.build(), 1 - whole);
        into.add(tenths);
    }

    /** Units of cost of minutes short, doubled beyond the first twelve hours; a lower bound that a solver makes exact. */
    IntVar shortMinutes(long most) {
        return number(0, Math.max(0, 2 * most - Units.DEAR_AFTER) + most);
    }
}
