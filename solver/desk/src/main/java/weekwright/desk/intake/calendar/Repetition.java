package weekwright.desk.intake.calendar;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Recur;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Limits;

/**
 * A rule by which an event repeats (RFC 5545, 3.3.10), worked out by ical4j in local time. The end of the repetition is kept
 * apart, because it may be written in another zone than the event.
 */
final class Repetition {
    private static final Set<String> FREQUENCIES = Set.of("DAILY", "WEEKLY", "MONTHLY", "YEARLY");
    private static final Set<String> WITHIN_A_DAY = Set.of("BYHOUR", "BYMINUTE", "BYSECOND");
    private final Recur<LocalDateTime> rule;
    private final @Nullable String until;

    private Repetition(Recur<LocalDateTime> rule, @Nullable String until) {
        this.rule = rule;
        this.until = until;
    }

    /**
     * Reads a rule.
     *
     * @throws IllegalArgumentException when it cannot be read, or repeats more often than once a day
     */
    static Repetition of(String text) {
        if (text.length() > Limits.RULE) {
            throw new IllegalArgumentException("its rule of repetition is too long to be one");
        }
        List<String> parts = Arrays.asList(text.strip().toUpperCase(Locale.ROOT).split(";", -1));
        String frequency = value(parts, "FREQ");
        if (frequency == null
                || !FREQUENCIES.contains(frequency)
                || names(parts).anyMatch(WITHIN_A_DAY::contains)) {
            throw new IllegalArgumentException(
                    "it repeats by the rule " + shown(text) + ", which is not once a day, week, month or year at most");
        }
        String interval = value(parts, "INTERVAL");
        if (interval != null && !interval.matches("[1-9]\\d{0,2}")) {
            throw new IllegalArgumentException("its rule of repetition cannot be read: " + shown(text));
        }
        try {
            String endless = parts.stream()
                    .filter(part -> !part.startsWith("UNTIL=") && !part.isBlank())
                    .collect(Collectors.joining(";"));
            return new Repetition(new Recur<>(endless, false), value(parts, "UNTIL"));
        } catch (RuntimeException e) {
            // The library throws many kinds.
            throw new IllegalArgumentException("its rule of repetition cannot be read: " + shown(text), e);
        }
    }

    private static Stream<String> names(List<String> parts) {
        return parts.stream().map(part -> part.replaceFirst("=.*", ""));
    }

    private static @Nullable String value(List<String> parts, String name) {
        return parts.stream()
                .filter(part -> part.startsWith(name + "="))
                .map(part -> part.substring(name.length() + 1))
                .findFirst()
                .orElse(null);
    }

    private static String shown(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    /** The end of the repetition as written, or null where it is counted or endless. */
    @Nullable
    String until() {
        return until;
    }

    /**
     * The local times at which it falls, from the first to the last, both included, in order.
     *
     * @param seed the event's own start
     * @throws IllegalArgumentException when the rule gives more than a calendar can need
     */
    List<LocalDateTime> between(LocalDateTime seed, LocalDateTime first, LocalDateTime last) {
        if (seed.isAfter(last)) {
            return List.of();
        }
        List<LocalDateTime> found = new ArrayList<>();
        try {
            rule.getDatesAsStream(seed, first.isBefore(seed) ? seed : first, last, -1)
                    .limit(Limits.ENTRIES)
                    .forEach(found::add);
        } catch (DateTimeException | ArithmeticException | ClassCastException | NullPointerException e) {
            throw new IllegalArgumentException("its rule of repetition leads nowhere", e);
        }
        return found;
    }
}
