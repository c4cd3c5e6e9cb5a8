package weekwright.engine;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.DayClass;

/**
 * What a day asks of a group, taken for its largest number of people with the same life.
 *
 * @param group id of the group
 * @param matchDay days to the nearest coming fixture within 6 days as -1 to -6, 0 on a match day, +1 and +2 after one
 *     when none comes within 6 days; null where there is none
 * @param demand points of demand, 0 to about 10
 * @param load planned load in AU (RPE times minutes)
 */
public record DayPicture(
        String group, LocalDate date, @Nullable Integer matchDay, double demand, double load, DayClass dayClass) {}
