package weekwright.desk.intake.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Found;
import weekwright.desk.intake.Limits;
import weekwright.desk.intake.Reading;
import weekwright.model.scenario.Scenario;

/** Reads the events of a calendar file: series unfolded over the days that a scenario looks at, moved ones taken out of them. */
public final class CalendarReading {
    /** Something more than what a plan looks at, so that what has moved away is still met. */
    private static final int MARGIN = Scenario.EDGE_DAYS + 35;

    /** Years before a plan in which the clocks of a zone that a calendar describes are worked out. */
    private static final int YEARS_OF_ZONES = 3;

    private final Scenario scenario;
    private final Answers answers;
    private final Set<String> how = new LinkedHashSet<>();
    private final Set<String> questions = new LinkedHashSet<>();
    private final List<Found> found = new ArrayList<>();

    private CalendarReading(Scenario scenario, Answers answers) {
        this.scenario = scenario;
        this.answers = answers;
    }

    /**
     * Reads a calendar file.
     *
     * @throws InputFault when it is none, or is too large to be one that a coach would want
     */
    public static Reading read(byte[] bytes, Scenario scenario, Answers answers) {
        Components.Found file = Components.read(bytes, answers.encoding());
        CalendarReading reading = new CalendarReading(scenario, answers);
        reading.introduce(file);
        file.calendars().forEach(reading::calendar);
        List<Found> inOrder = reading.found.stream()
                .sorted(Comparator.comparing(
                        one -> one.start() == null ? LocalDate.MAX : one.start().date()))
                .toList();
        return new Reading(inOrder, List.copyOf(reading.how), List.copyOf(reading.questions));
    }

    private void introduce(Components.Found file) {
        int calendars = file.calendars().size();
        long events =
                file.calendars().stream().flatMap(one -> one.parts("VEVENT")).count();
        how.add((calendars == 1 ? "A calendar" : calendars + " calendars in one file") + " with "
                + (events == 1 ? "1 event." : events + " events."));
        Map<String, Long> others = file.calendars().stream()
                .flatMap(one -> one.parts().stream())
                .map(Component::name)
                .filter(name -> !name.equals("VEVENT") && !name.equals("VTIMEZONE"))
                .collect(Collectors.groupingBy(Zones::shown, LinkedHashMap::new, Collectors.counting()));
        others.forEach((name, count) -> how.add("Not looked at: " + count + " " + name + "."));
        if (!file.unreadable().isEmpty()) {
            how.add("Passed over: " + file.unreadable().size()
                    + " lines that have no form of a calendar's, the first is" + " line "
                    + file.unreadable().get(0) + ".");
        }
    }

    private void calendar(Component calendar) {
        tooManySeries(calendar);
        Zones zones = new Zones(
                calendar,
                answers,
                scenario.firstDay().minusYears(YEARS_OF_ZONES),
                scenario.lastDay().plusYears(1));
        boolean cancels = "CANCEL".equalsIgnoreCase(calendar.text("METHOD").strip());
        EventReader reader = new EventReader(scenario, answers, zones, how, cancels);
        byUid(calendar)
                .values()
                .forEach(events -> add(new Series(
                                reader,
                                events,
                                scenario.firstDay().minusDays(MARGIN),
                                scenario.lastDay().plusDays(MARGIN))
                        .entries()));
        how.addAll(zones.how());
        questions.addAll(zones.questions());
    }

    private static void tooManySeries(Component calendar) {
        long series = calendar.parts("VEVENT")
                .filter(event -> event.property("RRULE").isPresent())
                .count();
        if (series > Limits.SERIES) {
            throw new InputFault("the calendar holds " + series + " repeated events: more than " + Limits.SERIES
                    + " are not looked at; export the season only");
        }
    }

    /** Events of one UID belong together, wherever they stand in the calendar; one without stands alone. */
    private static Map<String, List<Component>> byUid(Component calendar) {
        Map<String, List<Component>> byUid = new LinkedHashMap<>();
        calendar.parts("VEVENT")
                .forEach(event -> byUid.computeIfAbsent(
                                event.text("UID").isBlank() ? "line " + event.line() : "uid " + event.text("UID"),
                                uid -> new ArrayList<>())
                        .add(event));
        return byUid;
    }

    private void add(List<Found> entries) {
        found.addAll(entries);
        if (found.size() > Limits.ENTRIES) {
            throw new InputFault(
                    "the calendar comes to more than 10,000 events with all repetitions: export the season" + " only");
        }
    }
}
