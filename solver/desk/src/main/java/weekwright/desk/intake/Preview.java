package weekwright.desk.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import weekwright.desk.app.InputFault;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.document.Problem;
import weekwright.model.scenario.Scenario;

/**
 * What was understood of a file, row by row, before anything is taken.
 *
 * @param scenario the scenario that it would be taken into
 * @param how how the file was read, sentence by sentence
 * @param questions what is open for many rows at once
 * @param notes what else to know
 */
public record Preview(Scenario scenario, List<String> how, List<String> questions, List<Row> rows, List<String> notes) {
    public Preview {
        how = List.copyOf(how);
        questions = List.copyOf(questions);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** All that is still to be answered, a sentence each. */
    public List<String> open() {
        List<String> open = new ArrayList<>(questions);
        rows.stream()
                .filter(row -> row.verdict().isOpen())
                .forEach(row -> open.add(
                        "row " + row.number() + " (" + row.place() + "): " + String.join("; ", row.remarks())));
        return open;
    }

    /** How many rows there are of each kind, e.g. {@code 3 new, 1 moved, 54 as it was}. */
    public String counts() {
        String counts = Arrays.stream(Verdict.values())
                .filter(verdict -> count(verdict) > 0)
                .map(verdict -> count(verdict) + " " + verdict.word())
                .collect(Collectors.joining(", "));
        return counts.isEmpty() ? "no rows" : counts;
    }

    /** How many rows come to this. */
    public long count(Verdict verdict) {
        return rows.stream().filter(row -> row.verdict() == verdict).count();
    }

    /**
     * The scenario with all rows taken.
     *
     * @param rest whether what is still asked about is left out
     * @throws InputFault when something is still open, or the scenario would not be sound
     */
    public Scenario take(boolean rest) {
        if (!rest && !open().isEmpty()) {
            throw new InputFault(open());
        }
        Scenario taken = scenario;
        for (Row row : rows) {
            taken = row.step().apply(taken);
        }
        return sound(taken);
    }

    /** What is written must be readable: the reader of documents has the last word. */
    private static Scenario sound(Scenario scenario) {
        try {
            return Documents.readScenario(
                    "the scenario", Documents.write(scenario).getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            List<String> problems = new ArrayList<>();
            problems.add("The file cannot be taken in: the scenario would no longer be sound.");
            e.problems().stream().map(Problem::toString).forEach(problems::add);
            throw new InputFault(problems);
        }
    }
}
