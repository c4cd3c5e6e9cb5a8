package weekwright.desk.view.week;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What of a plan a coach looks at.
 *
 * @param week number of the week from 1, or 0 for all of them from afar
 * @param by what the lanes are
 */
public record LookAt(int week, By by) {
    /** What the lanes of a landscape are. */
    public enum By {
        GROUP("group"),
        PLACE("place"),
        ATHLETE("athlete");

        private final String word;

        By(String word) {
            this.word = word;
        }

        /** The word for it. */
        public String word() {
            return word;
        }
    }

    /** All weeks at once. */
    public static final int ALL = 0;

    /** What was asked for by words; what is not understood is the first week by group. */
    public static LookAt of(@Nullable String week, @Nullable String by, int weeks) {
        By lanes = Arrays.stream(By.values())
                .filter(one -> one.word().equals(by))
                .findFirst()
                .orElse(By.GROUP);
        return new LookAt(number(week, weeks), lanes);
    }

    private static int number(@Nullable String week, int weeks) {
        if ("all".equals(week)) {
            return ALL;
        }
        boolean number = week != null && week.matches("[0-9]{1,3}");
        int asked = number ? Integer.parseInt(week) : 1;
        return asked >= 1 && asked <= weeks ? asked : 1;
    }

    /** The query of an address that asks for this. */
    public String query() {
        return String.format(Locale.ROOT, "week=%s&by=%s", week == ALL ? "all" : week, by.word());
    }
}
