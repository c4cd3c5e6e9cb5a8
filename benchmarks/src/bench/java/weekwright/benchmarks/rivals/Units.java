package weekwright.benchmarks.rivals;

/** What rules cost, in units of which 1200 make a point, and what a group pays of it, in tenths of a point. */
final class Units {
    static final int POINT = 1200;
    static final int TENTHS = 10;
    static final int MISSING_HIGH_DAY = 12 * POINT;
    static final int HIGH_DAY_TOO_MANY = 24 * POINT;
    static final int MIDDLE_DAY = 10 * POINT;
    static final int NOT_FRESH = 8 * POINT;
    static final int NEW_SKILL_TIRED = 16 * POINT;
    static final int PREFERRED = 2 * POINT;
    /** Hours below those wanted that carry no cost, in minutes. */
    static final int TOLERANCE = 4 * 60;
    /** Minutes short from which each costs double. */
    static final int DEAR_AFTER = 12 * 60;

    static final int A_MINUTE = POINT / 60;

    private Units() {}

    /** What a gap costs that should be so many minutes. */
    static int hours(int wanted, int gap) {
        int missing = wanted == 0 ? 0 : Math.max(0, wanted - TOLERANCE - gap);
        return A_MINUTE * (missing + Math.max(0, missing - DEAR_AFTER));
    }

    /** Units times heads, shared among a group: tenths of a point, half up. */
    static int share(long unitsTimesHeads, int groupHeads) {
        long whole = (long) POINT * groupHeads;
        return (int) Math.floorDiv(2 * TENTHS * unitsTimesHeads + whole, 2 * whole);
    }
}
