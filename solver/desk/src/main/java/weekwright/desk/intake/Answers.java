package weekwright.desk.intake;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.model.Nearest;

/**
 * What a coach has said of all that a file leaves open, by the name of each answer, and how the place where answers are given
 * speaks of them, so that a question can say what to do: options of a command, fields of a page.
 */
public final class Answers {
    /** Nothing is said yet. */
    public static final Answers NONE = in(new OptionWording());

    /** 03/04 is the third of April. */
    public static final String DAY_FIRST = "day-first";
    /** 03/04 is the fourth of March. */
    public static final String MONTH_FIRST = "month-first";
    /** The zone of times that name none. */
    public static final String ZONE = "zone";
    /** What a zone of the file is: {@code NAME=ZONE}. */
    public static final String ZONE_OF = "zone-of";
    /** The start of what has only a date: {@code 15:00}, or for one row {@code 4=15:00}. */
    public static final String TIME = "time";
    /** How long what has no end lasts, in minutes. */
    public static final String MINUTES = "minutes";
    /** 1,234 is a little more than one. */
    public static final String DECIMAL_COMMA = "decimal-comma";
    /** 1,234 is more than a thousand. */
    public static final String DECIMAL_POINT = "decimal-point";
    /** How the file's letters are written. */
    public static final String ENCODING = "encoding";
    /** What a column holds: {@code date=NAME}. */
    public static final String COLUMN = "column";
    /** Rows that are right as they stand. */
    public static final String ACCEPT = "accept";
    /** Rows that are not wanted. */
    public static final String LEAVE_OUT = "leave-out";
    /** What a row is in the scenario: {@code 4=ID}. */
    public static final String SAME = "same";
    /** Only rows that hold this text. */
    public static final String ONLY = "only";
    /** What is past goes into the history. */
    public static final String PAST = "past";
    /** Of spans, what the file does not have is taken out. */
    public static final String REPLACE = "replace";
    /** The group that the file is about. */
    public static final String GROUP = "group";
    /** The place that the file is about. */
    public static final String FACILITY = "facility";
    /** What is still asked about is left out. */
    public static final String REST = "rest";

    private static final Pattern ROWS = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");
    private static final Pattern OF_ROW = Pattern.compile("(\\d{1,6})=(.+)");

    private final Map<String, List<String>> given;
    private final Wording wording;

    private Answers(Map<String, List<String>> given, Wording wording) {
        this.given = given;
        this.wording = wording;
    }

    /** How answers are spoken of where they are given. */
    public interface Wording {
        /**
         * An answer.
         *
         * @param value what to answer, for example; empty for the answer as such
         */
        String of(String answer, String value);

        /**
         * An answer about one row.
         *
         * @param value what to answer, for example; empty where the row says all
         */
        String ofRow(String answer, int row, String value);
    }

    /** As on the command line: {@code --time 15:00}, {@code --time 4=15:00}. */
    private static final class OptionWording implements Wording {
        @Override
        public String of(String answer, String value) {
            return "--" + answer + (value.isEmpty() ? "" : " " + value);
        }

        @Override
        public String ofRow(String answer, int row, String value) {
            return "--" + answer + " " + row + (value.isEmpty() ? "" : "=" + value);
        }
    }

    /** Nothing is said yet, where answers are spoken of in other words. */
    public static Answers in(Wording wording) {
        return new Answers(Map.of(), wording);
    }

    /** How a coach gives an answer. */
    public String way(String answer) {
        return wording.of(answer, "");
    }

    /** How a coach gives an answer, with an example. */
    public String way(String answer, String example) {
        return wording.of(answer, example);
    }

    /** How a coach gives an answer about one row. */
    String wayOfRow(String answer, int row, String example) {
        return wording.ofRow(answer, row, example);
    }

    /** These answers and one more. */
    public Answers with(String name, String value) {
        Map<String, List<String>> more = new HashMap<>(given);
        List<String> values = new ArrayList<>(more.getOrDefault(name, List.of()));
        values.add(value);
        more.put(name, List.copyOf(values));
        return new Answers(Map.copyOf(more), wording);
    }

    /** These answers and a yes. */
    public Answers with(String name) {
        return with(name, "yes");
    }

    boolean says(String name) {
        return given.containsKey(name);
    }

    /** Whether a yes was given to one of two that exclude each other; nothing where to neither. */
    public Optional<Boolean> either(String yes, String no) {
        if (says(yes) && says(no)) {
            throw new InputFault("give " + way(yes) + " or " + way(no) + ", not both");
        }
        return says(yes) || says(no) ? Optional.of(says(yes)) : Optional.empty();
    }

    private List<String> all(String name) {
        return given.getOrDefault(name, List.of());
    }

    private @Nullable String last(String name) {
        List<String> values = all(name);
        return values.isEmpty() ? null : values.get(values.size() - 1);
    }

    /** The text that rows must hold, or null. */
    @Nullable
    String only() {
        return last(ONLY);
    }

    /** The zone of times that name none. */
    public Optional<ZoneId> zone() {
        String zone = last(ZONE);
        return zone == null ? Optional.empty() : Optional.of(zone(way(ZONE) + " is", zone));
    }

    /** What a zone of the file is. */
    public Optional<ZoneId> zoneOf(String name) {
        return all(ZONE_OF).stream()
                .filter(answer -> answer.lastIndexOf('=') > 0
                        && answer.substring(0, answer.lastIndexOf('=')).equals(name))
                .findFirst()
                .map(answer -> zone(way(ZONE_OF) + " says", answer.substring(answer.lastIndexOf('=') + 1)));
    }

    private static ZoneId zone(String said, String name) {
        if (!ZoneId.getAvailableZoneIds().contains(name)) {
            String hint = name.length() > 60
                    ? "name a region and a town, such as Europe/Dublin"
                    : Nearest.of(name, new TreeSet<>(ZoneId.getAvailableZoneIds()))
                            .map(near -> "did you mean " + near + "?")
                            .orElse("name a region and a town, such as Europe/Dublin");
            throw new InputFault(said + " \"" + name + "\", which is no zone: " + hint);
        }
        return ZoneId.of(name);
    }

    /** The start of a row that has only a date. */
    Optional<LocalTime> time(int row) {
        String forAll = null;
        for (String answer : all(TIME)) {
            Matcher ofRow = OF_ROW.matcher(answer);
            if (!ofRow.matches()) {
                forAll = answer;
            } else if (Integer.parseInt(ofRow.group(1)) == row) {
                return Optional.of(time(ofRow.group(2)));
            }
        }
        return forAll == null ? Optional.empty() : Optional.of(time(forAll));
    }

    private LocalTime time(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeException e) {
            throw new InputFault(way(TIME) + " is \"" + text + "\": give a time such as 15:00, or of one row 4=15:00");
        }
    }

    /** Minutes of what has no end. */
    public OptionalInt minutes() {
        String minutes = last(MINUTES);
        if (minutes == null) {
            return OptionalInt.empty();
        }
        if (!minutes.matches("[1-9]\\d{0,3}")) {
            throw new InputFault(way(MINUTES) + " is \"" + minutes + "\": give whole minutes, such as 110");
        }
        return OptionalInt.of(Integer.parseInt(minutes));
    }

    /** How the file's letters are written, or null where nothing is said. */
    public @Nullable Charset encoding() {
        String name = last(ENCODING);
        try {
            return name == null ? null : Charset.forName(name);
        } catch (IllegalArgumentException e) {
            throw new InputFault(
                    way(ENCODING) + " is \"" + name + "\", which is not known: give one such as windows-1252");
        }
    }

    /** Headings by the name of what their column holds. */
    public Map<String, String> columns() {
        Map<String, String> columns = new HashMap<>();
        for (String answer : all(COLUMN)) {
            int equals = answer.indexOf('=');
            if (equals < 1) {
                throw new InputFault(
                        way(COLUMN) + " is \"" + answer + "\": say what a column holds, such as date=\"Match day\"");
            }
            columns.put(answer.substring(0, equals), answer.substring(equals + 1));
        }
        return columns;
    }

    boolean accepts(int row) {
        return holds(ACCEPT, row);
    }

    boolean leavesOut(int row) {
        return holds(LEAVE_OUT, row);
    }

    private boolean holds(String name, int row) {
        boolean found = false;
        for (String answer : all(name)) {
            for (String part : answer.split(",", -1)) {
                Matcher rows = ROWS.matcher(part.strip());
                if (!rows.matches()) {
                    throw new InputFault(way(name) + " is \"" + answer + "\": give rows such as 3,5-9");
                }
                int first = Integer.parseInt(rows.group(1));
                int last = rows.group(2) == null ? first : Integer.parseInt(rows.group(2));
                found |= row >= first && row <= last;
            }
        }
        return found;
    }

    /** The id of what a row is in the scenario. */
    Optional<String> same(int row) {
        for (String answer : all(SAME)) {
            Matcher ofRow = OF_ROW.matcher(answer);
            if (!ofRow.matches()) {
                throw new InputFault(
                        way(SAME) + " is \"" + answer + "\": give a row and an id of the scenario, such as 4=r18");
            }
            if (Integer.parseInt(ofRow.group(1)) == row) {
                return Optional.of(ofRow.group(2));
            }
        }
        return Optional.empty();
    }
}
