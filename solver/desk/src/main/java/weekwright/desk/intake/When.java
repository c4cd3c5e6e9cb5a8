package weekwright.desk.intake;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When something is, as far as a file says.
 *
 * @param date its date, in the zone of the scenario where a time is known, else as written
 * @param instant its time, or null where only a date is known
 */
public record When(LocalDate date, @Nullable Instant instant) {
    /** Whether only a date is known. */
    public boolean isDateOnly() {
        return instant == null;
    }
}
