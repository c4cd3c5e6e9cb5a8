package weekwright.desk.view.page;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where a coach begins: folders to open, invented demos, a blank week, files.
 *
 * @param where the folder in which weeks are kept
 * @param folders the folders that hold a week, the latest first
 * @param oneFolder name of the only folder that can be begun, or null where each week gets its own
 * @param names name of the new folder in each form
 * @param blank what stands in the form for a blank week
 * @param failed the form that could not be used, or null
 * @param problems why not, one line each
 */
public record StartPage(
        String where,
        List<Link> folders,
        @Nullable String oneFolder,
        List<DemoCard> demos,
        Map<Way, String> names,
        BlankForm blank,
        @Nullable Way failed,
        List<String> problems) {
    public StartPage {
        folders = List.copyOf(folders);
        demos = List.copyOf(demos);
        names = Map.copyOf(names);
        problems = List.copyOf(problems);
    }

    /** A form with which a week is begun. */
    public enum Way {
        INVENTED("demo"),
        BLANK("my-week"),
        FILES("opened");

        private final String folder;

        Way(String folder) {
            this.folder = folder;
        }

        /** What the new folder is called, unless there is one of that name. */
        public String folder() {
            return folder;
        }
    }

    /** The name of the new folder in a form. */
    public String folder(Way way) {
        return names.getOrDefault(way, way.folder());
    }

    /** What is wrong with a form. */
    public List<String> wrong(Way way) {
        return way == failed ? problems : List.of();
    }

    /**
     * A folder to open.
     *
     * @param note its dates and its fixtures
     * @param folder its name
     * @param next address at which the next week begins from it, or an empty text where it cannot be read
     */
    public record Link(String label, String note, String folder, String address, String next) {}

    /** An invented demo. */
    public record DemoCard(String name, String title, String note) {}

    /**
     * The three questions of a blank week, as they were answered last.
     *
     * @param title what it is for
     * @param firstDay first date, or an empty text
     * @param zone whose clocks
     * @param days weekdays with the hours that can be had
     * @param fixtures fixtures of the week
     * @param places places to train, by kind
     */
    public record BlankForm(
            String title,
            String firstDay,
            String zone,
            List<DayField> days,
            List<FixtureField> fixtures,
            List<PlaceField> places) {
        public BlankForm {
            days = List.copyOf(days);
            fixtures = List.copyOf(fixtures);
            places = List.copyOf(places);
        }
    }

    /** A weekday: whether it can be had, and from when to when. */
    public record DayField(String id, String label, boolean chosen, String from, String to) {}

    /** A fixture: what it is, its date and its start; all empty where there is none. */
    public record FixtureField(String label, String date, String time) {}

    /** A kind of place: whether there is one, and its name. */
    public record PlaceField(String id, String kind, boolean chosen, String label) {}
}
