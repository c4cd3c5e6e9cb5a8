/** What the desk does for a coach, the same from the command line and from a page. */
@NullMarked
package weekwright.desk.app;

import org.jspecify.annotations.NullMarked;
