/** What was done and what is planned of each athlete, and the load that it makes. */
@NullMarked
package weekwright.desk.view.load;

import org.jspecify.annotations.NullMarked;
