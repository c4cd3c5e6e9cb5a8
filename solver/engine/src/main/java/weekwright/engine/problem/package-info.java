/** The planning problem built from a scenario: people by cohort, what is fixed, sessions and their possible places. */
@NullMarked
package weekwright.engine.problem;

import org.jspecify.annotations.NullMarked;
