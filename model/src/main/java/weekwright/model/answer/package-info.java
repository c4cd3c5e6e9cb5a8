/** What the program answers to a coach's questions about a plan: why not elsewhere, what could go, what has changed. */
@NullMarked
package weekwright.model.answer;

import org.jspecify.annotations.NullMarked;
