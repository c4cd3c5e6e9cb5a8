package weekwright.desk.page;

import java.util.Locale;

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
            text.append(String.format(Locale.ROOT, ".r%d{grid-row-start:%d}%n", row, row + 1));
            text.append(String.format(Locale.ROOT, ".s%d{grid-row-end:span %d}%n", row, Math.max(1, row)));
        }
        for (int of = 1; of <= MOST_SIDE_BY_SIDE; of++) {
            int wide = TRACKS / of;
            for (int track = 1; track <= of; track++) {
                text.append(String.format(
                        Locale.ROOT, ".k%d-%d{grid-column:%d/span %d}%n", track, of, (track - 1) * wide + 1, wide));
            }
        }
        return text.toString();
    }
}
