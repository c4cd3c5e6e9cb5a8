/** Places sessions and explains plans. Knows the model and Timefold only; seed, clock and limits are passed in. */
@NullMarked
package weekwright.engine;

import org.jspecify.annotations.NullMarked;
