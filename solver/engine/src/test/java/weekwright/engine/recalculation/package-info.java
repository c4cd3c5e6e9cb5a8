/**
 * A slow and obvious second calculation of how a plan stands, written from the rules alone, against which the engine's
 * own figures are tested. It reasons person by person, in exact fractions, and keeps nothing between two plans.
 */
@NullMarked
package weekwright.engine.recalculation;

import org.jspecify.annotations.NullMarked;
