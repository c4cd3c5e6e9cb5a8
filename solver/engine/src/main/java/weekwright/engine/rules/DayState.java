package weekwright.engine.rules;

import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Played;
import weekwright.model.scenario.Pathway;

/**
 * What a day asks of a cohort. Times are epoch minutes, demand thousandths, load tenths. Written only while it is worked
 * out.
 */
public final class DayState {
    /** So far off that nights and days without anything on one of them are longer than any that is asked for. */
    private static final int NEVER = Integer.MAX_VALUE / 2;

    static final int SPRINTING = 1 << Pathway.MAX_VELOCITY_SPRINT.ordinal();

    int largest;
    int others;
    int load;
    DayClass dayClass = DayClass.FREE;
    /** The high work is of the upper body only. */
    boolean upperOnly;
    /** Something lies on it that counts against a free day. */
    boolean busy;
    /** Something placed lies on it. */
    boolean placed;
    /** Something placed that counts against a free day lies on it. */
    boolean placedBusy;
    /** Pathways met at high intensity; of fixtures played, past ones only, and maximal speed only where measured. */
    int met;
    /** Largest dose, in thirds, of what is placed for maximal speed. */
    int sprintThirds;
    /** Start of the first tiring thing that has no late place in the order of a day. */
    int tiringStart;
    /** The cohort plays a fixture on it. */
    boolean fixture;

    int visits;
    /** Visits with too many sessions, counting what is placed among them. */
    int fullVisits;
    /** Most sessions that count in one of those visits. */
    int mostInVisit;
    /** Minutes between visits, one of them with something placed and neither with a fixture. */
    int waitMinutes;
    /** Training minutes without warm-ups, of what counts. */
    int mainMinutes;
    /** Something placed that counts lies on it. */
    boolean placedCounts;
    /** Whole minutes of sessions and commitments. */
    int wholeMinutes;

    int firstStart;
    boolean firstPlaced;
    int lastEnd;
    boolean lastPlaced;
    /** Pathways met at high intensity by what makes the block. */
    int blockHigh;

    int blockStart;
    int blockEnd;
    int blockCross;
    boolean blockPlaced;

    /** Demand of the day for display. */
    public double demand() {
        return Demands.demand(largest, others, load);
    }

    /** Load of the day in tenths. */
    public int loadTenths() {
        return load;
    }

    /** High, middle, low or free. */
    public DayClass dayClass() {
        return dayClass;
    }

    boolean high() {
        return dayClass == DayClass.HIGH;
    }

    /** High, and counted among days running. */
    boolean highRunning() {
        return high() && !upperOnly;
    }

    boolean middle() {
        return dayClass == DayClass.MIDDLE;
    }

    /** High and free of a fixture played: what the hours from block to block are for. */
    boolean block() {
        return high() && !fixture;
    }

    /** Whether the first and last things, and who put them there, are the same. */
    boolean sameEdges(DayState other) {
        return firstStart == other.firstStart
                && lastEnd == other.lastEnd
                && firstPlaced == other.firstPlaced
                && lastPlaced == other.lastPlaced;
    }

    /** Whether visits and training minutes are the same. */
    boolean sameVisits(DayState other) {
        return visits == other.visits
                && fullVisits == other.fullVisits
                && mostInVisit == other.mostInVisit
                && waitMinutes == other.waitMinutes
                && sameMinutes(other);
    }

    /** Whether the minutes spent are the same. */
    boolean sameMinutes(DayState other) {
        return mainMinutes == other.mainMinutes
                && placedCounts == other.placedCounts
                && wholeMinutes == other.wholeMinutes
                && placed == other.placed;
    }

    /** Whether the hard work is the same: what blocks and runs of high days read. */
    boolean sameHardWork(DayState other) {
        return high() == other.high()
                && upperOnly == other.upperOnly
                && fixture == other.fixture
                && blockStart == other.blockStart
                && blockEnd == other.blockEnd
                && blockCross == other.blockCross
                && blockHigh == other.blockHigh
                && blockPlaced == other.blockPlaced;
    }

    /** Whether what counts against a free day is the same. */
    boolean sameBusiness(DayState other) {
        return busy == other.busy && placedBusy == other.placedBusy;
    }

    /**
     * Works the day out from what lies on it, in order of start.
     *
     * @param visiting what makes a visit, and a full one
     */
    DayState of(Stimulus[] things, int count, int cohort, Visiting visiting) {
        clear();
        boolean sprinted = false;
        boolean lifted = false;
        int sum = 0;
        Stimulus before = null;
        for (int i = 0; i < count; i++) {
            Stimulus thing = things[i];
            FamilyInfo family = thing.family;
            if (family == null) {
                continue;
            }
            int demand = thing.demandFor(cohort);
            largest = Math.max(largest, demand);
            sum += demand;
            load += thing.loadFor(cohort);
            int lent = lent(thing, things, count);
            if (sharesWarmUps(thing)) {
                int saved = saved(thing, family, before, sprinted, lifted);
                load -= saved + Math.min(thing.load - saved, thing.rpeTenths * lent);
                sprinted |= family.sprint;
                lifted |= family.lift;
                before = thing.lentBy == null ? thing : before;
            }
            note(thing, family, cohort, lent);
        }
        others = sum - largest;
        dayClass = busyAtAll(things, count) ? Demands.classOf(largest, others, load) : DayClass.FREE;
        visiting.count(things, count, this);
        if (high()) {
            noteHighWork(things, count, cohort);
        }
        return this;
    }

    private void clear() {
        largest = 0;
        others = 0;
        load = 0;
        upperOnly = false;
        busy = false;
        placed = false;
        placedBusy = false;
        met = 0;
        sprintThirds = 0;
        tiringStart = NEVER;
        fixture = false;
        visits = 0;
        fullVisits = 0;
        mostInVisit = 0;
        waitMinutes = 0;
        mainMinutes = 0;
        placedCounts = false;
        wholeMinutes = 0;
        firstStart = NEVER;
        firstPlaced = false;
        lastEnd = -NEVER;
        lastPlaced = false;
        blockHigh = 0;
        blockStart = 0;
        blockEnd = 0;
        blockCross = 0;
        blockPlaced = false;
    }

    /** Minutes of a practice in which the cohort does what lies in them. */
    private static int lent(Stimulus practice, Stimulus[] things, int count) {
        int minutes = 0;
        for (int i = 0; practice.lends != null && i < count; i++) {
            minutes += things[i].lentBy == practice ? things[i].minutes() : 0;
        }
        return minutes;
    }

    private static boolean sharesWarmUps(Stimulus thing) {
        return thing.kind == Kind.PLACEMENT || thing.kind == Kind.COMMITMENT;
    }

    private static int saved(
            Stimulus thing,
            FamilyInfo family,
            @org.jspecify.annotations.Nullable Stimulus before,
            boolean sprinted,
            boolean lifted) {
        if (before == null || thing.start - before.end > Demands.SHARED_WARM_UP_GAP_MINUTES) {
            return 0;
        }
        boolean first = (family.sprint && !sprinted) || (family.lift && !lifted);
        return thing.rpeTenths * (thing.warmUp - Demands.sharedWarmUp(thing.warmUp, first));
    }

    private static boolean busyAtAll(Stimulus[] things, int count) {
        for (int i = 0; i < count; i++) {
            FamilyInfo family = things[i].family;
            if (family != null && !family.recovery) {
                return true;
            }
        }
        return false;
    }

    private void note(Stimulus thing, FamilyInfo family, int cohort, int lent) {
        placed |= thing.placed();
        if (!family.recovery) {
            busy = true;
            placedBusy |= thing.placed();
        }
        fixture |= thing.playedBy(cohort);
        noteMet(thing, family, cohort);
        noteMinutes(thing, family, lent);
        boolean tiring = thing.demandFor(cohort) > Demands.LOW_TO && family.order < FamilyInfo.TIRING_FROM;
        tiringStart = tiring ? Math.min(tiringStart, thing.start) : tiringStart;
        if (thing.occupiedStart <= firstStart) {
            firstPlaced = thing.placed() || (firstPlaced && thing.occupiedStart == firstStart);
            firstStart = thing.occupiedStart;
        }
        if (thing.occupiedEnd >= lastEnd) {
            lastPlaced = thing.placed() || (lastPlaced && thing.occupiedEnd == lastEnd);
            lastEnd = thing.occupiedEnd;
        }
    }

    private void noteMet(Stimulus thing, FamilyInfo family, int cohort) {
        if (thing.appearances == null) {
            met |= family.high;
            boolean sprint = thing.placed() && (family.high & SPRINTING) != 0;
            sprintThirds = sprint ? Math.max(sprintThirds, thing.dose.thirds()) : sprintThirds;
            return;
        }
        if (thing.kind == Kind.HISTORY && thing.appearances.played(cohort) == Played.FULL) {
            met |= family.high & ~SPRINTING;
        }
        met |= thing.appearances.nearBest(cohort) ? SPRINTING : 0;
    }

    private void noteMinutes(Stimulus thing, FamilyInfo family, int lent) {
        if (!sharesWarmUps(thing)) {
            return;
        }
        wholeMinutes += Math.max(0, thing.minutes() - lent);
        if (family.counted) {
            mainMinutes += Math.max(0, thing.minutes() - thing.warmUp - lent);
            placedCounts |= thing.placed();
        }
    }

    private void noteHighWork(Stimulus[] things, int count, int cohort) {
        boolean hard = false;
        upperOnly = true;
        for (int i = 0; i < count; i++) {
            FamilyInfo family = things[i].family;
            if (family != null && things[i].demandFor(cohort) > Demands.LOW_TO) {
                hard = true;
                upperOnly &= family.upperOnly;
            }
        }
        upperOnly &= hard;
        blockStart = NEVER;
        blockEnd = -NEVER;
        for (int i = 0; i < count; i++) {
            FamilyInfo family = things[i].family;
            if (family != null && !family.fixture && (!hard || things[i].demandFor(cohort) > Demands.LOW_TO)) {
                addToBlock(things[i], family);
            }
        }
    }

    private void addToBlock(Stimulus thing, FamilyInfo family) {
        blockStart = Math.min(blockStart, thing.start);
        blockEnd = Math.max(blockEnd, thing.end);
        blockCross = Math.max(blockCross, family.crossMust * thing.dose.hoursTenths() / 10);
        blockHigh |= family.high;
        blockPlaced |= thing.placed();
    }
}
