package weekwright.desk.intake.calendar;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import weekwright.desk.intake.Remarks;
import weekwright.desk.intake.Times;

/** Tells when the clocks of some place show a local time. */
interface LocalClock {
    /** Universal time. */
    LocalClock UTC = (local, remarks) -> local.toInstant(ZoneOffset.UTC);

    /** The clocks of a zone that the Java platform knows. */
    static LocalClock of(ZoneId zone) {
        return (local, remarks) -> Times.instant(local, zone, remarks);
    }

    /** The instant; what is odd about it is remarked. */
    Instant instant(LocalDateTime local, Remarks remarks);
}
