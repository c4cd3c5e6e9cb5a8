/**
 * The folder in which a coach's plan lives: every confirmed change a revision, written so that no crash, full disk, second
 * window or slip of the hand loses one. Knows the documents and a small layer over files, and writes no log.
 */
@NullMarked
package weekwright.desk.store;

import org.jspecify.annotations.NullMarked;
