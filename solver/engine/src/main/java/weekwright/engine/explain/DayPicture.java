package weekwright.engine.explain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.DayClass;

/**
 * A group's day at a glance, for its largest cohort.
 *
 * @param matchDay days to the next fixture within six days as -6 to -1, 0 on the day of one, 1 or 2 after one where the
 *     next is more than three days away; null otherwise
 * @param demand demand of the day in points
 * @param load planned load in AU
 */
public record DayPicture(
        String group, LocalDate date, @Nullable Integer matchDay, double demand, double load, DayClass dayClass) {}
