package weekwright.desk.intake.table;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import weekwright.desk.intake.What;
import weekwright.model.Ids;

/** What a column of a table can hold, and the headings under which it is met (common practice, no source). */
public enum Column {
    DATE(
            "date",
            "day",
            "start date",
            "match date",
            "match day",
            "fixture date",
            "new date",
            "date after",
            "begin date"),
    TIME("time", "start time", "kick off", "kickoff", "kickoff local", "kick off time", "ko", "new time", "time after"),
    START("start", "starts", "date time", "datetime", "start date time", "from", "begin", "begins"),
    END("end", "ends", "to", "until", "end date time", "finish"),
    END_DATE("end date", "last date"),
    END_TIME("end time", "finish time", "closes"),
    DURATION("minutes", "duration", "length", "duration minutes", "minutes long"),
    ALL_DAY("all day", "all day event"),
    LABEL("label", "title", "summary", "subject", "event", "match", "fixture", "name"),
    COMPETITION("competition", "league", "tournament", "comp"),
    HOME("home", "home team"),
    AWAY("away", "away team"),
    OPPONENT("opponent", "opposition", "opponents", "against", "versus", "vs", "v"),
    VENUE("venue", "home or away", "home away", "h a", "ha"),
    STATUS("status", "state"),
    ID("id", "uid", "match id", "fixture id", "match number", "match no"),
    ZONE("zone", "time zone", "timezone", "tz"),
    OLD_DATE("date before", "old date", "original date", "previous date"),
    OLD_TIME("time before", "old time", "original time", "previous time"),
    REASON("why", "reason"),
    WEEKDAYS("days", "weekday", "weekdays", "day of week"),
    FROM("from", "opens", "open", "start", "start time"),
    TO("to", "until", "closes", "close", "end", "end time"),
    NAME("name", "athlete", "player", "athlete name", "player name"),
    GROUP("group", "groups", "squad", "team"),
    LEVEL("level", "training age"),
    BORN("born", "date of birth", "birth date", "dob", "birthday"),
    ATHLETE("athlete", "player", "name", "athlete id", "player id", "id"),
    MEASURE("measure", "test", "kind"),
    METRES("metres", "meters", "distance", "m", "distance m"),
    SECONDS("seconds", "time", "s", "time s", "result s"),
    FROM_START("start", "starting", "from"),
    TIMING("timing", "timed"),
    LIFT("lift", "exercise"),
    KG("kg", "weight", "load", "weight kg", "load kg"),
    REPETITIONS("repetitions", "reps"),
    SPEED("metres per second", "meters per second", "speed", "aerobic speed", "m s", "mas"),
    PLAYED("minutes", "minutes played", "mins", "played", "expected"),
    FIXTURE("fixture", "match", "game", "fixture id");

    @SuppressWarnings("ImmutableEnumChecker") // A list of List.of never changes.
    private final List<String> headings;

    Column(String... headings) {
        this.headings = List.of(headings);
    }

    /** Its name in answers. */
    public String id() {
        return Ids.of(this);
    }

    /** Whether a heading, in small letters with single spaces, stands for it. */
    boolean isCalled(String heading) {
        return headings.contains(heading);
    }

    /** The first heading that stands for it, for messages. */
    public String example() {
        return headings.get(0);
    }

    /** The columns that are looked for. */
    public static Set<Column> of(What what) {
        return switch (what) {
            case FIXTURES -> EnumSet.range(DATE, OLD_TIME);
            case CLOSURES, AWAY -> {
                EnumSet<Column> columns = EnumSet.range(DATE, ALL_DAY);
                columns.addAll(EnumSet.of(LABEL, STATUS, ZONE, REASON));
                yield columns;
            }
            case WINDOWS -> EnumSet.of(DATE, WEEKDAYS, FROM, TO, STATUS, ZONE);
            case ATHLETES -> EnumSet.of(ID, NAME, GROUP, LEVEL, BORN);
            case MARKS ->
                EnumSet.of(ATHLETE, MEASURE, METRES, SECONDS, FROM_START, TIMING, LIFT, KG, REPETITIONS, SPEED, DATE);
            case MINUTES, EXPECTED -> EnumSet.of(ATHLETE, PLAYED, FIXTURE, DATE);
        };
    }

    /** The columns of which one at least must be there. */
    public static Set<Column> needed(What what) {
        return switch (what) {
            case FIXTURES, CLOSURES, AWAY -> EnumSet.of(DATE, START);
            case WINDOWS -> EnumSet.of(FROM);
            case ATHLETES -> EnumSet.of(NAME);
            case MARKS, MINUTES, EXPECTED -> EnumSet.of(ATHLETE);
        };
    }
}
