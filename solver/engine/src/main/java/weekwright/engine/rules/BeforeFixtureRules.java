package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Hours;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.FixtureWeight;

/** What a fixture asks of the sessions before it, and of the days of travel. */
final class BeforeFixtureRules {
    private BeforeFixtureRules() {}

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
            if (family == null || Fixtures.weight(view, view.second()) == FixtureWeight.MINOR) {
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
                double factor = factor(Fixtures.weight(view, view.second()));
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

    /**
     * A primer ends while it still works: not too near the fixture, and not too far. It is for the next fixture of those
     * who do it; whoever does not play that one needs none, however far their own next one lies.
     */
    static final class PrimerWindow extends RuleOn<PlacementView> {
        private final int from = minutes("fromHours");
        private final int to = minutes("toHours");

        PrimerWindow(RuleSettings settings) {
            super("primer-window", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at == null || at.family == null || !at.family.primer) {
                return;
            }
            Breach breach = view.breach();
            for (int cohort : at.cohorts) {
                Stimulus next = next(view, at, cohort);
                Stimulus last = next == null ? last(view, at, cohort) : null;
                if (next != null) {
                    before(at, view, breach, cohort, next);
                } else if (last != null) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), last.end - at.start, from);
                }
            }
            report(sink, view, breach);
        }

        private void before(Stimulus at, PlacementView view, Breach breach, int cohort, Stimulus fixture) {
            int gap = fixture.start - at.end;
            if (fixture.playedBy(cohort) && (gap < from || gap > to)) {
                breach.add(cohort, view.heads(cohort), pointsPerBreach(), gap, gap < from ? from : to)
                        .about(fixture);
            }
        }

        /** The first fixture of a cohort's squads after a primer's start, on the bench or not. */
        private static @Nullable Stimulus next(View view, Stimulus primer, int cohort) {
            for (Stimulus fixture : view.problem.fixtures) {
                if (fixture.start > primer.start && fixture.has(cohort)) {
                    return fixture;
                }
            }
            return null;
        }

        /** The last one before it that lies in the plan. */
        private static @Nullable Stimulus last(View view, Stimulus primer, int cohort) {
            Stimulus last = null;
            for (Stimulus fixture : view.problem.fixtures) {
                if (fixture.day >= 0 && fixture.start <= primer.start && fixture.playedBy(cohort)) {
                    last = fixture;
                }
            }
            return last;
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
                    || Fixtures.weight(view, view.second()) == FixtureWeight.MINOR
                    || family.practice
                    || family.primer) {
                return;
            }
            if (family.middleOrHigh(view.problem.groups.get(Math.max(0, view.first().group)))) {
                Breach breach = view.breach();
                addPlayers(view, breach, pointsPerBreach(), 1, 0);
                report(sink, view, breach);
            }
        }
    }

    /** A day of long travel holds only low work. */
    static final class TravelDayLight extends RuleOn<PlacementView> {
        private final int most = (int) number("travelMinutes");

        TravelDayLight(RuleSettings settings) {
            super("travel-day-light", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at == null || at.family == null || !at.family.middleOrHigh(view.group())) {
                return;
            }
            Breach breach = view.breach();
            for (int cohort : at.cohorts) {
                if (view.problem.travelMinutes(cohort, at.day) > most) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), 1, 0);
                }
            }
            report(sink, view, breach);
        }
    }

    /** The family of a session that starts before a fixture, or null when the pair is another. */
    private static @Nullable FamilyInfo sessionBeforeFixture(PairView view) {
        FamilyInfo family = view.first().family;
        return family != null && !family.fixture && view.second().isFixture() ? family : null;
    }

    private static void addPlayers(PairView view, Breach breach, int cost, int measured, int limit) {
        for (int cohort : view.cohorts(view.first())) {
            if (view.second().playedBy(cohort)) {
                breach.add(cohort, view.heads(cohort), cost, measured, limit);
            }
        }
        if (!view.first().placed()) {
            breach.told();
        }
    }
}
