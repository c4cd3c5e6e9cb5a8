package weekwright.model.document;

import java.util.List;
import java.util.stream.Collectors;

/** A document cannot be used: all that is wrong with it, in the order in which it stands there. */
public final class DocumentException extends Exception {
    private final transient List<Problem> problems;

    DocumentException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** The problems, sorted by position; never empty. */
    public List<Problem> problems() {
        return problems;
    }
}
