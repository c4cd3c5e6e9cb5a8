package weekwright.desk.view.load;

import java.util.List;

/**
 * Load planned and done as pictures, each with a table of the same figures.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param saved the revision in force, in words
 * @param until up to when anything was reported, in words
 * @param people groups, then athletes
 * @param choices whose load can be looked at
 * @param notes what the figures are, and what is held against them
 * @param log how what was done agrees with the plan
 */
public record LoadPage(
        String base,
        String title,
        String saved,
        String until,
        List<Person> people,
        List<Choice> choices,
        List<String> notes,
        List<String> log) {
    public LoadPage {
        people = List.copyOf(people);
        choices = List.copyOf(choices);
        notes = List.copyOf(notes);
        log = List.copyOf(log);
    }

    /** Whose load can be looked at. */
    public record Choice(String label, String address, boolean chosen) {}

    /**
     * A group's usual member, or an athlete.
     *
     * @param wide width of the picture
     * @param most the highest day, in AU
     * @param bars days in order
     * @param marks where weeks begin
     * @param days the days of its weeks, as headings
     * @param weeks the same week by week
     * @param highDays high days planned week by week; empty for an athlete
     * @param exposures when each quality was and will be met at high intensity
     * @param ratios how the days compare with the weeks before
     */
    public record Person(
            String label,
            int wide,
            String most,
            List<Bar> bars,
            List<Mark> marks,
            List<String> days,
            List<Week> weeks,
            List<String> highDays,
            List<Exposure> exposures,
            List<String> ratios) {
        public Person {
            bars = List.copyOf(bars);
            marks = List.copyOf(marks);
            days = List.copyOf(days);
            weeks = List.copyOf(weeks);
            highDays = List.copyOf(highDays);
            exposures = List.copyOf(exposures);
            ratios = List.copyOf(ratios);
        }
    }

    /** A day of the picture. */
    public record Bar(String x, String y, String high, boolean done) {}

    /** Where a week begins. */
    public record Mark(String x, String text) {}

    /** A week of the table. */
    public record Week(
            String from,
            String series,
            List<String> days,
            String total,
            String change,
            String monotony,
            String strain) {
        public Week {
            days = List.copyOf(days);
        }
    }

    /** When a quality is met. */
    public record Exposure(String quality, String last, String next, String age) {}
}
