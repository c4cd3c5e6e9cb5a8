/** What is read on a terminal: the paper, the ink, and a writer for each kind of page. */
@NullMarked
package weekwright.desk.view.terminal;

import org.jspecify.annotations.NullMarked;
