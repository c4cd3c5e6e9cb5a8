package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Calendar;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.Pin;

/** What the coach holds, against what a change would do. */
final class Pins {
    private Pins() {}

    /** Whether a session is held against going from one place, or from nowhere, to another, or nowhere. */
    static boolean inTheWay(Calendar calendar, Session session, @Nullable Stimulus now, @Nullable Stimulus to) {
        Pin pin = session.pin;
        if (to == null) {
            return pin.start() || pin.day() || pin.facility() || pin.lead() || pin.dose() || pin.variant();
        }
        boolean stays = now != null && now.day == to.day;
        return pin.out()
                || (!stays && pin.notDays().contains(calendar.date(to.day)))
                || (now != null && (elsewhere(pin, now, to) || otherwise(pin, now, to)));
    }

    private static boolean elsewhere(Pin pin, Stimulus now, Stimulus to) {
        return (pin.start() && to.start != now.start)
                || (pin.day() && to.day != now.day)
                || (pin.facility() && to.facility != now.facility);
    }

    private static boolean otherwise(Pin pin, Stimulus now, Stimulus to) {
        return (pin.dose() && to.dose != now.dose)
                || (pin.lead() && to.lead >= 0)
                || (pin.variant() && to.variant >= 0);
    }
}
