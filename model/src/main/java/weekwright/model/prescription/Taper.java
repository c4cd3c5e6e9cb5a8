package weekwright.model.prescription;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;

/**
 * Fewer sets before a fixture that asks for a taper; how hard each is and how often they come stay as they are. The mean of
 * the two halves is a cut of 42.5 %, inside the 41 to 60 % of Bosquet et al. 2007, MSSE 39:1358-1365; the two figures are an
 * expert proposal.
 */
public final class Taper {
    /** Most of a full session's sets in the first half of the days. */
    public static final double FIRST_HALF = 0.7;
    /** Most of a full session's sets in the second half. */
    public static final double SECOND_HALF = 0.45;

    private Taper() {}

    /** Most of a full session's sets on a day of a group, 1 where no taper is wanted. */
    public static double share(List<Fixture> fixtures, Group group, LocalDate day) {
        return fixtures.stream()
                .filter(fixture -> fixture.groups().contains(group.id()))
                .mapToDouble(fixture -> share(fixture, day))
                .min()
                .orElse(1);
    }

    private static double share(Fixture fixture, LocalDate day) {
        Integer days = fixture.taperDays();
        long left = ChronoUnit.DAYS.between(day, fixture.start().date());
        if (days == null || left < 1 || left > days) {
            return 1;
        }
        return 2 * left > days ? FIRST_HALF : SECOND_HALF;
    }
}
