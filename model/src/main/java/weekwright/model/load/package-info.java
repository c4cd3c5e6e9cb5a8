/** Arithmetic of training load: how much, how evenly, and how it compares. */
@NullMarked
package weekwright.model.load;

import org.jspecify.annotations.NullMarked;
