/** Forms made from the shape of the documents: what is filled in, what was sent, what is wrong with it. */
@NullMarked
package weekwright.desk.form;

import org.jspecify.annotations.NullMarked;
