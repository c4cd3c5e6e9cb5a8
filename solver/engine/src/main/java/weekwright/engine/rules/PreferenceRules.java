package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Calendar;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.StayClose;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.Pin;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Prefer;

/** What the coach would rather have, and the plan that people already know. */
final class PreferenceRules {
    private PreferenceRules() {}

    /** A session lies in the hours that its aim prefers. */
    static final class PreferredTime extends RuleOn<PlacementView> {
        private static final int WHOLE_DAY = 24 * 60;

        PreferredTime(RuleSettings settings) {
            super("preferred-time", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            Prefer prefer = prefer(view);
            if (at == null || prefer == null) {
                return;
            }
            int start = view.problem.calendar.clockMinutes(at.start);
            int end = clockAtEnd(view, at);
            int from = minutes(prefer.from(), 0);
            int to = minutes(prefer.to(), WHOLE_DAY);
            int outside = Math.max(Math.max(0, from - start), end - to);
            if (outside > 0) {
                PlaceAndTimeRules.reportWhole(this, view, sink, outside, 0, 0);
            }
        }

        /** What the clock shows at the end, counted on from the day of the start. */
        private static int clockAtEnd(PlacementView view, Stimulus at) {
            Calendar calendar = view.problem.calendar;
            return WHOLE_DAY * (calendar.dayOf(at.end) - at.day) + calendar.clockMinutes(at.end);
        }

        private static int minutes(@Nullable ClockTime time, int otherwise) {
            return time == null ? otherwise : time.minutes();
        }
    }

    /** A session lies in a facility that its aim prefers. */
    static final class PreferredFacility extends RuleOn<PlacementView> {
        PreferredFacility(RuleSettings settings) {
            super("preferred-facility", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            Prefer prefer = prefer(view);
            if (at == null || prefer == null || prefer.facilities().isEmpty()) {
                return;
            }
            String id = at.facility < 0
                    ? ""
                    : view.problem.facilities.get(at.facility).facility.id();
            if (!prefer.facilities().contains(id)) {
                PlaceAndTimeRules.reportWhole(this, view, sink, 1, 0, 0);
            }
        }
    }

    /** A session stays where people already know it to be; dearer once the plan is given out, and when it is soon. */
    static final class KeepPlan extends RuleOn<PlacementView> {
        private final int draft = points("draftPoints");
        private final int otherDay = points("dayPoints");
        private final int otherHour = points("hourPoints");
        private final int place = points("placePoints");
        private final int soon = minutes("soonHours");
        private final double soonFactor = number("soonFactor");

        KeepPlan(RuleSettings settings) {
            super("keep-plan", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            StayClose stay = view.problem.stayClose;
            Session session = view.session();
            Stimulus before = session.before;
            if (stay == null || before == null || standsStill(view.at(), before)) {
                return;
            }
            int cost = stay.published() ? published(before, view.at()) : draft;
            boolean isSoon =
                    stay.now() != Integer.MIN_VALUE && before.start >= stay.now() && before.start - stay.now() <= soon;
            double factor = stay.published() && isSoon ? soonFactor : 1;
            Breach breach = view.breach().days(before.day, before.day);
            breach.addAmount(view.group().heads, (int) Math.round(cost * factor), 1, 0);
            report(sink, view, breach);
        }

        private static boolean standsStill(@Nullable Stimulus at, Stimulus before) {
            return at != null && at.base == before;
        }

        private int published(Stimulus before, @Nullable Stimulus at) {
            if (at == null || at.day != before.day) {
                return otherDay;
            }
            return at.start != before.start || at.dose != before.dose ? otherHour : place;
        }
    }

    /** Nobody waits long between two visits of a day. */
    static final class ShortWait extends RuleOn<GroupView> {
        private final int perMinute = points("pointsAnHour") / 60;

        ShortWait(RuleSettings settings) {
            super("short-wait", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Breach breach = view.breach().days(view.day(), view.day());
            for (int cohort : view.cohorts()) {
                int wait = view.day(cohort, view.day()).waitMinutes;
                if (wait > 0) {
                    breach.add(cohort, view.heads(cohort), perMinute * wait, wait, 0);
                }
            }
            report(sink, view, breach);
        }
    }

    /** The sessions of an aim in a week have the same lead. */
    static final class SameLead extends RuleOn<LeadsView> {
        SameLead(RuleSettings settings) {
            super("same-lead", settings);
        }

        @Override
        void judge(LeadsView view, Sink sink) {
            boolean known = view.firstLead() >= 0 && view.secondLead() >= 0;
            if (known && view.firstLead() != view.secondLead()) {
                int both = view.firstLead() * view.problem.staff.size() + view.secondLead();
                Breach breach =
                        view.breach().days(view.first().day, view.second().day).detail(both);
                breach.addAmount(view.group().heads, pointsPerBreach(), 2, 1);
                report(sink, view, breach);
            }
        }
    }

    /** What the coach holds is kept whatever it breaks; where pins are at odds, that is told. */
    static final class Pins extends RuleOn<PlacementView> {
        /** It lies on a day that is barred for it, and is held there. */
        static final int HELD_ON_BARRED_DAY = 1;
        /** It is held in a dose that its aim does not allow. */
        static final int DOSE = 2;
        /** It is held out, and something else of it is held too. */
        static final int OUT = 3;

        Pins(RuleSettings settings) {
            super("pins", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Session session = view.session();
            Pin pin = session.pin;
            Stimulus at = view.at();
            if (at == null) {
                boolean held = pin.start() || pin.day() || pin.facility() || pin.lead() || pin.dose() || pin.variant();
                tell(view, sink, pin.out() && held, OUT);
                return;
            }
            boolean barred = pin.notDays().contains(view.problem.calendar.date(at.day));
            tell(view, sink, barred, pin.day() || pin.start() ? HELD_ON_BARRED_DAY : 0);
            boolean strange = session.aim != null && !session.aim.aim.doses().contains(at.dose);
            tell(view, sink, pin.dose() && strange, DOSE);
        }

        private void tell(PlacementView view, Sink sink, boolean atOdds, int form) {
            if (atOdds) {
                int day = 7 * view.session().week;
                Breach breach = view.breach().days(day, day).detail(form);
                breach.addAmount(view.group().heads, 0, 1, 0);
                breach.told();
                report(sink, view, breach);
            }
        }
    }

    /** Which rules a group has changed: a fact, whatever its level. */
    static final class Softened extends RuleOn<GroupView> {
        Softened(RuleSettings settings) {
            super("softened", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int changed = settings().softened().size();
            if (changed > 0) {
                Breach breach = view.breach().days(0, view.calendar().days() - 1);
                breach.addAmount(view.group().heads, 0, changed, 0);
                breach.told();
                report(sink, view, breach);
            }
        }
    }

    private static @Nullable Prefer prefer(PlacementView view) {
        return view.session().aim == null ? null : view.session().aim.aim.prefer();
    }
}
