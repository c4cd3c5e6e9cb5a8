package weekwright.engine.rules;

import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.FixtureWeight;

/** How the load of days and weeks runs up to a fixture. */
final class RunUpRules {
    private RunUpRules() {}

    /** Daily load does not rise towards a fixture, and the day before carries at most two thirds of MD-3. */
    static final class LoadFallsToFixture extends RuleOn<GroupView> {
        /** The day before a fixture is too heavy against the third day before. */
        static final int SHARE = 3;

        private final int thirdsMilli = (int) Math.round(number("lastDayThirds") * 1000);
        private final int apart = (int) number("waivedDays");

        LoadFallsToFixture(RuleSettings settings) {
            super("load-falls-to-fixture", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Stimulus fixture = view.fixture();
            if (Fixtures.weight(view, fixture) == FixtureWeight.MINOR || Fixtures.crowded(view, fixture, apart)) {
                return;
            }
            for (int before = 3; before >= 2; before--) {
                rises(view, sink, fixture, before);
            }
            tooMuchBefore(view, sink, fixture);
        }

        private void rises(GroupView view, Sink sink, Stimulus fixture, int before) {
            int day = fixture.day - before;
            if (!inPlan(view, day, day + 1)) {
                return;
            }
            Breach breach = view.breach().days(day, day + 1).detail(before - 1);
            for (int cohort : view.cohorts()) {
                int earlier = view.day(cohort, day).load;
                int later = view.day(cohort, day + 1).load;
                if (fixture.playedBy(cohort) && later > earlier) {
                    add(view, breach, cohort, later, earlier, day, day + 1);
                }
            }
            report(sink, view, breach);
        }

        private void tooMuchBefore(GroupView view, Sink sink, Stimulus fixture) {
            int third = fixture.day - 3;
            if (!inPlan(view, third, fixture.day - 1)) {
                return;
            }
            Breach breach = view.breach().days(third, fixture.day - 1).detail(SHARE);
            for (int cohort : view.cohorts()) {
                int limit = (int) ((long) view.day(cohort, third).load * thirdsMilli / 3000);
                int load = view.day(cohort, fixture.day - 1).load;
                if (fixture.playedBy(cohort) && load > limit) {
                    add(view, breach, cohort, load, limit, third, fixture.day - 1);
                }
            }
            report(sink, view, breach);
        }

        private void add(GroupView view, Breach breach, int cohort, int measured, int limit, int day, int other) {
            boolean fixed = !view.day(cohort, day).placed && !view.day(cohort, other).placed;
            breach.add(cohort, view.heads(cohort), pointsPerBreach(), measured, limit, fixed);
        }

        private static boolean inPlan(GroupView view, int first, int last) {
            return first >= 0 && last < view.calendar().days();
        }
    }

    /** Before a fixture with a taper the volume falls by so much and no more. */
    static final class Taper extends RuleOn<GroupView> {
        private static final int MOST_OUTSIDE = 1000;

        private final int least = tenths("leastPercent");
        private final int most = tenths("mostPercent");
        private final int weeks = (int) number("weeks");
        private final int perTenth = points("pointsAPercent") / 10;

        Taper(RuleSettings settings) {
            super("taper", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Stimulus fixture = view.fixture();
            int length = Fixtures.taperDays(view.problem, fixture);
            int from = fixture.day - length;
            int to = Math.min(fixture.day, view.calendar().days());
            int base = from - 7 * weeks;
            if (from >= to || to <= 0) {
                return;
            }
            Breach breach = view.breach().days(from, to - 1).detail(from - base);
            for (int cohort : view.cohorts()) {
                long before = view.load(cohort, base, from) * (to - from);
                boolean known = view.problem.knownFrom(cohort) <= base;
                if (fixture.playedBy(cohort) && known && before > 0) {
                    long now = view.load(cohort, from, to) * (from - base);
                    int fall = tenthsOfPercent(before - now, before);
                    boolean fixed = !view.placedBetween(cohort, base, to);
                    add(view, breach, cohort, fall, fixed);
                }
            }
            report(sink, view, breach);
        }

        private void add(GroupView view, Breach breach, int cohort, int fall, boolean fixed) {
            int limit = fall < least ? least : most;
            int outside = Math.min(MOST_OUTSIDE, fall < least ? least - fall : fall - most);
            if (outside > 0) {
                breach.add(cohort, view.heads(cohort), perTenth * outside, fall, limit, fixed);
            }
        }

        private int tenths(String name) {
            return (int) Math.round(number(name) * 10);
        }
    }

    /** Tenths of a per cent of one figure in another, rounded half up. */
    static int tenthsOfPercent(long part, long whole) {
        return (int) Math.floorDiv(2 * 1000 * part + whole, 2 * whole);
    }
}
