package weekwright.desk.view.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Taking in what others have written: what is pasted or opened, and what was understood of it.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param revision the revision that it is held against
 * @param kinds what it can be taken as
 * @param owners whom it can concern
 * @param pasted the text that was pasted
 * @param content the bytes that were given, in letters that a form can carry; empty before anything was given
 * @param problems why it cannot be read
 * @param preview what was understood, or null where nothing was
 */
public record TakePage(
        String base,
        String title,
        int revision,
        List<Choice> kinds,
        List<Choice> owners,
        String pasted,
        String content,
        List<String> problems,
        @Nullable Preview preview) {
    public TakePage {
        kinds = List.copyOf(kinds);
        owners = List.copyOf(owners);
        problems = List.copyOf(problems);
    }

    /** Something that can be chosen. */
    public record Choice(String value, String label, boolean chosen) {}

    /**
     * What was understood.
     *
     * @param how how it was read, sentence by sentence
     * @param counts how many rows come to what
     * @param questions what is open for many rows at once
     * @param open how many things are still to be answered
     * @param answers what can be answered for all rows
     */
    public record Preview(
            List<String> how,
            String counts,
            List<String> questions,
            List<Row> rows,
            List<String> notes,
            int open,
            List<Answer> answers) {
        public Preview {
            how = List.copyOf(how);
            questions = List.copyOf(questions);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
            answers = List.copyOf(answers);
        }
    }

    /**
     * A row.
     *
     * @param asked whether a coach has to say whether it is right
     * @param accepted whether it was said to be right
     * @param leftOut whether it was said not to be wanted
     */
    public record Row(
            int number,
            String place,
            String verdict,
            String text,
            List<String> remarks,
            boolean asked,
            boolean accepted,
            boolean leftOut,
            String time,
            String same) {
        public Row {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * An answer for all rows.
     *
     * @param yes whether it is a yes or a no, and not a text
     */
    public record Answer(String name, String label, boolean yes, String value) {}
}
