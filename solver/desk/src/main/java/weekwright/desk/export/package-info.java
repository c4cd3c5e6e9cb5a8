/** Gives a plan out: calendars, tables and paper. */
@NullMarked
package weekwright.desk.export;

import org.jspecify.annotations.NullMarked;
