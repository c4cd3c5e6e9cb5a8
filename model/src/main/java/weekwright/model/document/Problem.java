package weekwright.model.document;

import java.util.Comparator;

/**
 * One fault of a document: where it is, what is wrong and what would be right. All texts are safe to print: control
 * characters stand in them as escapes.
 *
 * @param file name of the file as it was given
 * @param path the field, such as {@code groups[1].aims[0].family}; empty for the document as a whole
 * @param line line, counted from 1
 * @param column column, counted from 1 in characters
 * @param wrong what is wrong, without a full stop
 * @param right what would be right, a sentence or two
 */
public record Problem(String file, String path, int line, int column, String wrong, String right)
        implements Comparable<Problem> {
    private static final Comparator<Problem> BY_POSITION = Comparator.comparingInt(Problem::line)
            .thenComparingInt(Problem::column)
            .thenComparing(Problem::path)
            .thenComparing(Problem::wrong);

    public Problem {
        file = Shown.safe(file);
        path = Shown.safe(path);
        wrong = Shown.safe(wrong);
        right = Shown.safe(right);
    }

    /** Problems of one document in the order in which they stand in it. */
    @Override
    public int compareTo(Problem other) {
        return BY_POSITION.compare(this, other);
    }

    /** One line: {@code file: path, line 12:18: what is wrong. What would be right}. */
    @Override
    public String toString() {
        return file + ": " + (path.isEmpty() ? "" : path + ", ") + "line " + line + ":" + column + ": " + wrong + ". "
                + right;
    }
}
