/** Reading, checking and writing of documents, with every problem and its place in the file. */
@NullMarked
package weekwright.model.document;

import org.jspecify.annotations.NullMarked;
