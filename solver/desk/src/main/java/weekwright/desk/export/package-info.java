/** What leaves the desk in other forms: pages and paper. */
@NullMarked
package weekwright.desk.export;

import org.jspecify.annotations.NullMarked;
