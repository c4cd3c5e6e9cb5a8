package weekwright.model.answer;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a day offers a session.
 *
 * @param best the option of the day that costs least, or null where none is possible
 * @param text the day in words
 */
public record WhyNotDay(LocalDate day, @Nullable WhyNotOption best, String text) {}
