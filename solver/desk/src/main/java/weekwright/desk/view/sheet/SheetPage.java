package weekwright.desk.view.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A day sheet in words, as it is set on a terminal, a page or paper.
 *
 * @param title title of the scenario
 * @param day the day in words
 * @param who name of the only athlete, or null where it is for all
 */
public record SheetPage(String title, String day, @Nullable String who, List<Lane> lanes, List<String> cautions) {
    public SheetPage {
        lanes = List.copyOf(lanes);
        cautions = List.copyOf(cautions);
    }

    /** Whether a cell holds a number, not words. */
    public static boolean isNumber(String cell) {
        return !cell.isEmpty() && (Character.isDigit(cell.charAt(0)) || cell.startsWith("≤"));
    }

    /**
     * A group's day.
     *
     * @param facts match day and how demanding the day is
     * @param blocks what lies on it, in order of time
     */
    public record Lane(String label, String facts, List<Block> blocks) {
        public Lane {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * A fixture, a practice or a session; of the first two only time, label and facts are known.
     *
     * @param time from when to when
     * @param facts place and lead
     * @param warmUpLabel heading of the warm-up
     * @param warmUp the warm-up in words; empty for none
     * @param parts the work of the group, then where that of another level differs
     * @param tables numbers of the athletes
     * @param out who does not take part, and what is done instead
     */
    public record Block(
            String time,
            String label,
            String facts,
            List<String> remarks,
            String warmUpLabel,
            List<String> warmUp,
            List<Part> parts,
            List<Table> tables,
            List<Line> out) {
        public Block {
            remarks = List.copyOf(remarks);
            warmUp = List.copyOf(warmUp);
            parts = List.copyOf(parts);
            tables = List.copyOf(tables);
            out = List.copyOf(out);
        }
    }

    /**
     * What those of a level do.
     *
     * @param level heading where it is not for all, or null
     * @param steps the work, line by line
     * @param rules what ends the work, and metres or contacts in all
     */
    public record Part(@Nullable String level, List<Step> steps, List<String> rules) {
        public Part {
            steps = List.copyOf(steps);
            rules = List.copyOf(rules);
        }
    }

    /**
     * A line of work.
     *
     * @param amount sets, repetitions, distance
     * @param effort share of the best, repetitions in reserve; empty where none is given
     * @param rest rest; empty where none is given
     * @param note what else to know; empty for nothing
     */
    public record Step(String label, String amount, String effort, String rest, String note) {}

    /**
     * The numbers of athletes.
     *
     * @param columns headings of the numbers; empty where there are only notes
     * @param feet what those go by who have no numbers, and how to read it
     */
    public record Table(List<String> columns, List<Row> rows, List<String> feet) {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            feet = List.copyOf(feet);
        }
    }

    /**
     * The numbers of an athlete.
     *
     * @param cells one a column
     * @param notes what to know of the numbers; empty for nothing
     */
    public record Row(String name, List<String> cells, String notes) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Something said of somebody. */
    public record Line(String name, String text) {}
}
