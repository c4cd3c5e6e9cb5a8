package weekwright.engine.rules;

import java.time.LocalDate;
import java.time.Period;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;

/** Hours and days off as published for colleges and for the young: off unless a coach switches them on. */
final class PackRules {
    /** Too few days off, not too many hours: the figures are days. */
    static final int DAYS_OFF = 1;
    /** Too many hours in a day, not in a week. */
    static final int HOURS_OF_DAY = 2;

    private static final int WEEK = 7;

    private PackRules() {}

    private abstract static class Hours extends RuleOn<GroupView> {
        Hours(String id, RuleSettings settings) {
            super(id, settings);
        }

        final void addMinutes(GroupView view, Breach breach, int cohort, int minutes, int most, boolean fixed) {
            if (minutes > most) {
                int cost = pointsPerBreach() / 60 * (minutes - most);
                breach.add(cohort, view.heads(cohort), cost, minutes, most, fixed);
            }
        }
    }

    /** A whole week's hours, and its days off. */
    private abstract static class OfWeek extends Hours {
        private final int daysOff = (int) number("daysOff");

        OfWeek(String id, RuleSettings settings) {
            super(id, settings);
        }

        @Override
        final void judge(GroupView view, Sink sink) {
            if (view.calendar().daysIn(view.week()) == WEEK) {
                int first = WEEK * view.week();
                int most = mostMinutes(view, first);
                if (most != NOT_JUDGED) {
                    minutes(view, sink, first, most);
                }
                daysOff(view, sink, first);
            }
        }

        static final int NOT_JUDGED = -1;

        /** Most minutes in the week that begins on a day, or {@link #NOT_JUDGED}. */
        abstract int mostMinutes(GroupView view, int first);

        /** Minutes that the group's fixtures of a day count. */
        abstract int fixtureMinutes(GroupView view, int day);

        private void minutes(GroupView view, Sink sink, int first, int most) {
            Breach breach = view.breach().week(view.week());
            for (int cohort : view.cohorts()) {
                int minutes = 0;
                for (int day = first; day < first + WEEK; day++) {
                    minutes += view.day(cohort, day).wholeMinutes + fixtureMinutes(view, day);
                }
                addMinutes(view, breach, cohort, minutes, most, !view.placedBetween(cohort, first, first + WEEK));
            }
            report(sink, view, breach);
        }

        private void daysOff(GroupView view, Sink sink, int first) {
            Breach breach = view.breach().week(view.week()).detail(DAYS_OFF);
            for (int cohort : view.cohorts()) {
                int off = 0;
                boolean ours = false;
                for (int day = first; day < first + WEEK; day++) {
                    off += view.day(cohort, day).busy ? 0 : 1;
                    ours |= view.day(cohort, day).placedBusy;
                }
                if (off < daysOff) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach() * (daysOff - off), off, daysOff, !ours);
                }
            }
            report(sink, view, breach);
        }
    }

    /** Minutes of a day with a fixture under the rules of colleges, whatever its length; 0 of other days. */
    private static int competition(GroupView view, int day, int minutes) {
        return view.group().fixtureOn(day) ? minutes : 0;
    }

    /** The week of a college athlete, in season or out of it; a competition counts as in season in both. */
    static final class CollegeWeek extends OfWeek {
        private final int most = minutes("weekHours");
        private final int competition;

        CollegeWeek(String id, RuleSettings settings) {
            super(id, settings);
            competition = (int) Math.round(60 * settings.number("college-in-season", "competitionHours"));
        }

        @Override
        int mostMinutes(GroupView view, int first) {
            return most;
        }

        @Override
        int fixtureMinutes(GroupView view, int day) {
            return competition(view, day, competition);
        }
    }

    /** The day of a college athlete in season. */
    static final class CollegeDay extends Hours {
        private final int most = minutes("dayHours");
        private final int competition = minutes("competitionHours");

        CollegeDay(RuleSettings settings) {
            super("college-in-season", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int day = view.day();
            Breach breach = view.breach().days(day, day).detail(HOURS_OF_DAY);
            for (int cohort : view.cohorts()) {
                DayState state = view.day(cohort, day);
                int minutes = state.wholeMinutes + competition(view, day, competition);
                addMinutes(view, breach, cohort, minutes, most, !state.placed);
            }
            report(sink, view, breach);
        }
    }

    /** The week of the young: no more hours than the youngest has years. */
    static final class Youth extends OfWeek {
        private final double hoursAYear = number("hoursAYear");

        Youth(RuleSettings settings) {
            super("youth", settings);
        }

        @Override
        int mostMinutes(GroupView view, int first) {
            LocalDate born = view.group().youngest;
            return born == null
                    ? NOT_JUDGED
                    : (int) Math.round(60
                            * hoursAYear
                            * Period.between(born, view.calendar().date(first)).getYears());
        }

        @Override
        int fixtureMinutes(GroupView view, int day) {
            int minutes = 0;
            for (Stimulus fixture : view.group().fixtures()) {
                minutes += fixture.day == day ? Fixtures.playMinutes(view, fixture) : 0;
            }
            return minutes;
        }
    }
}
