/** What is placed, what is held in place, and how the plan stands against the rules. */
@NullMarked
package weekwright.model.plan;

import org.jspecify.annotations.NullMarked;
