/** What a coach touches: command line, files, exports. */
@NullMarked
package weekwright.desk;

import org.jspecify.annotations.NullMarked;
