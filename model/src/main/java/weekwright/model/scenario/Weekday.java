package weekwright.model.scenario;

import java.time.DayOfWeek;

/** A day of the week as written in windows. */
public enum Weekday {
    MON,
    TUE,
    WED,
    THU,
    FRI,
    SAT,
    SUN;

    /** The same day in the calendar of the Java library. */
    public DayOfWeek dayOfWeek() {
        return DayOfWeek.of(ordinal() + 1);
    }
}
