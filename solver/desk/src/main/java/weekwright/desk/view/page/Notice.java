package weekwright.desk.view.page;

import java.util.List;

/**
 * Something that a coach is told on a page of its own or at the head of another.
 *
 * @param title what it is about, in a few words
 * @param lines what happened, and what to do
 * @param ways where to go from here
 */
public record Notice(String title, List<String> lines, List<Way> ways) {
    public Notice {
        lines = List.copyOf(lines);
        ways = List.copyOf(ways);
    }

    /** A way to go. */
    public record Way(String label, String address) {}
}
