/** What may happen to a scenario after its plan was made, as pure functions: nothing of the scenario given is changed. */
@NullMarked
package weekwright.model.change;

import org.jspecify.annotations.NullMarked;
