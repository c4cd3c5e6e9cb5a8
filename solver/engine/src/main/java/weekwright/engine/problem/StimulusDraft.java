package weekwright.engine.problem;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.scenario.Dose;

/** A stimulus in the making. */
final class StimulusDraft {
    final Kind kind;
    final int index;
    int group = -1;

    @Nullable
    FamilyInfo family;

    Dose dose = Dose.FULL;
    int start;
    int end;
    int before;
    int after;
    int day;
    boolean runsOver;
    int facility = Stimulus.NOWHERE;
    int warmUp;
    int rpeTenths;
    int demand;
    int load;
    int[] cohorts = {};

    @Nullable
    Appearances appearances;

    int option = -1;
    boolean learning;
    int lead = -1;
    int variant = -1;

    StimulusDraft(Kind kind, int index) {
        this.kind = kind;
        this.index = index;
    }

    StimulusDraft at(int startMinute, int endMinute, Calendar calendar) {
        start = startMinute;
        end = endMinute;
        day = calendar.dayOf(startMinute);
        runsOver = calendar.dayOf(endMinute - 1) > day;
        return this;
    }

    Stimulus done() {
        return new Stimulus(this);
    }
}
