package weekwright.desk.intake;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is to be said of one entry of a file: collected while it is read. */
public final class Remarks {
    private final List<String> notes = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();
    private @Nullable String fault;

    /** Something to know. */
    public void note(String note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }

    /** Something that a coach has to say yes to. */
    public void doubt(String doubt) {
        if (!doubts.contains(doubt)) {
            doubts.add(doubt);
        }
    }

    /** Why it cannot be used; the first reason counts. */
    public void fault(String reason) {
        if (fault == null) {
            fault = reason;
        }
    }

    /** Why it cannot be used, or null. */
    public @Nullable String fault() {
        return fault;
    }

    /** What a coach has to say yes to. */
    public List<String> doubts() {
        return List.copyOf(doubts);
    }

    /** What to know. */
    public List<String> notes() {
        return List.copyOf(notes);
    }
}
