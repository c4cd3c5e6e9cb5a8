/** The other pages of the desk: its start, forms, rules, log, history, words. */
@NullMarked
package weekwright.desk.view.page;

import org.jspecify.annotations.NullMarked;
