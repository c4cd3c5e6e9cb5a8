package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;

/** A time of day on the wall clock, {@code 00:00} to {@code 24:00}, in minutes after midnight. */
public record ClockTime(int minutes) implements Comparable<ClockTime> {
    public ClockTime {
        if (minutes < 0 || minutes > 1440) {
            throw new IllegalArgumentException("a time of day lies from 00:00 to 24:00");
        }
    }

    /**
     * Reads {@code HH:mm}.
     *
     * @throws IllegalArgumentException when the text is no time of day
     */
    @JsonCreator
    public static ClockTime parse(String text) {
        if (!text.matches("([01]\\d|2[0-3]):[0-5]\\d|24:00")) {
            throw new IllegalArgumentException("a time of day is written HH:mm, from 00:00 to 24:00");
        }
        return new ClockTime(Integer.parseInt(text.substring(0, 2)) * 60 + Integer.parseInt(text.substring(3)));
    }

    /** This time on a date; 24:00 is the midnight that ends it. */
    public LocalDateTime on(LocalDate date) {
        return date.atStartOfDay().plusMinutes(minutes);
    }

    @Override
    public int compareTo(ClockTime other) {
        return Integer.compare(minutes, other.minutes);
    }

    @Override
    @JsonValue
    public String toString() {
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
