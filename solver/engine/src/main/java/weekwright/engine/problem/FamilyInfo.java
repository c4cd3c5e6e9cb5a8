package weekwright.engine.problem;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;

/** A session family with its hours in minutes and its pathways as bits, ready for the inner loop. */
public final class FamilyInfo {
    /** No order within a day. */
    public static final int NO_ORDER = -1;
    /** Order within a day from which a new skill that comes later is judged by the order alone. */
    public static final int TIRING_FROM = 3;

    /** Where the family stands among all by id: what decides where two things start and end together. */
    public final int index;

    /** The family as the catalogue has it. */
    public final Family family;
    /** Pathways met at high intensity, one bit each by {@link Pathway#ordinal}. */
    public final int high;
    /** Pathways met at all. */
    public final int any;

    /** Fewest minutes from it to the next work that is high on the same pathway. */
    public final int againMust;
    /** Minutes wanted there. */
    public final int againWant;
    /** Fewest minutes from a block of high work to the next. */
    public final int crossMust;
    /** Where it belongs within a day: the lower, the fresher; {@link #NO_ORDER} where it does not matter. */
    public final int order;
    /** Whether it is sprinting near the best. */
    public final boolean sprint;
    /** Whether it is lifting in a weights room. */
    public final boolean lift;
    /** Whether it trains the upper body and nothing else. */
    public final boolean upperOnly;
    /** Whether it counts as rest. */
    public final boolean recovery;
    /** Whether it is practice of the game. */
    public final boolean practice;
    /** Whether it readies for a fixture. */
    public final boolean primer;
    /** Whether it is a competition. */
    public final boolean fixture;
    /** Whether it counts for the size of a visit and the training minutes of a day: what is easy or short does not. */
    public final boolean counted;
    /** Of a fixture family, the hours asked after it. */
    public final AfterHours after;

    private static final Set<String> EASY_OR_SHORT = Set.of("mobility", "warm-up", "technique", "trunk-and-balance");

    private final DayClass classed;
    private final DayClass classedInStrengthGroups;

    FamilyInfo(int index, Family family) {
        this.index = index;
        this.family = family;
        high = bits(family, true);
        any = bits(family, false);
        againMust = must(family.againHours());
        againWant = want(family.againHours());
        crossMust = must(family.crossHours());
        order = family.order() == null ? NO_ORDER : family.order();
        sprint = family.sprint();
        lift = family.lift();
        upperOnly = family.upperBodyOnly();
        recovery = family.role() == Role.RECOVERY;
        practice = family.role() == Role.PRACTICE;
        primer = family.role() == Role.PRIMER;
        fixture = family.role() == Role.FIXTURE;
        counted = !recovery && !fixture && !EASY_OR_SHORT.contains(family.id());
        after = new AfterHours(family);
        classed = Demands.classOf(family, false);
        classedInStrengthGroups = Demands.classOf(family, true);
    }

    /** Minutes of the fewest hours allowed. */
    public static int must(@Nullable Hours hours) {
        return hours == null ? 0 : (int) Math.round(hours.must() * 60);
    }

    /** Minutes of the hours wanted; 0 where none are. */
    public static int want(@Nullable Hours hours) {
        return hours == null || hours.want() == null ? 0 : (int) Math.round(hours.want() * 60);
    }

    /** Hours to a fixture that hold for a dose. */
    public @Nullable Hours beforeFixture(Dose dose) {
        Hours micro = family.beforeFixtureMicroHours();
        return dose == Dose.MICRO && micro != null ? micro : family.beforeFixtureHours();
    }

    /** High, low or between, by the edges of day demand at full dose. */
    public DayClass classIn(GroupInfo group) {
        return group.strength() ? classedInStrengthGroups : classed;
    }

    /** Whether it is more than low work. */
    public boolean middleOrHigh(GroupInfo group) {
        DayClass is = classIn(group);
        return is == DayClass.MIDDLE || is == DayClass.HIGH;
    }

    private static int bits(Family family, boolean highOnly) {
        int bits = 0;
        for (Pathway pathway : Pathway.values()) {
            if (highOnly ? family.high(pathway) : family.pathways().containsKey(pathway)) {
                bits |= 1 << pathway.ordinal();
            }
        }
        return bits;
    }
}
