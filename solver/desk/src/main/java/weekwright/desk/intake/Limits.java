package weekwright.desk.intake;

/** How much of a file from outside is looked at: far more than a season holds, far less than hurts. */
public final class Limits {
    /** Bytes of a file. */
    public static final int BYTES = 16 * 1024 * 1024;
    /** Events of a calendar, or rows of a table, repetitions included. */
    public static final int ENTRIES = 10_000;
    /** Repeated events of a calendar. */
    public static final int SERIES = 200;
    /** Content lines of a calendar. */
    public static final int LINES = 500_000;
    /** Components inside each other. */
    public static final int DEPTH = 8;
    /** Characters of a repetition rule. */
    public static final int RULE = 500;
    /** Columns of a table. */
    public static final int COLUMNS = 200;
    /** Characters of a name, as documents hold it. */
    public static final int NAME = 200;
    /** First year of a date that can be meant. */
    public static final int FIRST_YEAR = 1970;

    /** Last year of a date that can be meant. */
    public static final int LAST_YEAR = 2199;

    private Limits() {}
}
