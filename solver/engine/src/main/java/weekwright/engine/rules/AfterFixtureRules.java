package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AfterHours;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Played;
import weekwright.model.rulebook.RuleSettings;

/** What a fixture asks of the sessions and days after it. */
final class AfterFixtureRules {
    private AfterFixtureRules() {}

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
            for (int cohort : view.cohorts(view.second())) {
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
            for (int cohort : view.cohorts(view.second())) {
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

    /** Those who did not play train by the end of the day after. */
    static final class TopUp extends RuleOn<AimView> {
        TopUp(RuleSettings settings) {
            super("top-up", settings);
        }

        @Override
        void judge(AimView view, Sink sink) {
            Stimulus fixture = view.fixture();
            if (!somebodyListedDidNotPlay(view, fixture)) {
                return;
            }
            int last = view.lastDay();
            for (int i = 0; i < view.placed(); i++) {
                if (view.placement(i).start >= fixture.end && view.placement(i).day <= last) {
                    return;
                }
            }
            Breach breach = view.breach().days(fixture.day, last).about(fixture);
            breach.addAmount(view.group().heads, pointsPerBreach(), 0, 1);
            report(sink, view, breach);
        }

        private static boolean somebodyListedDidNotPlay(AimView view, Stimulus fixture) {
            for (int cohort : view.problem.cohortsOfGroup[view.group().index]) {
                boolean listed = !view.cohort(cohort).athletes().isEmpty();
                if (listed && fixture.has(cohort) && !fixture.playedBy(cohort)) {
                    return true;
                }
            }
            return false;
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

    private static @Nullable FamilyInfo sessionAfterFixture(PairView view) {
        FamilyInfo family = view.second().family;
        return family != null && !family.fixture && view.first().isFixture() ? family : null;
    }
}
