package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * A match or a meet, fixed in time.
 *
 * @param minutes elapsed minutes from start to end, intervals included
 * @param playMinutes minutes of play, or null for the family's
 * @param taperDays days of taper wanted before it, or null for none
 * @param expected minutes expected of athletes; who is not named plays it all
 * @param played minutes played, once known
 */
public record Fixture(
        String id,
        String label,
        List<String> groups,
        String family,
        Moment start,
        int minutes,
        @Nullable Integer playMinutes,
        FixtureWeight weight,
        Travel travel,
        @Nullable Integer taperDays,
        List<Appearance> expected,
        List<Appearance> played) {
    public Fixture {
        label = label == null ? id : label;
        family = family == null ? "fixture" : family;
        weight = weight == null ? FixtureWeight.REGULAR : weight;
        travel = travel == null ? Travel.NONE : travel;
        groups = Ids.listed(groups);
        expected = Ids.listed(expected);
        played = Ids.listed(played);
    }

    /** A fixture of which no more is known than when it is and whose: at home, of usual weight. */
    public static Fixture plain(
            String id, String label, List<String> groups, @Nullable String family, Moment start, int minutes) {
        return new Fixture(
                id,
                label,
                groups,
                family == null ? "fixture" : family,
                start,
                minutes,
                null,
                FixtureWeight.REGULAR,
                Travel.NONE,
                null,
                List.of(),
                List.of());
    }

    /** The same at another start. */
    public Fixture withStart(Moment start) {
        return copy(start, expected, played);
    }

    /** The same with other minutes expected. */
    public Fixture withExpected(List<Appearance> expected) {
        return copy(start, expected, played);
    }

    /** The same with other minutes played. */
    public Fixture withPlayed(List<Appearance> played) {
        return copy(start, expected, played);
    }

    private Fixture copy(Moment start, List<Appearance> expected, List<Appearance> played) {
        return new Fixture(
                id, label, groups, family, start, minutes, playMinutes, weight, travel, taperDays, expected, played);
    }
}
