package weekwright.engine.rules;

import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;

/** How much belongs in a session, a visit and a day. */
final class SizeRules {
    private SizeRules() {}

    /** A visit holds few sessions, and a day not too many minutes of training. */
    static final class VisitSize extends RuleOn<GroupView> {
        /** Too many minutes in a day, not too many sessions in a visit. */
        static final int MINUTES = 1;

        private final int sessions = (int) number("sessions");
        private final int minutes;

        VisitSize(RuleSettings settings) {
            super("visit-size", settings);
            boolean young = settings.level("youth") != RuleLevel.OFF;
            minutes = (int) number(young ? "youthMinutes" : "minutes");
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Breach breach = view.breach().days(view.day(), view.day());
            for (int cohort : view.cohorts()) {
                DayState day = view.day(cohort, view.day());
                if (day.fullVisits > 0) {
                    int cost = pointsPerBreach() * day.fullVisits;
                    breach.add(cohort, view.heads(cohort), cost, day.mostInVisit, sessions);
                }
            }
            report(sink, view, breach);
            breach = view.breach().days(view.day(), view.day()).detail(MINUTES);
            for (int cohort : view.cohorts()) {
                DayState day = view.day(cohort, view.day());
                if (day.placedCounts && day.mainMinutes > minutes) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), day.mainMinutes, minutes);
                }
            }
            report(sink, view, breach);
        }
    }

    /** The metres of a full speed session lie in the band of the athletes' level. */
    static final class SprintMetres extends RuleOn<PlacementView> {
        /** The metres of all sprinting lie further outside than the fast ones. */
        static final int ALL = 1;

        private static final int SPEED = 1;

        private final int perMetre = points("pointsPerTenMetres") / 10;

        SprintMetres(RuleSettings settings) {
            super("sprint-metres", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            FamilyInfo family = view.session().family;
            if (at == null || at.dose != Dose.FULL || !speedWork(family)) {
                return;
            }
            int minutes = at.minutes() - at.warmUp;
            int fast = fast(view.session(), minutes);
            int all = all(view.session(), minutes);
            int fastLimit = limit(fast, band(view.group(), "Least"), band(view.group(), "Most"));
            int most = (int) number(minutes >= number("longMinutes") ? "allMostLong" : "allMost");
            int allLimit = limit(all, (int) number("allLeast"), most);
            int fastOutside = Math.abs(fast - fastLimit);
            int allOutside = Math.abs(all - allLimit);
            if (fastOutside + allOutside > 0) {
                boolean more = allOutside > fastOutside;
                Breach breach = view.breach().detail(more ? ALL : 0);
                int cost = perMetre * (fastOutside + allOutside);
                breach.addAmount(view.group().heads, cost, more ? all : fast, more ? allLimit : fastLimit);
                report(sink, view, breach);
            }
        }

        /** Sprinting for speed: not speed endurance, and not tests. */
        private static boolean speedWork(FamilyInfo family) {
            return family.order == SPEED
                    && family.family.high(Pathway.MAX_VELOCITY_SPRINT)
                    && !family.family.high(Pathway.AEROBIC);
        }

        private int fast(Session session, int minutes) {
            Metres given = given(session);
            return given == null
                    ? (int) Math.round(number("fastMetresAMinute") * minutes)
                    : (int) Math.round(given.fast() * factor(session));
        }

        private int all(Session session, int minutes) {
            Metres given = given(session);
            return given == null
                    ? (int) Math.round(number("metresAMinute") * minutes)
                    : (int) Math.round(given.all() * factor(session));
        }

        private static @org.jspecify.annotations.Nullable Metres given(Session session) {
            return session.aim == null ? null : session.aim.aim.metres();
        }

        private static double factor(Session session) {
            Aim aim = java.util.Objects.requireNonNull(session.aim).aim;
            return aim.weekFactor(session.week);
        }

        /** The nearest figure inside a band. */
        private static int limit(int metres, int least, int most) {
            return Math.min(most, Math.max(least, metres));
        }

        private int band(GroupInfo group, String end) {
            Phase phase = group.group.phase();
            boolean offSeason = phase == Phase.OFF_SEASON || phase == Phase.PRE_SEASON;
            String name = group.novice() ? "novice" : group.sprint() ? "sprint" : offSeason ? "offSeason" : "inSeason";
            return (int) number(name + end);
        }
    }
}
