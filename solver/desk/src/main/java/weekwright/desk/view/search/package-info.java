/** How a search stands, and what it has found that could go. */
@NullMarked
package weekwright.desk.view.search;

import org.jspecify.annotations.NullMarked;
