/** The command line: one class a command, thin over the use cases. */
@NullMarked
package weekwright.desk.cli;

import org.jspecify.annotations.NullMarked;
