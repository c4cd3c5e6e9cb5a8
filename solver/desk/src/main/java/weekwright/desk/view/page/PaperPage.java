package weekwright.desk.view.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that is given out of a plan.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param saved the revision in force, in words
 * @param revision the revision in force
 * @param planned whether there is a plan to give out
 * @param published when it was given out, in words, or null
 * @param news what has changed since it was given out, group by group
 * @param weeks the weeks of the plan
 * @param days the days of the plan
 * @param readers who may have a sheet and a calendar of their own
 * @param chat the week as a message to those who train
 * @param told what the coach should be told once
 */
public record PaperPage(
        String base,
        String title,
        String saved,
        int revision,
        boolean planned,
        @Nullable String published,
        List<Since> news,
        List<Choice> weeks,
        List<Choice> days,
        List<Reader> readers,
        String chat,
        List<String> told) {
    public PaperPage {
        news = List.copyOf(news);
        weeks = List.copyOf(weeks);
        days = List.copyOf(days);
        readers = List.copyOf(readers);
        told = List.copyOf(told);
    }

    /** What has changed for a group. */
    public record Since(String group, String heading, List<String> lines) {
        public Since {
            lines = List.copyOf(lines);
        }
    }

    /** A day or a week by its value in an address. */
    public record Choice(String value, String label) {}

    /** A group or an athlete. */
    public record Reader(String query, String label) {}
}
