/** The coach's documents and the arithmetic of training. Knows no solver, no web page and no clock. */
@NullMarked
package weekwright.model;

import org.jspecify.annotations.NullMarked;
