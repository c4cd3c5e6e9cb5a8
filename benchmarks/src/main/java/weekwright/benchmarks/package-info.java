/** Figures that anybody can repeat: moves a second, time to everything placed, process start. */
@NullMarked
package weekwright.benchmarks;

import org.jspecify.annotations.NullMarked;
