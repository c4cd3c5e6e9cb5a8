package weekwright.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * Takes a few sessions that lie close together out of the plan and puts them back one by one where they cost least, again
 * and again; what comes out is accepted if it is no worse than the plan of some rounds ago.
 */
public final class RuinAndRecreate implements Searcher {
    private static final int LATE_ACCEPTANCE = 40;
    private static final double FIRST_PART = 0.25;
    private static final int LEAST_RUINED = 2;
    private static final int MOST_RUINED = 7;
    /** Options that a session tries before it is put back. */
    private static final int SAMPLE = 28;

    @Override
    public Found search(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, long moves, Watch watch) {
        Pace pace =
                new Pace(Judge.of(problem, start), new Scale(problem), watch, moves, PATIENCE * Searcher.options(free));
        // What must stay placed is never taken out: the plan would be judged without it for a while.
        List<Session> loose = free.stream().filter(session -> !session.stays).toList();
        if (!loose.isEmpty() && moves > 0 && !pace.settled()) {
            new Run(problem, start, loose, new Random(seed), moves, pace, watch.forShare(FIRST_PART)).run();
            pace.end();
        }
        return new Found(pace.best.at(), pace.moves(), pace.settled());
    }

    /** One search. */
    private static final class Run {
        private final Judge judge;
        private final Scale scale;
        private final Nearby nearby;
        private final Stimulus[][] worthTrying;
        private final Random random;
        private final Pace pace;
        private final Watch firstPart;
        private final long movesOfFirstPart;
        private final long[] accepted = new long[LATE_ACCEPTANCE];
        private int mustFactor = 1;
        private boolean weighed;
        private boolean stop;

        Run(
                Problem problem,
                @Nullable Stimulus[] start,
                List<Session> free,
                Random random,
                long moves,
                Pace pace,
                Watch firstPart) {
            judge = Judge.of(problem, start);
            scale = new Scale(problem);
            nearby = new Nearby(problem, free, judge);
            worthTrying = new Stimulus[problem.sessions.size()][];
            free.forEach(session -> worthTrying[session.index] = Places.worthTrying(judge, session));
            this.random = random;
            this.pace = pace;
            this.firstPart = firstPart;
            movesOfFirstPart = (long) (moves * FIRST_PART);
        }

        void run() {
            Arrays.fill(accepted, slope());
            for (long round = 0; !stop; round++) {
                doubleMustsIfNeeded();
                int at = (int) (round % LATE_ACCEPTANCE);
                long before = slope();
                List<Session> out = nearby.some(LEAST_RUINED + random.nextInt(MOST_RUINED - LEAST_RUINED + 1), random);
                @Nullable Stimulus[] old = takeOut(out);
                putBack(out);
                long now = slope();
                if (now > before && now > accepted[at]) {
                    restore(out, old);
                    now = before;
                }
                accepted[at] = Math.min(accepted[at], now);
            }
        }

        /** After the first quarter a must weighs double if the walk itself breaks more of them than the best plan. */
        private void doubleMustsIfNeeded() {
            if (weighed || (pace.moves() < movesOfFirstPart && !firstPart.tried(0))) {
                return;
            }
            weighed = true;
            if (judge.total().must > pace.best.cost().must) {
                mustFactor = 2;
                Arrays.fill(accepted, slope());
            }
        }

        private @Nullable Stimulus[] takeOut(List<Session> out) {
            @Nullable Stimulus[] old = new @Nullable Stimulus[out.size()];
            for (int i = 0; i < old.length; i++) {
                old[i] = judge.at(out.get(i));
                judge.move(out.get(i), null);
            }
            settleAndKeep();
            return old;
        }

        /** The dearer and the harder to place the earlier, with some luck. */
        private void putBack(List<Session> out) {
            double[] luck = new double[out.size()];
            for (int i = 0; i < luck.length; i++) {
                luck[i] = Construction.rank(out.get(i)) * 0.7
                        + random.nextDouble() * 2
                        + out.get(i).coarse.length / 400.0;
            }
            Integer[] order = new Integer[luck.length];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, Comparator.comparingDouble(i -> luck[i]));
            for (int i : order) {
                putBack(out.get(i));
            }
        }

        private void putBack(Session session) {
            Stimulus[] options = worthTrying[session.index];
            int tries = Math.min(options.length, SAMPLE);
            boolean all = tries == options.length;
            Stimulus best = null;
            long least = slope();
            for (int i = 0; i < tries && !stop; i++) {
                Stimulus option = options[all ? i : random.nextInt(options.length)];
                judge.move(session, option);
                long slope = scale.slopeBelow(judge, mustFactor, least, pace.best);
                stop = slope == Scale.BEYOND ? pace.triedInVain() : pace.tried(judge);
                if (slope < least) {
                    least = slope;
                    best = option;
                }
                judge.revert();
            }
            judge.move(session, best);
            settleAndKeep();
        }

        private void restore(List<Session> out, @Nullable Stimulus[] old) {
            for (int i = 0; i < old.length; i++) {
                judge.move(out.get(i), old[i]);
            }
            settleAndKeep();
        }

        private void settleAndKeep() {
            judge.settle();
            judge.keep();
        }

        private long slope() {
            return scale.slope(judge, mustFactor);
        }
    }

    /** Finds sessions that have to do with each other: the same people, the same place on the same day. */
    private static final class Nearby {
        private final Problem problem;
        private final List<Session> free;
        private final Judge judge;
        private final ByGroupAndWeek<Session> byGroupAndWeek;

        Nearby(Problem problem, List<Session> free, Judge judge) {
            this.problem = problem;
            this.free = free;
            this.judge = judge;
            byGroupAndWeek = new ByGroupAndWeek<>(problem, free, session -> session);
        }

        List<Session> some(int number, Random random) {
            Session first = free.get(random.nextInt(free.size()));
            Stimulus at = judge.at(first);
            Stimulus around = at != null ? at : first.coarse[random.nextInt(first.coarse.length)];
            List<Session> near = candidates(first, around, random);
            double[] distance = new double[near.size()];
            for (int i = 0; i < distance.length; i++) {
                Stimulus its = judge.at(near.get(i));
                double days = its == null ? 1.5 : Math.abs(its.start - around.start) / (24 * 60.0);
                distance[i] = near.get(i) == first ? -1 : days * (0.4 + random.nextDouble());
            }
            Integer[] order = new Integer[distance.length];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, Comparator.comparingDouble(i -> distance[i]));
            List<Session> some = new ArrayList<>();
            for (int i = 0; i < Math.min(number, order.length); i++) {
                some.add(near.get(order[i]));
            }
            return some;
        }

        private List<Session> candidates(Session first, Stimulus around, Random random) {
            List<Session> near = new ArrayList<>();
            boolean wide = random.nextInt(4) == 0;
            int last = Math.min(problem.calendar.weeks() - 1, first.week + 1);
            for (int group = 0; group < problem.groups.size(); group++) {
                boolean ours = wide || shares(first.group.index, group);
                for (int week = Math.max(0, first.week - 1); ours && week <= last; week++) {
                    for (Session session : byGroupAndWeek.of(group, week)) {
                        if (session == first || close(session, around)) {
                            near.add(session);
                        }
                    }
                }
            }
            return near;
        }

        private boolean shares(int group, int other) {
            for (int related : problem.related[group]) {
                if (related == other) {
                    return true;
                }
            }
            return false;
        }

        private boolean close(Session session, Stimulus around) {
            Stimulus its = judge.at(session);
            return its == null ? session.week == around.day / 7 : Math.abs(its.day - around.day) <= 3;
        }
    }
}
