/** The search for a good plan. The only place that knows Timefold, and the only one that may look at a clock. */
@NullMarked
package weekwright.engine.search;

import org.jspecify.annotations.NullMarked;
