package weekwright.desk.intake.table;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Found;
import weekwright.desk.intake.Labels;
import weekwright.desk.intake.Reading;
import weekwright.desk.intake.Remarks;
import weekwright.desk.intake.Times;
import weekwright.desk.intake.What;
import weekwright.desk.intake.When;
import weekwright.model.scenario.Scenario;

/** Reads the rows of a table that say when something is: fixtures, hours, closures, absences. */
public final class TimesReading {
    private static final List<String> YES = List.of("true", "yes", "y", "1", "x");

    private final Scenario scenario;
    private final What what;
    private final Answers answers;
    private final Table table;
    private final DateText dates;
    private final NumberText numbers;
    private final Set<String> how = new LinkedHashSet<>();
    private final Set<String> unknownZones = new LinkedHashSet<>();
    private final Map<String, Integer> lineOfId = new HashMap<>();
    private final List<Found> found = new ArrayList<>();

    private TimesReading(byte[] bytes, Scenario scenario, What what, Answers answers) {
        this.scenario = scenario;
        this.what = what;
        this.answers = answers;
        table = Table.read(bytes, what, answers);
        how.addAll(table.how());
        dates = DateText.of(
                Stream.of(Column.DATE, Column.START, Column.END, Column.END_DATE, Column.OLD_DATE)
                        .flatMap(column -> table.cells(column).stream())
                        .toList(),
                answers);
        numbers = NumberText.of(table.cells(Column.DURATION), answers);
    }

    /** Reads a table; throws {@link weekwright.desk.app.InputFault} when it is none, or its columns are not known. */
    public static Reading read(byte[] bytes, Scenario scenario, What what, Answers answers) {
        TimesReading reading = new TimesReading(bytes, scenario, what, answers);
        reading.table.rows().forEach(reading::row);
        return new Reading(reading.found, reading.how(), reading.questions());
    }

    private List<String> how() {
        String order = dates.how();
        if (order != null) {
            how.add(order);
        }
        return List.copyOf(how);
    }

    private List<String> questions() {
        List<String> questions = new ArrayList<>();
        String order = dates.question();
        if (order != null) {
            questions.add(order);
        }
        unknownZones.forEach(name -> questions.add("The table names a zone \"" + Table.cut(name)
                + "\", which is none of the world's: say what it is with "
                + answers.way(Answers.ZONE_OF, "\"" + Table.cut(name) + "=Europe/Dublin\"") + "."));
        return questions;
    }

    private void row(TableText.Cells row) {
        Remarks remarks = new Remarks();
        String days = table.cell(row, Column.WEEKDAYS);
        try {
            if (!days.isEmpty() && table.cell(row, Column.DATE).isEmpty()) {
                weekdays(days).forEach(day -> add(row, day, new Remarks()));
            } else {
                add(row, null, remarks);
            }
        } catch (IllegalArgumentException e) {
            remarks.fault(String.valueOf(e.getMessage()));
            found.add(entry(row, label(row, remarks), null, null, null, remarks));
        }
    }

    /** Each of the plan's days that is one of these weekdays: {@code Mon}, {@code Mon-Fri}, {@code Tue, Thu}. */
    private List<LocalDate> weekdays(String text) {
        Set<DayOfWeek> named = WeekdayText.days(text);
        return scenario.firstDay()
                .datesUntil(scenario.lastDay().plusDays(1))
                .filter(day -> named.contains(day.getDayOfWeek()))
                .toList();
    }

    private void add(TableText.Cells row, @Nullable LocalDate weekday, Remarks remarks) {
        When start = weekday == null ? start(row, remarks) : at(weekday, time(row), row, remarks);
        When was = old(row);
        found.add(entry(row, label(row, remarks), start, end(row, start, remarks), was, remarks));
    }

    private Found entry(
            TableText.Cells row,
            String label,
            @Nullable When start,
            @Nullable When end,
            @Nullable When was,
            Remarks remarks) {
        String id = table.cell(row, Column.ID);
        if (!id.isEmpty()) {
            Integer other = lineOfId.putIfAbsent(id, row.line());
            if (other != null) {
                remarks.doubt("line " + other + " has the same id");
            }
        }
        String status = table.cell(row, Column.STATUS);
        Found.State said = Labels.state(status);
        return new Found(
                0,
                "line " + row.line(),
                id.isEmpty() ? null : id,
                label,
                start,
                end,
                said == Found.State.HOLDS ? Labels.state(label) : said,
                was,
                false,
                remarks);
    }

    private @Nullable LocalTime time(TableText.Cells row) {
        String cell = table.cell(row, what == What.WINDOWS ? Column.FROM : Column.TIME);
        return ClockText.time(cell);
    }

    private When start(TableText.Cells row, Remarks remarks) {
        String start = table.cell(row, Column.START);
        String date = table.cell(row, Column.DATE);
        if (date.isEmpty() && start.isEmpty()) {
            throw new IllegalArgumentException("it has no date");
        }
        if (date.isEmpty()) {
            return moment(start, row, remarks);
        }
        LocalTime time = start.isEmpty() ? time(row) : ClockText.time(start);
        When alone = moment(date, row, remarks);
        return time == null || alone.instant() != null ? alone : at(alone.date(), time, row, remarks);
    }

    /** A date in one cell, perhaps with a time and an offset. */
    private When moment(String cell, TableText.Cells row, Remarks remarks) {
        Matcher time = ClockText.AFTER_DATE.matcher(cell);
        LocalDate date = dates.date(DateText.datePart(cell));
        String against = DateText.weekdayAgainst(cell, date);
        if (against != null) {
            remarks.doubt(against);
        }
        if (!time.find()) {
            return new When(date, null);
        }
        LocalTime clock = ClockText.time(time.group("time"));
        String offset = time.group("offset");
        if (offset == null || clock == null) {
            return at(date, clock, row, remarks);
        }
        return when(date.atTime(clock).toInstant(ZoneOffset.of(offset)));
    }

    private When when(Instant instant) {
        return new When(LocalDate.ofInstant(instant, scenario.zone()), instant);
    }

    private When at(LocalDate date, @Nullable LocalTime time, TableText.Cells row, Remarks remarks) {
        boolean allDay = YES.contains(table.cell(row, Column.ALL_DAY).toLowerCase(Locale.ROOT));
        if (time == null || allDay) {
            return new When(date, null);
        }
        Optional<ZoneId> zone = zone(table.cell(row, Column.ZONE));
        if (zone.isEmpty()) {
            throw new IllegalArgumentException(
                    "its zone \"" + Table.cut(table.cell(row, Column.ZONE)) + "\" is not known");
        }
        return when(Times.instant(date.atTime(time), zone.get(), remarks));
    }

    private Optional<ZoneId> zone(String name) {
        if (name.isEmpty()) {
            ZoneId zone = answers.zone().orElse(scenario.zone());
            how.add("Times are read as times in " + zone + " (" + answers.way(Answers.ZONE) + " says otherwise).");
            return Optional.of(zone);
        }
        Optional<ZoneId> zone = answers.zoneOf(name)
                .or(() ->
                        ZoneId.getAvailableZoneIds().contains(name) ? Optional.of(ZoneId.of(name)) : Optional.empty());
        if (zone.isEmpty()) {
            unknownZones.add(name);
        }
        return zone;
    }

    private @Nullable When end(TableText.Cells row, @Nullable When start, Remarks remarks) {
        if (start == null) {
            return null;
        }
        String whole = table.cell(row, Column.END);
        String date = table.cell(row, Column.END_DATE);
        String time = table.cell(row, what == What.WINDOWS ? Column.TO : Column.END_TIME);
        String minutes = table.cell(row, Column.DURATION);
        if (!minutes.isEmpty() && start.instant() != null) {
            return when(start.instant().plusSeconds(60L * minutes(minutes)));
        }
        if (!whole.isEmpty()) {
            return isTime(whole)
                    ? endTime(start, start.date(), whole, row, remarks)
                    : lastDay(moment(whole, row, remarks));
        }
        LocalDate day = date.isEmpty() ? start.date() : dates.date(date);
        if (!time.isEmpty()) {
            return endTime(start, day, time, row, remarks);
        }
        return date.isEmpty() ? null : lastDay(new When(day, null));
    }

    private static boolean isTime(String cell) {
        return cell.length() <= 11 && !cell.matches(".*\\d[-/.]\\d{1,2}[-/.]\\d.*") && cell.matches("\\d{1,2}[:.h]?.*");
    }

    /** A last day counts whole. */
    private static When lastDay(When end) {
        return end.instant() == null ? new When(end.date().plusDays(1), null) : end;
    }

    private int minutes(String cell) {
        Matcher clock =
                java.util.regex.Pattern.compile("(\\d{1,2}):(\\d{2})(?::00)?").matcher(cell);
        int minutes = clock.matches()
                ? 60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2))
                : numbers.whole(cell);
        if (minutes == 0) {
            throw new IllegalArgumentException("it lasts no time");
        }
        return minutes;
    }

    /** An end that lies before the start on the clock is on the next day. */
    private @Nullable When endTime(When start, LocalDate day, String cell, TableText.Cells row, Remarks remarks) {
        if (cell.equals("24:00")) {
            return at(day.plusDays(1), LocalTime.MIDNIGHT, row, remarks);
        }
        LocalTime time = ClockText.time(cell);
        Instant from = start.instant();
        if (time == null || from == null) {
            return null;
        }
        When end = at(day, time, row, remarks);
        boolean nextDay = end.instant() != null && !end.instant().isAfter(from) && day.equals(start.date());
        return nextDay ? at(day.plusDays(1), time, row, remarks) : end;
    }

    private @Nullable When old(TableText.Cells row) {
        String date = table.cell(row, Column.OLD_DATE);
        if (date.isEmpty()) {
            return null;
        }
        When day = moment(date, row, new Remarks());
        LocalTime time = ClockText.time(table.cell(row, Column.OLD_TIME));
        return time == null || day.instant() != null ? day : at(day.date(), time, row, new Remarks());
    }

    /** A name from what there is: a name of its own, or competition, opponents and venue. */
    private String label(TableText.Cells row, Remarks remarks) {
        String own = Stream.of(table.cell(row, Column.LABEL), table.cell(row, Column.REASON))
                .filter(cell -> !cell.isEmpty())
                .findFirst()
                .orElse("");
        String home = table.cell(row, Column.HOME);
        String away = table.cell(row, Column.AWAY);
        String sides = home.isEmpty() || away.isEmpty() ? home + away : home + " – " + away;
        List<String> parts = Stream.of(
                        table.cell(row, Column.COMPETITION),
                        own,
                        sides,
                        table.cell(row, Column.OPPONENT),
                        table.cell(row, Column.VENUE))
                .filter(cell -> !cell.isEmpty())
                .toList();
        return Labels.clean(String.join(", ", parts), remarks);
    }
}
