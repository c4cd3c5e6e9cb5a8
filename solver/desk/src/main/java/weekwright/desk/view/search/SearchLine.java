package weekwright.desk.view.search;

import java.util.ArrayList;
import java.util.List;
import weekwright.desk.view.Dates;
import weekwright.model.plan.Totals;

/**
 * How far a search has come, in one short line.
 *
 * @param totals of the best plan so far
 * @param placed sessions placed in it
 * @param sessions sessions that could be placed at most, more than are wanted of some aims
 * @param moves moves tried so far
 * @param seconds seconds searched so far, or 0 where no clock is read
 */
public record SearchLine(Totals totals, int placed, int sessions, long moves, double seconds) {
    @Override
    public String toString() {
        String after = seconds > 0 ? Dates.decimal(seconds) + " s" : Dates.grouped(moves) + " moves";
        return after + ": " + placed + " of at most " + sessions + " placed; " + broken() + "; "
                + Dates.decimal(totals.want()) + " points of wishes unmet";
    }

    private String broken() {
        List<String> levels = new ArrayList<>();
        add(levels, totals.must(), " broken that must hold");
        add(levels, totals.key(), " key short");
        add(levels, totals.main(), " main short");
        return levels.isEmpty() ? "nothing broken" : String.join(", ", levels);
    }

    private static void add(List<String> levels, double amount, String words) {
        if (amount > 0) {
            levels.add(Dates.number(amount) + words);
        }
    }
}
