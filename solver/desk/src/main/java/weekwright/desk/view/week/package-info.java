/** The page of a week: its landscape, what is in the hand, and how it stands. */
@NullMarked
package weekwright.desk.view.week;

import org.jspecify.annotations.NullMarked;
