/** Takes in what others have written: fixtures, hours and people from calendars and tables, each shown before it is taken. */
@NullMarked
package weekwright.desk.intake;

import org.jspecify.annotations.NullMarked;
