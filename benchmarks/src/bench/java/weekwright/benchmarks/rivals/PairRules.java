package weekwright.benchmarks.rivals;

import java.util.Objects;
import weekwright.engine.problem.AfterHours;
import weekwright.engine.problem.AfterHours.Asked;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Played;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Pathway;

/** The yardstick rules about two things of the same people, at least one of them a session that was placed. */
final class PairRules {
    private static final int PART_LESS = 16 * 60;
    private static final int PRIMER_END = 3 * 60;
    private static final int SPRINT_OR_STRENGTH = 48 * 60;
    private static final int SPEED = 1;
    private static final int STRENGTH = 4;
    private static final int TIRING_FROM = 3;
    private static final int MAIN_LIFTS_AND_SPEED = 1 << Pathway.MAX_VELOCITY_SPRINT.ordinal()
            | 1 << Pathway.KNEE_DOMINANT.ordinal()
            | 1 << Pathway.HIP_DOMINANT.ordinal();

    private final Problem problem;

    PairRules(Problem problem) {
        this.problem = problem;
    }

    /** Musts broken, and what the wants cost in tenths of a point. */
    record Found(int musts, int tenths) {
        static final Found NOTHING = new Found(0, 0);

        Found plus(Found other) {
            return new Found(musts + other.musts, tenths + other.tenths);
        }
    }

    /** What two things break, in whatever order they come; what starts with a fixture comes after it. */
    Found of(Stimulus a, Stimulus b) {
        boolean withFixture = a.start == b.start && a.isFixture() != b.isFixture();
        boolean inOrder = withFixture ? a.isFixture() : Stimulus.inOrder(a, b) <= 0;
        return inOrder ? ordered(a, b) : ordered(b, a);
    }

    private Found ordered(Stimulus first, Stimulus second) {
        int musts = atOnce(first, second) ? 1 : 0;
        FamilyInfo earlier = first.family;
        FamilyInfo later = second.family;
        if (earlier == null || later == null) {
            return new Found(musts, 0);
        }
        if (earlier.fixture) {
            return new Found(musts + (later.fixture ? 0 : afterFixture(first, second, later)), 0);
        }
        if (later.fixture) {
            return new Found(musts + beforeFixture(first, second, earlier), 0);
        }
        int group = second.placed() ? second.group : first.group;
        if (first.day == second.day) {
            boolean twice = earlier == later && !earlier.recovery && !earlier.practice;
            return new Found(musts + (twice ? 1 : 0), shared(first, second, notFresh(first, second), group));
        }
        int gap = second.start - first.end;
        boolean again = (earlier.high & later.high) != 0;
        musts += again && tooShort(gap, hours(earlier.againMust, first.dose)) ? 1 : 0;
        int units = again ? Units.hours(wanted(problem.groups.get(group), earlier, later, first.dose), gap) : 0;
        return new Found(musts, shared(first, second, units, group));
    }

    private boolean atOnce(Stimulus first, Stimulus second) {
        int gap = Math.max(second.occupiedStart - first.occupiedEnd, first.occupiedStart - second.occupiedEnd);
        return gap < problem.transferMinutes(first.facility, second.facility);
    }

    private int shared(Stimulus first, Stimulus second, int units, int group) {
        if (units == 0) {
            return 0;
        }
        int heads = 0;
        for (int cohort : first.cohorts) {
            heads += second.has(cohort) ? problem.cohorts.get(cohort).heads() : 0;
        }
        return Units.share((long) units * heads, problem.groups.get(group).heads);
    }

    /** Units of two sessions of one day in the wrong order. */
    static int notFresh(Stimulus first, Stimulus second) {
        int earlier = Objects.requireNonNull(first.family).order;
        int later = Objects.requireNonNull(second.family).order;
        boolean judged = first.kind != Stimulus.Kind.HISTORY && second.kind != Stimulus.Kind.HISTORY;
        if (!judged || first.start == second.start || later == FamilyInfo.NO_ORDER || earlier <= later) {
            return 0;
        }
        return units(earlier, second.learning);
    }

    /** Units of something that comes after what lies later in the order of a day. */
    static int units(int earlierOrder, boolean newSkill) {
        return newSkill && earlierOrder >= TIRING_FROM ? Units.NEW_SKILL_TIRED : Units.NOT_FRESH;
    }

    private static boolean tooShort(int gap, int asked) {
        return asked > 0 && gap < asked;
    }

    static int hours(int minutes, Dose dose) {
        return minutes * dose.hoursTenths() / 10;
    }

    /** Minutes wanted between two sessions of one quality. */
    static int wanted(GroupInfo group, FamilyInfo earlier, FamilyInfo later, Dose dose) {
        int both = earlier.high & later.high;
        boolean own = group.sprintOrStrength() && (earlier.order == SPEED || earlier.order == STRENGTH);
        boolean onlyThose = (both & ~MAIN_LIFTS_AND_SPEED) == 0;
        int full = own && onlyThose ? Math.min(SPRINT_OR_STRENGTH, earlier.againWant) : earlier.againWant;
        return hours(full, dose);
    }

    private int beforeFixture(Stimulus session, Stimulus fixture, FamilyInfo family) {
        int gap = fixture.start - session.end;
        boolean minor = fixture.kind == Stimulus.Kind.FIXTURE
                && problem.scenario.fixtures().get(fixture.index).weight() == FixtureWeight.MINOR;
        boolean played = false;
        for (int cohort : session.cohorts) {
            played |= fixture.playedBy(cohort);
        }
        int musts = !minor && tooShort(gap, FamilyInfo.must(family.beforeFixture(session.dose))) ? 1 : 0;
        musts += family.primer && gap < PRIMER_END ? 1 : 0;
        return played ? musts : 0;
    }

    private int afterFixture(Stimulus fixture, Stimulus session, FamilyInfo family) {
        int gap = session.start - fixture.end;
        for (int cohort : session.cohorts) {
            if (fixture.playedBy(cohort) && tooShort(gap, asked(fixture, session, family, cohort))) {
                return 1;
            }
        }
        return 0;
    }

    private int asked(Stimulus fixture, Stimulus session, FamilyInfo family, int cohort) {
        Played played = Objects.requireNonNull(fixture.appearances).played(cohort);
        if (played == Played.SHORT) {
            return AfterHours.afterShort(problem.shortAppearance, family).must();
        }
        Asked asked = Objects.requireNonNull(fixture.family).after.before(family, session.dose);
        return played == Played.FULL ? asked.must() : asked.must() - PART_LESS;
    }
}
