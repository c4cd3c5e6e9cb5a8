package weekwright.desk.page;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.Folders;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.export.Calendars;
import weekwright.desk.export.Calendars.Edition;
import weekwright.desk.export.Whose;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Revision;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * Calendars of readers, each made from all that the plan of its folder was. How far a folder has been followed is kept, so that a
 * revision is read once for a reader; one that holds the same week as the one before it is not read at all.
 */
final class CalendarCourses {
    private final Map<Reader, Course> courses = new ConcurrentHashMap<>();

    /** What a folder still knows of its past. */
    interface Past {
        List<Revision> history();

        Contents contents(int number);

        /** The past of a folder that is open. */
        static Past of(Workplace place) {
            return new Past() {
                @Override
                public List<Revision> history() {
                    return place.history();
                }

                @Override
                public Contents contents(int number) {
                    return place.contents(number);
                }
            };
        }
    }

    /** What is in force: its plan is judged. */
    record Now(Revision revision, Scenario scenario, Plan plan) {
        static Now of(Seen seen) {
            return new Now(seen.revision(), seen.scenario(), seen.judged().plan());
        }
    }

    /**
     * Whose calendar.
     *
     * @param folder name of the folder
     * @param whose {@code group:} or {@code athlete:} and an id
     * @param scenario id of its scenario: under another it is another calendar
     */
    private record Reader(String folder, String whose, String scenario, ZoneId zone) {
        Whose in(Scenario one) {
            String id = whose.substring(whose.indexOf(':') + 1);
            return whose.startsWith("group:") ? Whose.of(one, id, null) : Whose.of(one, null, id);
        }
    }

    /**
     * How far a calendar has come.
     *
     * @param last the last revision that was followed, or null before the first
     * @param calendar the calendar up to it, or null while there was none
     */
    private record Course(@Nullable Revision last, @Nullable Calendars calendar) {
        static final Course NONE = new Course(null, null);

        boolean isAfter(Revision revision) {
            return last != null && revision.number() <= last.number();
        }

        boolean shows(Revision revision) {
            return last != null && week(last).equals(week(revision));
        }

        private static List<String> week(Revision revision) {
            return List.of(
                    revision.files().getOrDefault(Folders.SCENARIO, ""),
                    revision.files().getOrDefault(Folders.PLAN, ""));
        }
    }

    /**
     * The calendar of a reader as it is to be written now.
     *
     * @param folder name of the folder
     * @param whose {@code group:} or {@code athlete:} and an id
     * @throws InputFault when the scenario in force has no such group or athlete
     */
    String text(String folder, String whose, Past past, Now now) {
        Scenario scenario = now.scenario();
        Reader reader = new Reader(folder, whose, scenario.id(), scenario.zone());
        Whose reads = reader.in(scenario);
        Revision revision = now.revision();
        Course course = followed(reader, past, revision.number());
        courses.put(reader, course);
        Edition last = new Edition(revision.number(), revision.at(), scenario, now.plan(), reads);
        return Calendars.follow(course.calendar(), last).made(reads).text();
    }

    /** The course up to a revision, that one not included. */
    private Course followed(Reader reader, Past past, int upTo) {
        List<Revision> before = past.history().stream()
                .filter(one -> !one.beside() && one.number() < upTo)
                .sorted(Comparator.comparingInt(Revision::number))
                .toList();
        Course course = courses.getOrDefault(reader, Course.NONE);
        if (course.last() != null && !before.contains(course.last())) {
            // What was followed is no longer part of the past, or was changed there: it is followed anew.
            course = Course.NONE;
        }
        for (Revision revision : before) {
            if (!course.isAfter(revision)) {
                course = next(course, reader, past, revision);
            }
        }
        return course;
    }

    private static Course next(Course course, Reader reader, Past past, Revision revision) {
        Edition edition = course.shows(revision) ? null : edition(reader, past, revision);
        Calendars calendar = edition == null ? course.calendar() : Calendars.follow(course.calendar(), edition);
        return new Course(revision, calendar);
    }

    /** What can no longer be read, was of other clocks, or knew nothing of this reader, was no calendar of theirs. */
    private static @Nullable Edition edition(Reader reader, Past past, Revision revision) {
        try {
            Contents contents = past.contents(revision.number());
            Scenario scenario = contents.scenario();
            Plan plan = contents.plan();
            boolean judged = plan != null
                    && plan.placements().stream().allMatch(one -> one.id() != null && one.minutes() != null);
            boolean same =
                    scenario.zone().equals(reader.zone()) && scenario.id().equals(reader.scenario());
            return plan != null && judged && same
                    ? new Edition(revision.number(), revision.at(), scenario, plan, reader.in(scenario))
                    : null;
        } catch (FileFault | InputFault e) {
            // Nothing to add: the calendar is made of the plans that are there.
            return null;
        }
    }
}
