package weekwright.desk.view.terminal;

import java.util.List;

/** Lines of text, none with spaces at its end. */
public final class Paper {
    private static final String BETWEEN = " · ";

    private final StringBuilder written = new StringBuilder();
    private final int columns;

    /** Paper of so many columns. */
    public Paper(int columns) {
        this.columns = columns;
    }

    /** An empty line. */
    public void blank() {
        written.append('\n');
    }

    /** A line as it is. */
    public void line(String line) {
        written.append(line.stripTrailing()).append('\n');
    }

    /** A text that goes on below its own start: what stands before it is written once, in front of the first line. */
    public void wrapped(int indent, String before, String text) {
        int hanging = indent + Plain.columns(Ink.bare(before));
        List<String> lines = Plain.wrap(text, columns - hanging);
        line(" ".repeat(indent) + before + lines.get(0));
        lines.stream().skip(1).forEach(line -> line(" ".repeat(hanging) + line));
    }

    /** Items side by side, each whole on its line. */
    public void list(int indent, List<String> items) {
        StringBuilder line = new StringBuilder();
        for (String item : items) {
            String next = line.isEmpty() ? item : BETWEEN + item;
            if (indent + Plain.columns(line + next) > columns) {
                line(" ".repeat(indent) + line);
                line.setLength(0);
                next = item;
            }
            line.append(next);
        }
        line(" ".repeat(indent) + line);
    }

    @Override
    public String toString() {
        return written.toString();
    }
}
