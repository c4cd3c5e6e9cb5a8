/** The brief for those who are told of a week: what lies when, why so, what was given up and what is new. */
@NullMarked
package weekwright.desk.view.brief;

import org.jspecify.annotations.NullMarked;
