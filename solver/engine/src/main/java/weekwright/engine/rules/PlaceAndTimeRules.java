package weekwright.engine.rules;

import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;

/** Where and when a session can be at all. */
final class PlaceAndTimeRules {
    private PlaceAndTimeRules() {}

    /** Nobody is in two things at once, travel, transfers and fixture warm-up included. */
    static final class OnePlaceAtATime extends RuleOn<PairView> {
        /** One lies in minutes that the other lends, and the way there or back does not. */
        static final int LENT = 1;

        OnePlaceAtATime(RuleSettings settings) {
            super("one-place-at-a-time", settings);
        }

        @Override
        void judge(PairView view, Sink sink) {
            Stimulus first = view.first();
            Stimulus second = view.second();
            int transfer = view.problem.transferMinutes(first.facility, second.facility);
            boolean lent = second.lentBy == first || first.lentBy == second;
            int gap = lent
                    ? leftForTheWay(first, second)
                    : Math.max(second.occupiedStart - first.occupiedEnd, first.occupiedStart - second.occupiedEnd);
            if (gap < transfer) {
                Breach breach = view.breach().detail(lent ? LENT : 0);
                view.addCommon(breach, pointsPerBreach(), gap, transfer);
                report(sink, view, breach);
            }
        }
    }

    private static int leftForTheWay(Stimulus first, Stimulus second) {
        Stimulus session = second.lentBy == first ? second : first;
        Stimulus practice = java.util.Objects.requireNonNull(session.lentBy);
        return java.util.Objects.requireNonNull(practice.lends).forTheWay(session.start, session.end);
    }

    /** A session lies wholly in its group's free time. */
    static final class InsideWindow extends RuleOn<PlacementView> {
        InsideWindow(RuleSettings settings) {
            super("inside-window", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            int outside = at == null ? 0 : view.group().outside(at.start, at.end);
            if (outside > 0) {
                reportWhole(this, view, sink, outside, 0, 0);
            }
        }
    }

    /** A facility is open for the whole of a session. */
    static final class FacilityOpen extends RuleOn<PlacementView> {
        FacilityOpen(RuleSettings settings) {
            super("facility-open", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at == null || at.facility < 0 || at.isGuest()) {
                return;
            }
            int shut = view.problem.facilities.get(at.facility).shut(at.start, at.end);
            if (shut > 0) {
                reportWhole(this, view, sink, shut, 0, 0);
            }
        }
    }

    /** A facility is of the kind, and has the straight, that a session needs. */
    static final class FacilityFits extends RuleOn<PlacementView> {
        /** The straight is too short. */
        static final int STRAIGHT = 1;

        FacilityFits(RuleSettings settings) {
            super("facility-fits", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at == null) {
                return;
            }
            Problem problem = view.problem;
            var family = view.session().family.family;
            FacilityInfo facility = at.facility < 0 ? null : problem.facilities.get(at.facility);
            if (facility == null ? !family.facility().isEmpty() : !facility.offers(family)) {
                reportWhole(this, view, sink, 0, 1, 0);
            } else if (facility != null && !facility.straightEnough(family)) {
                Integer has = facility.facility.straightMetres();
                Integer needed = family.straightMetres();
                reportWhole(this, view, sink, has == null ? 0 : has, needed == null ? 0 : needed, STRAIGHT);
            }
        }
    }

    /** A facility holds all who are in it at once. */
    static final class FacilityRoom extends RuleOn<BookingView> {
        /** Too many athletes, rather than too many groups. */
        static final int ATHLETES = 1;

        FacilityRoom(RuleSettings settings) {
            super("facility-room", settings);
        }

        @Override
        void judge(BookingView view, Sink sink) {
            FacilityInfo facility = view.facility();
            int groups = view.groupsAtOnce();
            int athletes = view.athletesAtOnce();
            if (groups <= facility.groups && athletes <= facility.athletes) {
                return;
            }
            Breach breach = view.breach();
            if (groups > facility.groups) {
                breach.addAmount(view.group().heads, pointsPerBreach(), groups, facility.groups);
            } else {
                breach.detail(ATHLETES).addAmount(view.group().heads, pointsPerBreach(), athletes, facility.athletes);
            }
            if (!view.onePlaced()) {
                breach.told();
            }
            report(sink, view, breach);
        }
    }

    /** Somebody who may lead a session is free for the whole of it. */
    static final class LeadFree extends RuleOn<PlacementView> {
        LeadFree(RuleSettings settings) {
            super("lead-free", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            reportWhole(this, view, sink, 0, 1, 0);
        }
    }

    /** Nobody comes more than so many times a day. */
    static final class VisitsPerDay extends RuleOn<GroupView> {
        private final int most = (int) number("visits");

        VisitsPerDay(RuleSettings settings) {
            super("visits-per-day", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Breach breach = view.breach().days(view.day(), view.day());
            for (int cohort : view.cohorts()) {
                int visits = view.day(cohort, view.day()).visits;
                if (visits > most) {
                    boolean fixed = view.fixedDay(cohort, view.day()).visits > most;
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), visits, most, fixed);
                }
            }
            report(sink, view, breach);
        }
    }

    /** A night's rest lies between one day's last thing and the next day's first. */
    static final class NightRest extends RuleOn<GroupView> {
        private final int least = minutes("hours");
        private final HourWant hours;

        NightRest(RuleSettings settings) {
            super("night-rest", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int day = view.day();
            Breach breach = view.breach().days(day, day + 1);
            for (int cohort : view.cohorts()) {
                DayState evening = view.day(cohort, day);
                DayState morning = view.day(cohort, day + 1);
                int rest = morning.firstStart - evening.lastEnd;
                if (rest < least) {
                    boolean fixed = !evening.lastPlaced && !morning.firstPlaced;
                    breach.add(cohort, view.heads(cohort), hours.cost(least - rest), rest, least, fixed);
                }
            }
            report(sink, view, breach);
        }
    }

    /** Reports a breach that concerns a session as such, for its whole group. */
    static void reportWhole(
            RuleOn<PlacementView> rule, PlacementView view, Sink sink, int measured, int limit, int detail) {
        Breach breach = view.breach().detail(detail);
        breach.addAmount(view.group().heads, rule.pointsPerBreach(), measured, limit);
        rule.report(sink, view, breach);
    }
}
