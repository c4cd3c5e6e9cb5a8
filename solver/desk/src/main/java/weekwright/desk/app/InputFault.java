package weekwright.desk.app;

import java.util.List;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Problem;

/** What was given cannot be used; nothing was written. */
public final class InputFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<String> problems;

    /** Several problems, one sentence each; never none. */
    public InputFault(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    /** One problem, in a sentence. */
    public InputFault(String problem) {
        this(List.of(problem));
    }

    /** All that is wrong with a document. */
    static InputFault of(DocumentException fault) {
        return new InputFault(fault.problems().stream().map(Problem::toString).toList());
    }

    /** All that is wrong, one line each: what, where and what would be right. */
    public List<String> problems() {
        return problems;
    }
}
