package weekwright.engine.problem;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which cohorts may ever have to miss which sessions: those with times of their own, and those who have something to do
 * that is theirs alone. For all others nobody needs to ask who comes.
 */
public final class MayMiss {
    private final boolean[][] asked;
    private final boolean[][] keeps;
    private final int[][] ofGroup;
    private final int[][] ranks;

    MayMiss(Problem problem, Audiences audiences) {
        ranks = ranks(problem);
        asked = new boolean[problem.cohorts.size()][audiences.count()];
        keeps = new boolean[problem.cohorts.size()][audiences.count()];
        for (Cohort cohort : problem.cohorts) {
            BitSet things = things(problem, audiences, cohort.index());
            for (int session = 0; session < audiences.count(); session++) {
                boolean theirs = audiences.group(session) >= 0 && audiences.has(session, cohort.index());
                if (theirs) {
                    noteKept(audiences, cohort, things, session);
                }
            }
        }
        ofGroup = IntStream.range(0, problem.groups.size())
                .mapToObj(group -> Arrays.stream(problem.cohortsOfGroup[group])
                        .filter(this::anything)
                        .toArray())
                .toArray(int[][]::new);
    }

    /** Place of each group among the groups of each cohort: 0 is the main one. */
    private static int[][] ranks(Problem problem) {
        int[][] ranks = new int[problem.cohorts.size()][problem.groups.size()];
        for (Cohort cohort : problem.cohorts) {
            for (int group = 0; group < problem.groups.size(); group++) {
                ranks[cohort.index()][group] = cohort.groups().indexOf(group);
            }
        }
        return ranks;
    }

    /** Sets of people of all that is fixed for a cohort or may be placed for it. */
    private static BitSet things(Problem problem, Audiences audiences, int cohort) {
        BitSet things = new BitSet();
        for (Stimulus fixed : problem.fixed) {
            things.set(fixed.audience, audiences.has(fixed.audience, cohort) || things.get(fixed.audience));
        }
        for (int audience = 0; audience < audiences.count(); audience++) {
            boolean ofSession = audiences.group(audience) >= 0 && audiences.has(audience, cohort);
            things.set(audience, ofSession || things.get(audience));
        }
        return things;
    }

    private void noteKept(Audiences audiences, Cohort cohort, BitSet things, int session) {
        int rank = ranks[cohort.index()][audiences.group(session)];
        int[] keeping = things.stream()
                .filter(thing -> comesFirst(audiences, cohort, thing, rank))
                .filter(thing -> audiences.alone(thing, session))
                .toArray();
        asked[cohort.index()][session] = cohort.own() != null || keeping.length > 0;
        Arrays.stream(keeping).forEach(thing -> keeps[cohort.index()][thing] = true);
    }

    /** Sessions of groups that come later in a cohort's list never keep it from one. */
    private boolean comesFirst(Audiences audiences, Cohort cohort, int thing, int rank) {
        int group = audiences.group(thing);
        return group < 0 || ranks[cohort.index()][group] <= rank;
    }

    private boolean anything(int cohort) {
        for (boolean any : asked[cohort]) {
            if (any) {
                return true;
            }
        }
        return false;
    }

    /** Whether anybody may ever miss anything. */
    public boolean anybody() {
        return Arrays.stream(ofGroup).anyMatch(some -> some.length > 0);
    }

    /** Cohorts of a group that may have to miss something, of this group or another, in order. */
    public int[] ofGroup(int group) {
        return ofGroup[group];
    }

    /** Whether a cohort may have to miss a session. */
    public boolean asked(int cohort, Stimulus session) {
        return asked[cohort][session.audience];
    }

    /** Whether a thing is such that it may keep a cohort from a session. */
    public boolean keeps(int cohort, Stimulus thing) {
        return keeps[cohort][thing.audience];
    }

    /** Place of a group among a cohort's groups: 0 is the main one. */
    public int rank(int cohort, int group) {
        return ranks[cohort][group];
    }

    /** All cohorts that may have to miss something, in order. */
    public List<Integer> cohorts() {
        return IntStream.range(0, asked.length).filter(this::anything).boxed().toList();
    }
}
