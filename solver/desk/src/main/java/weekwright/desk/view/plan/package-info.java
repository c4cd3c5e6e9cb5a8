/** A plan day by day, how it stands, and what of it is put beside another or on a wall. */
@NullMarked
package weekwright.desk.view.plan;

import org.jspecify.annotations.NullMarked;
