/** What the coach knows and wants: groups, aims, fixtures, facilities, people, history. */
@NullMarked
package weekwright.model.scenario;

import org.jspecify.annotations.NullMarked;
