/**
 * The rules, each defined once: a judge reads a small view of the plan and tells a sink what is broken. The solver, the
 * findings and the check of a hand-made plan all use the same judges.
 */
@NullMarked
package weekwright.engine.rules;

import org.jspecify.annotations.NullMarked;
