/** Reads calendars (iCalendar, RFC 5545) as they are met in the world. */
@NullMarked
package weekwright.desk.intake.calendar;

import org.jspecify.annotations.NullMarked;
