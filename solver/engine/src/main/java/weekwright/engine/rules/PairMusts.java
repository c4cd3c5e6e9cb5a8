package weekwright.engine.rules;

import java.util.List;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.AfterFixtureRules.AfterFixture;
import weekwright.engine.rules.BeforeFixtureRules.BeforeFixture;
import weekwright.engine.rules.BeforeFixtureRules.PrimerEnd;
import weekwright.engine.rules.PlaceAndTimeRules.OnePlaceAtATime;
import weekwright.engine.rules.RecoveryRules.PathwayGapFloor;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;

/**
 * What must lie between two things of one person, asked of a pair as such. The hours are those of the pair's own group,
 * whatever the level of the rule there; which of the rules keep somebody from a session is for that session's group to say.
 */
final class PairMusts {
    private static final List<String> IDS =
            List.of("one-place-at-a-time", "pathway-gap-floor", "before-fixture", "after-fixture", "primer-end");

    private final List<RuleOn<PairView>> judges;
    private final boolean[] must;
    private final boolean night;
    private final int nightMinutes;

    PairMusts(RuleSettings settings) {
        judges = List.of(
                new OnePlaceAtATime(settings),
                new PathwayGapFloor(settings),
                new BeforeFixture(settings),
                new AfterFixture(settings),
                new PrimerEnd(settings));
        must = new boolean[IDS.size()];
        for (int i = 0; i < must.length; i++) {
            must[i] = settings.level(IDS.get(i)) == RuleLevel.MUST;
        }
        night = settings.level("night-rest") == RuleLevel.MUST;
        nightMinutes = (int) Math.round(60 * settings.number("night-rest", "hours"));
    }

    /** Hears that something is broken. */
    private static final class Noticed implements Sink {
        private boolean any;

        @Override
        public void breach(JudgedRule rule, View view, Breach breach, int groupHeads) {
            any = true;
        }
    }

    private final Noticed noticed = new Noticed();

    /**
     * Whether a pair breaks a must for the one person that the view looks at.
     *
     * @param asking the musts of the session's group
     */
    boolean broken(PairView view, PairMusts asking) {
        noticed.any = false;
        for (int i = 0; i < must.length && !noticed.any; i++) {
            if (asking.must[i]) {
                judges.get(i).judge(view, noticed);
            }
        }
        return noticed.any;
    }

    /** Whether the night between two things on neighbouring days is too short, by the hours of the person's main group. */
    static boolean nightTooShort(Stimulus a, Stimulus b, PairMusts ofPerson, PairMusts asking) {
        if (!asking.night || a.family == null || b.family == null || Math.abs(a.day - b.day) != 1) {
            return false;
        }
        int rest = a.day < b.day ? b.occupiedStart - a.occupiedEnd : a.occupiedStart - b.occupiedEnd;
        return rest < ofPerson.nightMinutes;
    }
}
