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
    int[] meant = {};
    int audience;

    @Nullable
    Appearances appearances;

    @Nullable
    Stimulus lentBy;

    @Nullable
    LentTime lends;

    @Nullable
    Stimulus base;

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

    /** The same as something that is made already. */
    static StimulusDraft like(Stimulus other) {
        StimulusDraft draft = new StimulusDraft(other.kind, other.index);
        draft.group = other.group;
        draft.family = other.family;
        draft.dose = other.dose;
        draft.start = other.start;
        draft.end = other.end;
        draft.before = other.start - other.occupiedStart;
        draft.after = other.occupiedEnd - other.end;
        draft.day = other.day;
        draft.runsOver = other.runsOver;
        draft.facility = other.facility;
        draft.warmUp = other.warmUp;
        draft.rpeTenths = other.rpeTenths;
        draft.demand = other.demand;
        draft.load = other.load;
        draft.cohorts = other.cohorts;
        draft.meant = other.meant;
        draft.audience = other.audience;
        draft.appearances = other.appearances;
        draft.lentBy = other.lentBy;
        draft.lends = other.lends;
        draft.option = other.option;
        draft.learning = other.learning;
        draft.lead = other.lead;
        draft.variant = other.variant;
        return draft;
    }

    /** Whom it is for, those who sit it out included. */
    StimulusDraft meantFor(int[] people, Audiences audiences) {
        audience = audiences.of(kind == Kind.PLACEMENT ? group : -1, people);
        meant = audiences.cohorts(audience);
        cohorts = meant;
        return this;
    }

    Stimulus done() {
        return new Stimulus(this);
    }
}
