package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.Cost;
import weekwright.model.plan.Totals;

/** What a change costs, in words. */
public final class Prices {
    /** Tenths in one. */
    private static final double ONE = 10.0;

    private Prices() {}

    /** A change of the totals in words, e.g. {@code saves 3.5 points}. */
    public static String said(Totals change) {
        Cost cost = new Cost();
        cost.must = Math.round(change.must() * ONE);
        cost.key = Math.round(change.key() * ONE);
        cost.main = Math.round(change.main() * ONE);
        cost.want = Math.round(change.want() * ONE);
        return said(cost);
    }

    /** E.g. {@code costs 14 points more} or {@code key work falls short by 1 less, saves 3.5 points}. */
    static String said(Cost change) {
        List<String> parts = new ArrayList<>();
        if (change.must > 0) {
            parts.add(Names.count((int) (change.must / ONE), "more thing") + " that must hold would not");
        } else if (change.must < 0) {
            parts.add("mends " + Names.count((int) (-change.must / ONE), "thing") + " that must hold");
        }
        shortfall(parts, "key", change.key);
        shortfall(parts, "main", change.main);
        if (change.want > 0) {
            parts.add("costs " + points(change.want) + " more");
        } else if (change.want < 0) {
            parts.add("saves " + points(-change.want));
        }
        return parts.isEmpty() ? "costs nothing more" : String.join(", ", parts);
    }

    private static void shortfall(List<String> parts, String level, long tenths) {
        if (tenths != 0) {
            parts.add(level + " work falls short by " + Names.number(Math.abs(tenths) / ONE)
                    + (tenths > 0 ? " more" : " less"));
        }
    }

    private static String points(long tenths) {
        return Names.number(tenths / ONE) + (tenths == ONE ? " point" : " points");
    }
}
