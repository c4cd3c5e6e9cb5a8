/** Day sheets: the numbers of a day for each athlete, and their words. */
@NullMarked
package weekwright.desk.view.sheet;

import org.jspecify.annotations.NullMarked;
