package weekwright.scenarios;

import java.time.LocalTime;
import java.util.List;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/**
 * When a made-up squad trains.
 *
 * @param training usual start of its own training, in the history
 * @param practice start of its team practices
 */
record Hours(List<Window> windows, LocalTime training, LocalTime practice) {
    private static final List<Weekday> WORKDAYS =
            List.of(Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU, Weekday.FRI);

    /** By day, in the afternoon, in the evening. */
    static final List<Hours> CHOICE = List.of(
            new Hours(
                    List.of(
                            Parts.window(WORKDAYS, "09:00", "17:00"),
                            Parts.window(List.of(Weekday.SUN), "10:00", "12:00")),
                    LocalTime.of(9, 0),
                    LocalTime.of(11, 0)),
            new Hours(
                    List.of(
                            Parts.window(List.of(Weekday.MON, Weekday.TUE, Weekday.THU, Weekday.FRI), "14:30", "20:00"),
                            Parts.window(List.of(Weekday.WED, Weekday.SUN), "09:30", "14:00")),
                    LocalTime.of(15, 0),
                    LocalTime.of(17, 30)),
            new Hours(
                    List.of(
                            Parts.window(WORKDAYS, "16:30", "21:30"),
                            Parts.window(List.of(Weekday.SUN), "09:00", "13:00")),
                    LocalTime.of(16, 30),
                    LocalTime.of(19, 0)));

    /** Weekday evenings and Sunday mornings. */
    static final Hours EVENINGS = new Hours(
            List.of(Parts.window(WORKDAYS, "17:00", "20:30"), Parts.window(List.of(Weekday.SUN), "10:00", "13:00")),
            LocalTime.of(17, 0),
            LocalTime.of(19, 0));
}
