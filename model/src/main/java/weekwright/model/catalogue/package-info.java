/** Session families: what each kind of session demands, trains and needs. */
@NullMarked
package weekwright.model.catalogue;

import org.jspecify.annotations.NullMarked;
