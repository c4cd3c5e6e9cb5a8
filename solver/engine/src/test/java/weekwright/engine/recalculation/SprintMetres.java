package weekwright.engine.recalculation;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;

/** How far is run in a full session at top speed. */
final class SprintMetres extends Judge {
    private static final String RULE = "sprint-metres";

    SprintMetres(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        the.placements().stream()
                .filter(thing -> thing.dose() == Dose.FULL && thing.highOn(Pathway.MAX_VELOCITY_SPRINT))
                .forEach(this::sprintMetres);
    }

    /** The fast metres and all metres of a sprint session stay inside their bands. */
    private void sprintMetres(Thing placement) {
        String group = placement.group();
        String band = band(the.group(group));
        boolean isLong = !Fraction.of(placement.mainMinutes()).below(number(RULE, "longMinutes", group));
        Fraction outside = outside(
                        fast(placement), number(RULE, band + "Least", group), number(RULE, band + "Most", group))
                .plus(outside(
                        all(placement),
                        number(RULE, "allLeast", group),
                        number(RULE, isLong ? "allMostLong" : "allMost", group)));
        Fraction points = outside.dividedBy(Fraction.of(10)).times(number(RULE, "pointsPerTenMetres", group));
        want(RULE, placement.key(), group, points, Fraction.ONE);
    }

    private static String band(Group group) {
        boolean offSeason = group.phase() == Phase.OFF_SEASON || group.phase() == Phase.PRE_SEASON;
        return group.level() == Level.NOVICE
                ? "novice"
                : group.kind() == GroupKind.SPRINT ? "sprint" : offSeason ? "offSeason" : "inSeason";
    }

    private static Fraction outside(Fraction metres, Fraction least, Fraction most) {
        return least.minus(metres).max(metres.minus(most)).max(Fraction.ZERO);
    }

    private Fraction fast(Thing placement) {
        Metres given = given(placement);
        return given == null
                ? number(RULE, "fastMetresAMinute", placement.group()).times(placement.mainMinutes())
                : Fraction.of(given.fast()).times(weekFactor(placement));
    }

    private Fraction all(Thing placement) {
        Metres given = given(placement);
        return given == null
                ? number(RULE, "metresAMinute", placement.group()).times(placement.mainMinutes())
                : Fraction.of(given.all()).times(weekFactor(placement));
    }

    private static @Nullable Metres given(Thing placement) {
        return placement.aim() == null ? null : placement.aim().metres();
    }

    private Fraction weekFactor(Thing placement) {
        Aim aim = placement.aim();
        int week = Math.max(0, the.weeks().numberOf(placement.date()));
        return aim == null ? Fraction.ONE : Fraction.of(aim.weekFactor(week));
    }
}
