package weekwright.engine.problem;

import java.time.LocalDate;
import java.util.Set;

/**
 * What of a scenario is asked for: all of it, or all but some things that are set aside to see what then fits.
 *
 * @param aside names of what is not asked for, as {@link #aim} and {@link #highDays} give them
 */
public record Asked(Set<String> aside) {
    /** All that the scenario asks for. */
    public static final Asked ALL = new Asked(Set.of());

    public Asked {
        aside = Set.copyOf(aside);
    }

    /** The least of an aim in a week, by the aim's key and the week's first date. */
    public static String aim(String group, String aim, LocalDate week) {
        return group + "/" + aim + "/" + week;
    }

    /** The least number of high days of a group in a week. */
    public static String highDays(String group, LocalDate week) {
        return group + "/high-days/" + week;
    }

    boolean asks(String name) {
        return !aside.contains(name);
    }
}
