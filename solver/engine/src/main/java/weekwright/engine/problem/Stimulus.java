package weekwright.engine.problem;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;

/**
 * Something on people's timelines, at its time and place: an option of a session, a commitment, a fixture or an entry of
 * history. Times are epoch minutes; demand is in thousandths, load in tenths of an arbitrary unit (RPE times minutes).
 */
public final class Stimulus {
    /** What kind of thing it is. */
    public enum Kind {
        PLACEMENT,
        COMMITMENT,
        FIXTURE,
        HISTORY
    }

    /** Nowhere in particular. */
    public static final int NOWHERE = -1;

    /** What it is. */
    public final Kind kind;
    /** Place in the list of its kind: of the session, commitment, fixture or history entry. */
    public final int index;
    /** The group it belongs to, or -1 where single athletes are concerned. */
    public final int group;
    /** The family, or null for time that is only taken up. */
    public final @Nullable FamilyInfo family;

    /** Share of the main part that is done. */
    public final Dose dose;
    /** First minute. */
    public final int start;
    /** Minute at which it is over. */
    public final int end;
    /** Start and end with warm-up and travel of a fixture; the same as start and end otherwise. */
    public final int occupiedStart;

    /** See {@link #occupiedStart}. */
    public final int occupiedEnd;
    /** Local date of the start, as a day number. */
    public final int day;

    /** Whether it ends on a later local date than it starts. */
    public final boolean runsOver;

    /** Place in the problem's list, or {@link #NOWHERE}. */
    public final int facility;
    /** Minutes of warm-up among its own, nothing of it shared. */
    public final int warmUp;
    /** Planned effort (RPE, 0 to 10) in tenths. */
    public final int rpeTenths;
    /** Demand for somebody who takes part in full. */
    public final int demand;
    /** Load for somebody who takes part in full, nothing of the warm-up shared. */
    public final int load;
    /** Cohorts that take part, in order; of a fixture all cohorts of its groups, the bench too. */
    public final int[] cohorts;
    /** Cohorts that it is for, in order, those included who sit it out or missed it. */
    public final int[] meant;
    /** Which set of people that is, and whose session. */
    final int audience;
    /** The practice in whose lent minutes it lies, or null. */
    public final @Nullable Stimulus lentBy;
    /** The minutes that a practice lends, or null. */
    public final @Nullable LentTime lends;
    /** Of a fixture, who plays how much; null of anything else. */
    public final @Nullable Appearances appearances;
    /** Where it stands among its session's options; -1 for fixed things. */
    public final int option;
    /** Whether a new skill is being learnt in it. */
    public final boolean learning;
    /** The same where all come whom no clinician keeps away: itself, unless somebody sits it out. */
    public final Stimulus base;
    /** Staff member named for it in place of who leads its session, or -1. */
    public final int lead;
    /** Variant named for it in place of its session's, by its place in the family's list, or -1. */
    public final int variant;

    Stimulus(StimulusDraft draft) {
        kind = draft.kind;
        index = draft.index;
        group = draft.group;
        family = draft.family;
        dose = draft.dose;
        start = draft.start;
        end = draft.end;
        occupiedStart = draft.start - draft.before;
        occupiedEnd = draft.end + draft.after;
        day = draft.day;
        runsOver = draft.runsOver;
        facility = draft.facility;
        warmUp = draft.warmUp;
        rpeTenths = draft.rpeTenths;
        demand = draft.demand;
        load = draft.load;
        cohorts = draft.cohorts;
        meant = draft.meant;
        audience = draft.audience;
        lentBy = draft.lentBy;
        lends = draft.lends;
        appearances = draft.appearances;
        option = draft.option;
        learning = draft.learning;
        lead = draft.lead;
        variant = draft.variant;
        base = draft.base == null ? this : draft.base;
    }

    /** The same without one of the cohorts that take part. */
    public Stimulus without(int cohort) {
        StimulusDraft draft = StimulusDraft.like(this);
        draft.base = base;
        draft.cohorts =
                java.util.Arrays.stream(cohorts).filter(one -> one != cohort).toArray();
        return draft.done();
    }

    /** The same under another lead, or with another variant; -1 leaves either as it is. It is none of the options. */
    public Stimulus with(int otherLead, int otherVariant) {
        StimulusDraft draft = StimulusDraft.like(base);
        draft.option = -1;
        draft.lead = otherLead < 0 ? lead : otherLead;
        draft.variant = otherVariant < 0 ? variant : otherVariant;
        return draft.done();
    }

    /** Whether it is held where the practice is that lends it minutes: it takes no room of its own. */
    public boolean isGuest() {
        return lentBy != null && lentBy.facility == facility;
    }

    /** Whether it was placed by us or by hand, and not fixed from outside. */
    public boolean placed() {
        return kind == Kind.PLACEMENT;
    }

    /** Whether it is a fixture, coming or played. */
    public boolean isFixture() {
        return family != null && family.fixture;
    }

    /** Demand for a cohort that takes part, in thousandths. */
    public int demandFor(int cohort) {
        return appearances == null ? demand : appearances.demand(cohort);
    }

    /** Load for a cohort that takes part, nothing of the warm-up shared, in tenths. */
    public int loadFor(int cohort) {
        return appearances == null ? load : appearances.load(cohort);
    }

    /** Whether it is a fixture in which a cohort plays. */
    public boolean playedBy(int cohort) {
        return appearances != null && appearances.plays(cohort);
    }

    /** Whole minutes, warm-up included. */
    public int minutes() {
        return end - start;
    }

    /** Whether a cohort takes part. */
    public boolean has(int cohort) {
        for (int other : cohorts) {
            if (other == cohort) {
                return true;
            }
        }
        return false;
    }

    /** Order on a timeline: by start, then end, then what it is and whose, by the order of groups; never by name. */
    public static int inOrder(Stimulus a, Stimulus b) {
        if (a.start != b.start) {
            return Integer.compare(a.start, b.start);
        }
        if (a.end != b.end) {
            return Integer.compare(a.end, b.end);
        }
        int family = Integer.compare(familyIndex(a), familyIndex(b));
        return family != 0 ? family : amongAlike(a, b);
    }

    private static int amongAlike(Stimulus a, Stimulus b) {
        int kind = a.kind.compareTo(b.kind);
        if (kind != 0) {
            return kind;
        }
        return a.group != b.group ? Integer.compare(a.group, b.group) : Integer.compare(a.index, b.index);
    }

    private static int familyIndex(Stimulus stimulus) {
        return stimulus.family == null ? -1 : stimulus.family.index;
    }
}
