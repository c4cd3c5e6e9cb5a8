/** The coach's desk as a page: a small server for this machine only, its guards, and its routes by theme. */
@NullMarked
package weekwright.desk.page;

import org.jspecify.annotations.NullMarked;
