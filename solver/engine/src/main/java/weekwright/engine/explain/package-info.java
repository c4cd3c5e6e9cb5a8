/** Says how a plan stands: totals, findings in a coach's words, what is left out and what stands in the way. */
@NullMarked
package weekwright.engine.explain;

import org.jspecify.annotations.NullMarked;
