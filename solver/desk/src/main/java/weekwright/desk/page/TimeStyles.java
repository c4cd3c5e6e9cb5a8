package weekwright.desk.page;

/** The classes that put things on the axis of time: the policy forbids styles inside a page. */
final class TimeStyles {
    /** Rows of five minutes in a day. */
    private static final int ROWS = 288;

    private static final int TRACKS = 12;
    private static final int MOST_SIDE_BY_SIDE = 4;

    private TimeStyles() {}

    /** {@code r12} begins in row 12, {@code s3} takes three rows, {@code k1-2} is the first of two side by side. */
    static String text() {
        StringBuilder text = new StringBuilder(20_000);
        for (int row = 0; row <= ROWS; row++) {
            text.append(".r" + row + "{grid-row-start:" + (row + 1) + "}\n");
            text.append(".s" + row + "{grid-row-end:span " + Math.max(1, row) + "}\n");
        }
        for (int of = 1; of <= MOST_SIDE_BY_SIDE; of++) {
            int wide = TRACKS / of;
            for (int track = 1; track <= of; track++) {
                int from = (track - 1) * wide + 1;
                text.append(".k" + track + "-" + of + "{grid-column:" + from + "/span " + wide + "}\n");
            }
        }
        return text.toString();
    }
}
