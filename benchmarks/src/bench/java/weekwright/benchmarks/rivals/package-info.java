/**
 * What the engine is measured against: the yardstick rules stated a second time, once as constraint streams for Timefold as
 * it comes and once as a model for CP-SAT. No judge of the engine is asked; what is shared with it is the problem, that is
 * where sessions may lie and what each asks of whom.
 */
@NullMarked
package weekwright.benchmarks.rivals;

import org.jspecify.annotations.NullMarked;
