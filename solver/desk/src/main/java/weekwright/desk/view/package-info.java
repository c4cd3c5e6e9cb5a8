/**
 * What a coach reads, as records. Here lies what all of it shares: names, dates and words; each kind of page or sheet has
 * a package of its own.
 */
@NullMarked
package weekwright.desk.view;

import org.jspecify.annotations.NullMarked;
