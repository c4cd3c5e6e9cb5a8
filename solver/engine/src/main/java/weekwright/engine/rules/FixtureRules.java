package weekwright.engine.rules;

import weekwright.engine.problem.AfterHours;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Hours;
import weekwright.model.catalogue.Played;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.FixtureWeight;

/** What a fixture asks of the days round it. */
final class FixtureRules {
    private FixtureRules() {}

    /** A session ends so many hours before a fixture; before a minor one this is only wanted. */
    static final class BeforeFixture extends RuleOn<PairView> {
        private final HourWant hours;

        BeforeFixture(RuleSettings settings) {
            super("before-fixture", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionBeforeFixture(view);
            if (family == null || weight(view, view.second()) == FixtureWeight.MINOR) {
                return;
            }
            int limit = FamilyInfo.must(family.beforeFixture(view.first().dose));
            if (limit > 0 && view.gap() < limit) {
                Breach breach = view.breach();
                addPlayers(view, breach, hours.cost(limit - view.gap()), view.gap(), limit);
                report(sink, view, breach);
            }
        }
    }

    /** A session ends as long before a fixture as is wanted. */
    static final class BeforeFixtureMargin extends RuleOn<PairView> {
        private final HourWant hours;
        private final double keyFactor = number("keyFactor");
        private final double minorFactor = number("minorFactor");

        BeforeFixtureMargin(RuleSettings settings) {
            super("before-fixture-margin", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionBeforeFixture(view);
            if (family == null) {
                return;
            }
            Hours asked = family.beforeFixture(view.first().dose);
            int limit = hours.counted(FamilyInfo.want(asked));
            if (view.gap() < limit) {
                Breach breach = view.breach();
                double factor = factor(weight(view, view.second()));
                int cost = (int) Math.round(hours.cost(limit - view.gap()) * factor);
                addPlayers(view, breach, cost, view.gap(), limit);
                report(sink, view, breach);
            }
        }

        private double factor(FixtureWeight weight) {
            return switch (weight) {
                case KEY -> keyFactor;
                case REGULAR -> 1;
                case MINOR -> minorFactor;
            };
        }
    }

    /** A session waits after a fixture for the hours that must pass, fewer for those who played less. */
    static final class AfterFixture extends RuleOn<PairView> {
        private final AfterMinutes minutes;
        private final HourWant hours;

        AfterFixture(RuleSettings settings) {
            super("after-fixture", settings);
            hours = new HourWant(settings, id());
            minutes = new AfterMinutes(this);
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionAfterFixture(view);
            if (family == null) {
                return;
            }
            Breach breach = view.breach();
            for (int cohort : view.second().cohorts) {
                if (view.first().playedBy(cohort)) {
                    int limit = minutes.asked(view, family, cohort).must();
                    if (limit > 0 && view.gap() < limit) {
                        breach.add(cohort, view.heads(cohort), hours.cost(limit - view.gap()), view.gap(), limit);
                    }
                }
            }
            if (!view.second().placed()) {
                breach.told();
            }
            report(sink, view, breach);
        }
    }

    /** A session waits after a fixture for the hours that are wanted. */
    static final class AfterFixtureMargin extends RuleOn<PairView> {
        private final AfterMinutes minutes;
        private final HourWant hours;

        AfterFixtureMargin(RuleSettings settings) {
            super("after-fixture-margin", settings);
            minutes = new AfterMinutes(this);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionAfterFixture(view);
            if (family == null) {
                return;
            }
            Breach breach = view.breach();
            for (int cohort : view.second().cohorts) {
                if (view.first().playedBy(cohort)) {
                    int limit =
                            hours.counted(minutes.asked(view, family, cohort).want());
                    if (view.gap() < limit) {
                        breach.add(cohort, view.heads(cohort), hours.cost(limit - view.gap()), view.gap(), limit);
                    }
                }
            }
            if (!view.second().placed()) {
                breach.told();
            }
            report(sink, view, breach);
        }
    }

    /** A primer ends some hours before the start. */
    static final class PrimerEnd extends RuleOn<PairView> {
        private final int least = minutes("hours");
        private final HourWant hours;

        PrimerEnd(RuleSettings settings) {
            super("primer-end", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionBeforeFixture(view);
            if (family != null && family.primer && view.gap() < least) {
                Breach breach = view.breach();
                addPlayers(view, breach, hours.cost(least - view.gap()), view.gap(), least);
                report(sink, view, breach);
            }
        }
    }

    /** The day before a fixture holds only low work, practice and a primer. */
    static final class DayBeforeLight extends RuleOn<PairView> {
        DayBeforeLight(RuleSettings settings) {
            super("day-before-light", settings);
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = sessionBeforeFixture(view);
            if (family == null
                    || view.second().day - view.first().day != 1
                    || weight(view, view.second()) == FixtureWeight.MINOR
                    || family.practice
                    || family.primer) {
                return;
            }
            DayClass dayClass = family.classIn(view.problem.groups.get(Math.max(0, view.first().group)));
            if (dayClass == DayClass.MIDDLE || dayClass == DayClass.HIGH) {
                Breach breach = view.breach().days(view.first().day, view.first().day);
                addPlayers(view, breach, pointsPerBreach(), 1, 0);
                report(sink, view, breach);
            }
        }
    }

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
            if (weight(view, fixture) == FixtureWeight.MINOR || crowded(view, fixture, apart)) {
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

    /** The day off comes on the second day after a fixture, or else the first. */
    static final class FreeDayPlace extends RuleOn<GroupView> {
        private final int onFirst = points("firstDayPoints");
        private final int elsewhere = points("elsewherePoints");

        FreeDayPlace(RuleSettings settings) {
            super("free-day-place", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Stimulus fixture = view.fixture();
            int first = fixture.day + 1;
            int second = first + 1;
            if (second < 0 || second >= view.calendar().days()) {
                return;
            }
            Breach breach = view.breach().days(first, second);
            for (int cohort : view.cohorts()) {
                DayState after = view.day(cohort, first);
                DayState next = view.day(cohort, second);
                if (fixture.playedBy(cohort) && next.busy && !anotherFixture(view, cohort, first, second)) {
                    int cost = after.busy ? elsewhere : onFirst;
                    boolean fixed = !next.placedBusy && !(after.busy && after.placedBusy);
                    breach.add(cohort, view.heads(cohort), cost, after.busy ? 2 : 1, 0, fixed);
                }
            }
            report(sink, view, breach);
        }

        private static boolean anotherFixture(GroupView view, int cohort, int first, int second) {
            return view.fixtureOf(cohort, first) || view.fixtureOf(cohort, second);
        }
    }

    /** The hours asked after a fixture by minutes played. */
    static final class AfterMinutes {
        private final int lessMust;
        private final int lessWant;

        AfterMinutes(JudgedRule rule) {
            RuleSettings settings = rule.settings();
            lessMust = (int) Math.round(settings.number("after-fixture", "partLessHours") * 60);
            lessWant = (int) Math.round(settings.number("after-fixture-margin", "partLessHours") * 60);
        }

        AfterHours.Asked asked(PairView view, FamilyInfo session, int cohort) {
            Stimulus fixture = view.first();
            Played played =
                    java.util.Objects.requireNonNull(fixture.appearances).played(cohort);
            if (played == Played.SHORT) {
                return AfterHours.afterShort(view.problem.shortAppearance, session);
            }
            AfterHours.Asked asked =
                    java.util.Objects.requireNonNull(fixture.family).after.before(session, view.second().dose);
            return played == Played.FULL
                    ? asked
                    : new AfterHours.Asked(Math.max(0, asked.must() - lessMust), Math.max(0, asked.want() - lessWant));
        }
    }

    /** Whether another fixture of the group lies before one, fewer than so many days or on the same date. */
    static boolean crowded(GroupView view, Stimulus fixture, int apart) {
        for (Stimulus other : view.group().fixtures()) {
            if (Stimulus.inOrder(other, fixture) < 0 && fixture.day - other.day < apart) {
                return true;
            }
        }
        return false;
    }

    /** The family of a session that starts before a fixture, or null when the pair is another. */
    private static @org.jspecify.annotations.Nullable FamilyInfo sessionBeforeFixture(PairView view) {
        FamilyInfo family = view.first().family;
        return family != null && !family.fixture && view.second().isFixture() ? family : null;
    }

    private static @org.jspecify.annotations.Nullable FamilyInfo sessionAfterFixture(PairView view) {
        FamilyInfo family = view.second().family;
        return family != null && !family.fixture && view.first().isFixture() ? family : null;
    }

    private static void addPlayers(PairView view, Breach breach, int cost, int measured, int limit) {
        for (int cohort : view.first().cohorts) {
            if (view.second().playedBy(cohort)) {
                breach.add(cohort, view.heads(cohort), cost, measured, limit);
            }
        }
        if (!view.first().placed()) {
            breach.told();
        }
    }

    private static FixtureWeight weight(View view, Stimulus fixture) {
        return fixture.kind == Stimulus.Kind.FIXTURE
                ? view.problem.scenario.fixtures().get(fixture.index).weight()
                : FixtureWeight.REGULAR;
    }
}
