package weekwright.desk.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.desk.app.FirstWeek;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.table.WeekdayText;
import weekwright.model.Nearest;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** Reads what a coach says of a first week, piece by piece as it is typed. Each throws {@link InputFault} with what would do. */
public final class NewWeek {
    private static final Pattern FREE = Pattern.compile("(.+?)\\s+(\\d{1,2}:\\d{2})\\s*[-–]\\s*(\\d{1,2}:\\d{2})");
    private static final Pattern FIXTURE = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[T ](\\d{1,2}:\\d{2})(?:\\s+(.+))?");

    private NewWeek() {}

    /** A zone by its region and town. */
    public static ZoneId zone(String text) {
        if (!ZoneId.getAvailableZoneIds().contains(text)) {
            throw new InputFault("\"" + cut(text) + "\" is no zone: "
                    + Nearest.of(cut(text), new TreeSet<>(ZoneId.getAvailableZoneIds()))
                            .map(near -> "did you mean " + near + "?")
                            .orElse("name a region and a town, such as Europe/Dublin"));
        }
        return ZoneId.of(text);
    }

    private static String cut(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    /** A first day. */
    public static LocalDate firstDay(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new InputFault("the first day is \"" + cut(text) + "\": give a date, such as 2027-03-01");
        }
    }

    /** Hours of some weekdays: {@code Mon-Fri 16:00-21:00}. */
    public static Window free(String text) {
        Matcher free = FREE.matcher(text.strip());
        if (!free.matches()) {
            throw notFree(text, "give days and hours, such as \"Mon-Fri 16:00-21:00\"");
        }
        try {
            List<Weekday> days = WeekdayText.days(free.group(1)).stream()
                    .map(day -> Weekday.values()[day.getValue() - 1])
                    .toList();
            ClockTime from = ClockTime.parse(padded(free.group(2)));
            ClockTime to = ClockTime.parse(padded(free.group(3)));
            if (to.compareTo(from) <= 0) {
                throw notFree(text, "their end must come after their start");
            }
            return new Window(days, null, from, to, null, null);
        } catch (IllegalArgumentException e) {
            throw notFree(text, String.valueOf(e.getMessage()));
        }
    }

    private static InputFault notFree(String text, String why) {
        return new InputFault("the free hours are \"" + cut(text) + "\": " + why);
    }

    private static String padded(String clock) {
        return clock.length() == 4 ? "0" + clock : clock;
    }

    /** A fixture: {@code 2027-03-06 14:30 League round 18}; it lasts 110 minutes until the coach says otherwise. */
    public static Fixture fixture(String text, int number) {
        Matcher fixture = FIXTURE.matcher(text.strip());
        if (!fixture.matches()) {
            throw new InputFault("the fixture is \"" + cut(text)
                    + "\": give its date, its start and its name, such as \"2027-03-06 14:30 League round 18\"");
        }
        try {
            Moment start = Moment.of(LocalDateTime.parse(fixture.group(1) + "T" + padded(fixture.group(2))));
            String name = fixture.group(3) == null ? "" : Labels.clean(fixture.group(3), new Remarks());
            return FirstWeek.fixture(number, name.isEmpty() ? "Fixture " + number : name, start);
        } catch (DateTimeException e) {
            throw new InputFault("the fixture is \"" + cut(text) + "\", and that time does not exist");
        }
    }

    /** Places: what each offers, and its name where it has one: {@code gym=Weights room}. */
    public static List<Facility> places(List<String> texts) {
        List<Facility> places = new ArrayList<>();
        for (String text : texts) {
            int equals = text.indexOf('=');
            FacilityKind kind =
                    kind(equals < 0 ? text.strip() : text.substring(0, equals).strip());
            String name = Labels.clean(equals < 0 ? kind.id() : text.substring(equals + 1), new Remarks());
            List<String> ids = places.stream().map(Facility::id).toList();
            String id = ids.contains(kind.id()) ? Labels.id(name, "", ids) : kind.id();
            places.add(new Facility(
                    id, name.isEmpty() ? kind.id() : name, List.of(kind), null, null, List.of(), List.of()));
        }
        return places;
    }

    private static FacilityKind kind(String name) {
        List<String> known =
                Arrays.stream(FacilityKind.values()).map(FacilityKind::id).toList();
        return Arrays.stream(FacilityKind.values())
                .filter(kind -> kind.id().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new InputFault("no place offers \"" + cut(name) + "\": " + Nearest.hint(cut(name), known)));
    }
}
