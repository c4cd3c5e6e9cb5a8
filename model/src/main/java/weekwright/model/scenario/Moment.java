package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/**
 * A time on the wall clock of the scenario's zone, to the minute, e.g. {@code 2027-03-02T16:30}. An offset is written
 * only to tell the later of two equal times at the end of summer time.
 */
public record Moment(LocalDateTime local, @Nullable ZoneOffset offset) {
    private static final DateTimeFormatter LOCAL =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm").withResolverStyle(java.time.format.ResolverStyle.STRICT);

    /** A time without an offset. */
    public static Moment of(LocalDateTime local) {
        return new Moment(local, null);
    }

    /**
     * Reads a time as somebody types it: as {@link #parse}, or with a space for the {@code T} and spaces round it.
     *
     * @throws java.time.format.DateTimeParseException when it is no time
     */
    public static Moment typed(String text) {
        return parse(text.strip().replace(' ', 'T'));
    }

    /**
     * Reads {@code 2027-03-02T16:30} or {@code 2027-10-31T01:30+00:00}.
     *
     * @throws DateTimeParseException when the text is neither
     */
    @JsonCreator
    public static Moment parse(String text) {
        if (text.length() == 16) {
            return of(LocalDateTime.parse(text, LOCAL));
        }
        OffsetDateTime with = OffsetDateTime.parse(text);
        return new Moment(with.toLocalDateTime(), with.getOffset());
    }

    /** The moment that the zone's clocks show at an instant; an offset is kept only where the time happens twice. */
    public static Moment at(Instant instant, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(instant, zone);
        ZoneOffset offset = zone.getRules().getOffset(instant);
        boolean later = zone.getRules().getValidOffsets(local).indexOf(offset) == 1;
        return new Moment(local, later ? offset : null);
    }

    /** The local date. */
    public LocalDate date() {
        return local.toLocalDate();
    }

    /** Whether the zone's clocks ever show this time (with this offset, where one is written). */
    public boolean existsIn(ZoneId zone) {
        var valid = zone.getRules().getValidOffsets(local);
        return offset == null ? !valid.isEmpty() : valid.contains(offset);
    }

    /** The instant: the earlier one where a time happens twice and no offset is written. */
    public Instant instant(ZoneId zone) {
        return offset == null ? local.atZone(zone).toInstant() : local.toInstant(offset);
    }

    @Override
    @JsonValue
    public String toString() {
        return LOCAL.format(local) + (offset == null ? "" : offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId());
    }
}
