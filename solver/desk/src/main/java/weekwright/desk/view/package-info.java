/** What a coach reads, as records, and the writer that sets them on a terminal. */
@NullMarked
package weekwright.desk.view;

import org.jspecify.annotations.NullMarked;
