/** Demo scenarios, their loader, and a seeded generator of squads. All names are invented. */
@NullMarked
package weekwright.scenarios;

import org.jspecify.annotations.NullMarked;
