/** The rules as data: meaning, level, numbers and their published sources. */
@NullMarked
package weekwright.model.rulebook;

import org.jspecify.annotations.NullMarked;
