package weekwright.model.catalogue;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;

/**
 * What sessions and days ask of the body: the one definition of demand, load and whole minutes.
 *
 * <p>All of it is exact: demand in thousandths of a point (0 to 10 points), load in tenths of an arbitrary unit (RPE
 * times minutes), time in minutes. Every figure is an expert proposal, except that load is session-RPE (Foster et al.
 * 2001, JSCR 15:109-115).
 */
public final class Demands {
    /** Demand in thousandths from which a day or a family is high. */
    public static final int HIGH_FROM = 6_500;
    /** Demand in thousandths up to which a day or a family is low; a session above it makes part of a high block. */
    public static final int LOW_TO = 5_500;
    /** Share of a day's lesser sessions that adds to its largest, in per cent. */
    public static final int OTHERS_PERCENT = 15;
    /** Planned load that asks as much as one point of demand, in AU. */
    public static final int LOAD_OF_A_POINT = 110;
    /** Points by which metabolic demand weighs less than neural and tissue demand. */
    public static final int METABOLIC_LESS = 2;
    /** Share of demand that counts where only the upper body works, in per cent; all of it in strength groups. */
    public static final int UPPER_BODY_PERCENT = 60;
    /** Demand of a full primer, in points. */
    public static final int PRIMER_POINTS = 4;
    /** Demand of a fixture played in full, in points. */
    public static final int FIXTURE_POINTS = 9;
    /** Fewest minutes of a main part, however small the dose. */
    public static final int LEAST_MAIN_MINUTES = 10;
    /** Main parts are rounded up to whole multiples of these minutes. */
    public static final int MAIN_STEP_MINUTES = 5;
    /** Sessions with at most so many minutes between them share a warm-up. */
    public static final int SHARED_WARM_UP_GAP_MINUTES = 15;
    /** Minutes that are left of the later session's warm-up where it is shared. */
    public static final int SHARED_WARM_UP_MINUTES = 5;
    /** The same for the day's first sprint or first lift. */
    public static final int SHARED_FIRST_WARM_UP_MINUTES = 10;

    private static final int THOUSANDTHS = 1_000;

    private Demands() {}

    /**
     * Demand of a session, in thousandths; a fixture family is taken as played in full.
     *
     * @param strengthGroup whether the group is of kind strength, where upper-body work counts in full
     */
    public static int sessionDemand(Family family, Dose dose, boolean strengthGroup) {
        return sessionDemand(family, null, dose, strengthGroup);
    }

    /**
     * Demand of a session or a commitment, in thousandths.
     *
     * @param effort of a commitment: stands for the family's neural and tissue demand; or null
     */
    public static int sessionDemand(Family family, @Nullable Effort effort, Dose dose, boolean strengthGroup) {
        if (family.role() == Role.FIXTURE) {
            return FIXTURE_POINTS * THOUSANDTHS;
        }
        int share = family.upperBodyOnly() && !strengthGroup ? UPPER_BODY_PERCENT : 100;
        // A demand in tenths of a point, times two percentages, is a whole number of thousandths.
        return fullTenths(family, effort) * dose.demandPercent() * share / 100;
    }

    private static int fullTenths(Family family, @Nullable Effort effort) {
        if (family.role() == Role.PRIMER) {
            return 10 * PRIMER_POINTS;
        }
        Demand demand = family.demand();
        int body = effort == null ? Math.max(tenths(demand.neural()), tenths(demand.tissue())) : 10 * effort.demand();
        return Math.max(body, tenths(demand.metabolic()) - 10 * METABOLIC_LESS);
    }

    /** Demand of a fixture for somebody who played so much of it, in thousandths. */
    public static int fixtureDemand(Played played) {
        return FIXTURE_POINTS * THOUSANDTHS / 10 * played.demandTenths();
    }

    /**
     * Minutes from the start to the end of a session: the warm-up, which never shrinks, and the main part by dose and
     * week, rounded up to 5 minutes and at least 10. A family without a main part is all warm-up.
     *
     * @param aimMinutes main minutes that an aim asks for, or null for the family's
     * @param weekFactor factor of the main part in this week, read to a thousandth
     */
    public static int wholeMinutes(Family family, @Nullable Integer aimMinutes, Dose dose, double weekFactor) {
        int main = aimMinutes == null ? family.minutes() : aimMinutes;
        return main == 0 ? family.warmUpMinutes() : family.warmUpMinutes() + mainMinutes(main, dose, weekFactor);
    }

    private static int mainMinutes(int main, Dose dose, double weekFactor) {
        long product = (long) main * dose.thirds() * Math.round(weekFactor * THOUSANDTHS);
        long step = (long) MAIN_STEP_MINUTES * 3 * THOUSANDTHS;
        long steps = (product + step - 1) / step;
        return Math.max(LEAST_MAIN_MINUTES, Math.toIntExact(steps * MAIN_STEP_MINUTES));
    }

    /**
     * Warm-up minutes that count where a session follows another within {@link #SHARED_WARM_UP_GAP_MINUTES}.
     *
     * @param firstOfItsKind whether it is the day's first sprint or the day's first lift
     */
    public static int sharedWarmUp(int warmUpMinutes, boolean firstOfItsKind) {
        return Math.min(warmUpMinutes, firstOfItsKind ? SHARED_FIRST_WARM_UP_MINUTES : SHARED_WARM_UP_MINUTES);
    }

    /** Session load: rating of perceived exertion (read to a tenth) times minutes, in tenths of an AU. */
    public static int loadTenths(double rpe, int minutes) {
        return tenths(rpe) * minutes;
    }

    /**
     * Load of a fixture in tenths of an AU: RPE times play and warm-up, by the share of the minutes played, rounded
     * half up.
     *
     * @param playMinutes minutes of play of the whole fixture, at least 1
     */
    public static int fixtureLoadTenths(double rpe, int playMinutes, int warmUpMinutes, int minutesPlayed) {
        int whole = loadTenths(rpe, playMinutes + warmUpMinutes);
        return (int) ((2L * whole * minutesPlayed + playMinutes) / (2L * playMinutes));
    }

    /**
     * The class of a day. It is free only where nothing is asked at all; what counts for a coach's free day is
     * another matter, since optional recovery does not spoil it.
     *
     * @param largest demand of its most demanding session, in thousandths
     * @param others sum of the demands of all its other sessions, in thousandths
     * @param loadTenths its planned load, in tenths of an AU
     */
    public static DayClass classOf(int largest, int others, int loadTenths) {
        // Both sides of each edge times 100, so that nothing is rounded.
        long body = 100L * largest + (long) OTHERS_PERCENT * others;
        long load = 100L * loadTenths;
        if (body == 0 && load == 0) {
            return DayClass.FREE;
        }
        if (body >= 100L * HIGH_FROM || load >= (long) HIGH_FROM * LOAD_OF_A_POINT) {
            return DayClass.HIGH;
        }
        boolean low = body <= 100L * LOW_TO && load <= (long) LOW_TO * LOAD_OF_A_POINT;
        return low ? DayClass.LOW : DayClass.MIDDLE;
    }

    /** The class of a family: one full session of its usual minutes, alone on its day. */
    public static DayClass classOf(Family family, boolean strengthGroup) {
        int load = loadTenths(family.rpe(), family.minutes() + family.warmUpMinutes());
        return classOf(sessionDemand(family, Dose.FULL, strengthGroup), 0, load);
    }

    /** Demand of a day in points, for showing only: {@link #classOf(int, int, int)} decides. */
    public static double demand(int largest, int others, int loadTenths) {
        double body = (100.0 * largest + OTHERS_PERCENT * (double) others) / (100.0 * THOUSANDTHS);
        return Math.max(body, loadTenths / (10.0 * LOAD_OF_A_POINT));
    }

    private static int tenths(double value) {
        return (int) Math.round(value * 10);
    }
}
