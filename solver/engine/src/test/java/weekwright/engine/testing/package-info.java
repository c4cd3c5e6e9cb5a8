/** Small scenarios and plans told line by line, and what the engine says of them: for tests of any part of the engine. */
@NullMarked
package weekwright.engine.testing;

import org.jspecify.annotations.NullMarked;
