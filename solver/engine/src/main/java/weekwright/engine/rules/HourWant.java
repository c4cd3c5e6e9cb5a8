package weekwright.engine.rules;

import weekwright.model.rulebook.RuleSettings;

/**
 * What missed hours cost: nothing within the tolerance, so that the same hour on alternate days carries no fine; then a
 * point an hour, and two an hour beyond the first twelve (expert proposal). A must about hours costs the same, without a
 * tolerance, where a scenario makes a want of it.
 */
final class HourWant {
    /** Where no hours are named a gap is never too short. */
    private static final int NEVER = Integer.MIN_VALUE / 2;

    private final int tolerance;
    private final int dearAfter;
    private final int perMinute;
    private final int perMinuteBeyond;

    HourWant(RuleSettings settings, String rule) {
        tolerance = settings.has(rule, "toleranceHours")
                ? (int) Math.round(settings.number(rule, "toleranceHours") * 60)
                : 0;
        dearAfter = (int) Math.round(settings.number(rule, "beyondHours") * 60);
        perMinute = (int) Math.round(settings.number(rule, "pointsAnHour") * JudgedRule.POINT / 60);
        perMinuteBeyond = (int) Math.round(settings.number(rule, "pointsAnHourBeyond") * JudgedRule.POINT / 60);
    }

    /** The limit that is counted, in minutes; below every gap where none are wanted. */
    int counted(int wantedMinutes) {
        return wantedMinutes == 0 ? NEVER : wantedMinutes - tolerance;
    }

    /** Units of cost of a gap that is too short, in minutes. */
    int cost(int shortMinutes) {
        return perMinute * Math.min(shortMinutes, dearAfter) + perMinuteBeyond * Math.max(0, shortMinutes - dearAfter);
    }
}
