package weekwright.engine.problem;

import weekwright.model.catalogue.Demands;

/**
 * Who plays how much of a fixture, by cohort: the bench is occupied, but only players carry the demand.
 *
 * @param minutes minutes played by cohort
 * @param demand demand by cohort, in thousandths
 * @param load load by cohort, in tenths of an arbitrary unit
 * @param nearBest cohorts whose own run in it was measured near their best speed
 */
public record Appearances(int[] minutes, int[] demand, int[] load, boolean[] nearBest) {
    static Appearances of(int[] minutes, int playMinutes, int warmUp, int rpeTenths) {
        int[] demand = new int[minutes.length];
        int[] load = new int[minutes.length];
        for (int cohort = 0; cohort < minutes.length; cohort++) {
            demand[cohort] = Demands.fixtureDemand(minutes[cohort]);
            load[cohort] = minutes[cohort] == 0
                    ? 0
                    : (int) ((long) rpeTenths * (playMinutes + warmUp) * minutes[cohort] / playMinutes);
        }
        return new Appearances(minutes, demand, load, new boolean[minutes.length]);
    }

    /** Whether a cohort plays at all. */
    public boolean plays(int cohort) {
        return minutes[cohort] > 0;
    }
}
