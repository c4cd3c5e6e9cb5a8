package weekwright.desk.view.page;

import java.util.List;

/**
 * The log of a day: what was to be done, and whether it is written down.
 *
 * @param base address of the folder
 * @param title title of the week
 * @param saved the revision in force, in words
 * @param day the day in words
 * @param days the days of the plan
 * @param things what was to be done on it
 */
public record LogPage(String base, String title, String saved, String day, List<Day> days, List<Thing> things) {
    public LogPage {
        days = List.copyOf(days);
        things = List.copyOf(things);
    }

    /** A day that can be looked at. */
    public record Day(String label, String address, boolean chosen) {}

    /** Something that was to be done. */
    public record Thing(String label, String note, String state, String address) {}
}
