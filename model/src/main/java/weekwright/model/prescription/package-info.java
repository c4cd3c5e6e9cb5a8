/** The numbers of the day: kilograms, times and distances from what an athlete has shown, and what is done in a session. */
@NullMarked
package weekwright.model.prescription;

import org.jspecify.annotations.NullMarked;
