package weekwright.engine.problem;

import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Played;

/** Who plays how much of a fixture, by cohort: the bench is occupied, but only players carry the demand. */
public final class Appearances {
    private final Played[] played;
    private final int[] demand;
    private final int[] load;
    private final boolean[] nearBest;

    Appearances(int[] minutes, int playMinutes, int warmUp, double rpe) {
        played = new Played[minutes.length];
        demand = new int[minutes.length];
        load = new int[minutes.length];
        nearBest = new boolean[minutes.length];
        for (int cohort = 0; cohort < minutes.length; cohort++) {
            played[cohort] = Played.of(minutes[cohort], playMinutes);
            demand[cohort] = Demands.fixtureDemand(played[cohort]);
            load[cohort] = Demands.fixtureLoadTenths(rpe, playMinutes, warmUp, minutes[cohort]);
        }
    }

    void ranNearBest(int cohort) {
        nearBest[cohort] = true;
    }

    /** Whether a cohort plays at all. */
    public boolean plays(int cohort) {
        return played[cohort] != Played.NONE;
    }

    /** How much of it a cohort plays. */
    public Played played(int cohort) {
        return played[cohort];
    }

    /** Demand for a cohort, in thousandths. */
    public int demand(int cohort) {
        return demand[cohort];
    }

    /** Load for a cohort, in tenths of an arbitrary unit. */
    public int load(int cohort) {
        return load[cohort];
    }

    /** Whether a cohort's own run in it was measured near its best speed. */
    public boolean nearBest(int cohort) {
        return nearBest[cohort];
    }
}
