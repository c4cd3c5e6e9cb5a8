package weekwright.engine.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.load.Change;
import weekwright.model.load.LoadRatio;
import weekwright.model.load.Spread;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Scenario;

/** What a whole week's load is like, and what is known of those who carry it: facts, which a coach may turn into wants. */
final class LoadFacts {
    private static final int WEEK = 7;
    /** Figures that differ by less are equal: sums of doubles are not exact. */
    private static final double TINY = 1e-9;

    private LoadFacts() {}

    private abstract static class OfWeek extends RuleOn<GroupView> {
        OfWeek(String id, RuleSettings settings) {
            super(id, settings);
        }

        @Override
        final void judge(GroupView view, Sink sink) {
            int first = WEEK * view.week();
            if (view.calendar().daysIn(view.week()) == WEEK) {
                judge(view, sink, first, first + WEEK);
            }
        }

        abstract void judge(GroupView view, Sink sink, int first, int end);

        /** Adds a cohort; where none of its week was placed by us, it is told. */
        final void add(GroupView view, Breach breach, int cohort, int measured, int limit, int first, int end) {
            boolean fixed = !view.placedBetween(cohort, first, end);
            breach.add(cohort, view.heads(cohort), pointsPerBreach(), measured, limit, fixed);
        }

        /** Loads of days, in tenths: what is made of them has no unit. */
        static double[] loads(GroupView view, int cohort, int first, int end) {
            double[] loads = new double[end - first];
            for (int day = first; day < end; day++) {
                loads[day - first] = view.day(cohort, day).load;
            }
            return loads;
        }
    }

    /** A week's load is near the mean of the last weeks of its kind, with a fixture or without. */
    static final class LoadOfWeek extends OfWeek {
        /** Added to the number of weeks where not all concerned are equally far off. */
        static final int UP_TO = 100;

        private static final int MOST_WEEKS = 4;

        private final double noted = number("notedPercent");
        private final double asked = number("askedPercent");

        LoadOfWeek(RuleSettings settings) {
            super("week-load", settings);
        }

        @Override
        void judge(GroupView view, Sink sink, int first, int end) {
            Breach breach = view.breach().week(view.week());
            int weeksOfWorst = 0;
            for (int cohort : view.cohorts()) {
                int weeks = 0;
                long before = 0;
                for (int week = view.week() - 1; week >= -Scenario.EDGE_DAYS / WEEK && weeks < MOST_WEEKS; week--) {
                    if (fixtureIn(view, week) == fixtureIn(view, view.week()) && trained(view, cohort, week)) {
                        before += view.load(cohort, WEEK * week, WEEK * week + WEEK);
                        weeks++;
                    }
                }
                double mean = weeks == 0 ? 0 : (double) before / weeks;
                double change = Change.percent(mean, (double) view.load(cohort, first, end))
                        .orElse(0);
                if (Math.abs(change) > noted + TINY) {
                    int limit = tenths(change < 0 ? -noted : change > asked + TINY ? asked : noted);
                    int measured = beyond(tenths(change), limit);
                    add(view, breach, cohort, measured, limit, first, end);
                    weeksOfWorst = breach.measured() == measured ? weeks : weeksOfWorst;
                }
            }
            report(sink, view, breach.detail(weeksOfWorst + (breach.differs() ? UP_TO : 0)));
        }

        private static boolean fixtureIn(GroupView view, int week) {
            boolean any = false;
            for (int day = WEEK * week; day < WEEK * week + WEEK; day++) {
                any |= view.group().fixtureOn(day);
            }
            return any;
        }

        /** Whether more is known of a week than its fixtures. */
        private static boolean trained(GroupView view, int cohort, int week) {
            boolean any = false;
            for (int day = WEEK * week; day < WEEK * week + WEEK; day++) {
                any |= view.day(cohort, day).load > 0 && !view.fixtureOf(cohort, day);
            }
            return any;
        }

        private static int tenths(double percent) {
            return (int) Math.round(10 * percent);
        }
    }

    /** Load is not spread so evenly over a week's days that none of them stands out. */
    static final class LoadSpread extends OfWeek {
        /** All days are alike: there is no spread to measure. */
        static final int ALIKE = 1;
        /** Not all concerned have the same spread. */
        static final int UP_TO = 2;

        private final double most = number("monotony");
        private final int limit = hundredths(most);

        LoadSpread(RuleSettings settings) {
            super("load-spread", settings);
        }

        @Override
        void judge(GroupView view, Sink sink, int first, int end) {
            Breach breach = view.breach().week(view.week());
            for (int cohort : view.cohorts()) {
                OptionalDouble monotony =
                        Spread.of(loads(view, cohort, first, end)).monotony(Spread.USUAL);
                if (monotony.isPresent() && monotony.getAsDouble() > most + TINY) {
                    int measured = beyond(hundredths(monotony.getAsDouble()), limit);
                    add(view, breach, cohort, measured, limit, first, end);
                }
            }
            report(sink, view, breach.detail(breach.differs() ? UP_TO : 0));
            tellAlike(view, sink, first, end);
        }

        private void tellAlike(GroupView view, Sink sink, int first, int end) {
            Breach breach = view.breach().week(view.week()).detail(ALIKE);
            for (int cohort : view.cohorts()) {
                Spread spread = Spread.of(loads(view, cohort, first, end));
                if (spread.monotony(Spread.USUAL).isEmpty() && spread.total() > 0) {
                    breach.add(cohort, view.heads(cohort), 0, 0, limit);
                }
            }
            breach.told();
            report(sink, view, breach);
        }
    }

    /** How the last days of a week compare with more of them, where so many are known. It says so of every week. */
    static final class LoadRatioOfWeek extends OfWeek {
        /** What the lowest ratio is multiplied by in the form of a breach, before the highest is added. */
        static final int LOWEST = 10_000;

        private static final int ALIKE = 100;

        private final int shortDays = (int) number("shortDays");
        private final int longDays = (int) number("longDays");

        LoadRatioOfWeek(RuleSettings settings) {
            super("load-ratio", settings);
        }

        @Override
        void judge(GroupView view, Sink sink, int first, int end) {
            Breach breach = view.breach().week(view.week());
            for (int cohort : view.cohorts()) {
                if (view.problem.knownFrom(cohort) <= end - longDays) {
                    double[] loads = loads(view, cohort, end - longDays, end);
                    OptionalDouble ratio = LoadRatio.coupled(shortDays, longDays, loads);
                    if (ratio.isPresent()) {
                        add(view, breach, cohort, hundredths(ratio.getAsDouble()), ALIKE, first, end);
                    }
                }
            }
            report(sink, view, breach.detail(LOWEST * breach.lowest() + breach.highest()));
        }
    }

    /** Those who take part in a session have fresh marks of what it needs: a sprint, a lift, an aerobic speed. */
    static final class MarksOld extends RuleOn<PlacementView> {
        private final int days = (int) number("days");

        MarksOld(RuleSettings settings) {
            super("marks-old", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            int needed = at == null || at.family == null ? 0 : needed(at.family);
            if (at == null || needed == 0) {
                return;
            }
            LocalDate oldest = view.problem.calendar.date(at.day).minusDays(days);
            List<String> lacking = new ArrayList<>();
            Breach breach = view.breach().detail(needed);
            for (int cohort : at.cohorts) {
                int before = lacking.size();
                view.cohort(cohort).athletes().stream()
                        .map(view.problem::athlete)
                        .filter(athlete -> !hasFresh(athlete, needed, oldest))
                        .forEach(athlete -> lacking.add(athlete.id()));
                if (lacking.size() > before) {
                    breach.add(cohort, lacking.size() - before, pointsPerBreach(), lacking.size(), 0);
                }
            }
            report(sink, view, breach.named(lacking));
        }

        /** Measures that a family's sessions are prescribed by, one bit each. */
        private static int needed(FamilyInfo family) {
            return (family.sprint ? 1 << Measure.SPRINT.ordinal() : 0)
                    | (family.lift ? 1 << Measure.LIFT.ordinal() : 0)
                    | (family.family.high(Pathway.AEROBIC) ? 1 << Measure.AEROBIC_SPEED.ordinal() : 0);
        }

        private static boolean hasFresh(Athlete athlete, int needed, LocalDate oldest) {
            int fresh = 0;
            for (var mark : athlete.marks()) {
                fresh |= mark.date().isBefore(oldest) ? 0 : 1 << mark.measure().ordinal();
            }
            return (needed & ~fresh) == 0;
        }
    }

    private static int hundredths(double figure) {
        return (int) Math.round(100 * figure);
    }

    /** A figure that lies beyond a limit, never rounded onto it. */
    private static int beyond(int measured, int limit) {
        return measured != limit ? measured : limit + (limit < 0 ? -1 : 1);
    }
}
