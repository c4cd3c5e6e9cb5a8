package weekwright.desk.intake;

import java.util.List;
import java.util.function.UnaryOperator;
import weekwright.model.scenario.Scenario;

/**
 * A row of a preview.
 *
 * @param number its number, by which answers name it
 * @param place where it stands in the file
 * @param text what was understood of it
 * @param remarks what is to be said or asked
 * @param step what it does to a scenario when it is taken
 */
public record Row(
        int number, String place, Verdict verdict, String text, List<String> remarks, UnaryOperator<Scenario> step) {
    public Row {
        remarks = List.copyOf(remarks);
    }

    /** A row that does nothing. */
    public static Row still(int number, String place, Verdict verdict, String text, List<String> remarks) {
        return new Row(number, place, verdict, text, remarks, scenario -> scenario);
    }
}
