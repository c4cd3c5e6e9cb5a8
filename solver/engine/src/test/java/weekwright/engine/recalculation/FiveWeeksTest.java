package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.model.scenario.Weekday.FRI;
import static weekwright.model.scenario.Weekday.MON;
import static weekwright.model.scenario.Weekday.SUN;
import static weekwright.model.scenario.Weekday.THU;
import static weekwright.model.scenario.Weekday.TUE;
import static weekwright.model.scenario.Weekday.WED;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.Result;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;

/**
 * Five weeks of one squad between two Saturday matches, from good to bad. The order is an expert proposal; the sums are
 * worked by hand beside each.
 */
class FiveWeeksTest {
    /** Sunday to Saturday; the first match stands in the history, the second on the last day. */
    private static Sketch betweenTwoMatches() {
        Sketch week = new Sketch();
        week.firstDay = LocalDate.parse("2027-03-07");
        week.headcount = 18;
        week.highDays = new PerWeek(1, 3, 4);
        week.windows.add(Sketch.window("09:00", "17:00", MON, TUE, WED, THU, FRI));
        week.windows.add(Sketch.window("10:00", "12:00", SUN));
        return week.done("fixture", "2027-03-06T15:00", 110)
                .match("second", "2027-03-13T15:00", 110)
                .aim("acceleration", 0, 1, 1, Priority.MAIN)
                .aim("heavy-lower-knee", 1, 1, 1, Priority.MAIN)
                .aim("max-velocity", 0, 1, 1, Priority.KEY, Dose.FULL, Dose.MICRO)
                .aim("upper-strength", 0, 1, 1, Priority.MAIN);
    }

    private static Sketch tuesday(Sketch week) {
        return week.place("acceleration", "2027-03-09T09:30", "turf").practice("2027-03-09T10:30", 85, Effort.USUAL);
    }

    private static Sketch wednesdayFast(Sketch week) {
        return week.place("max-velocity", "2027-03-10T10:00", "turf").practice("2027-03-10T11:10", 85, Effort.USUAL);
    }

    private static Sketch thursdayUpper(Sketch week) {
        return week.practice("2027-03-11T10:30", 85, Effort.USUAL).place("upper-strength", "2027-03-11T12:00", "gym");
    }

    private static Sketch fridayPrimed(Sketch week) {
        return week.place("primer", "2027-03-12T10:00", "turf").practice("2027-03-12T10:30", 85, Effort.EASY);
    }

    private static Sketch sundayRecovery(Sketch week) {
        return week.place("recovery", "2027-03-07T10:00", null);
    }

    /**
     * Week A is clean. Heavy lower ends Tuesday 13:00, 98 h before the match (92 counted); maximal speed ends Wednesday
     * 11:05, 75 h 55 min before (68 counted); upper strength Thursday 12:45, 50 h 15 min (44 counted). Tuesday's block
     * ends 13:00, 21 h before Wednesday's (20 counted). Loads of the last three days: Wednesday 5 x 65 + 5 x 75 = 700,
     * Thursday 5 x 85 + 6 x 45 = 695, Friday 4 x 30 + 3 x 75 = 345. Monday, the second day, is free; three high days.
     */
    @Test
    void weekAIsClean() {
        Sketch week = tuesday(sundayRecovery(betweenTwoMatches())).place("heavy-lower-knee", "2027-03-09T12:00", "gym");
        Result result = fridayPrimed(thursdayUpper(wednesdayFast(week))).judged();
        assertThat(result).isEqualTo(new Result(0, 0, 0, 0, Map.of()));
    }

    /** Week B is free on the first day after the match instead of the second: 4. */
    @Test
    void weekBCostsFour() {
        Sketch week = tuesday(betweenTwoMatches()
                        .place("tempo-run", "2027-03-08T10:00", "turf")
                        .place("trunk-and-balance", "2027-03-08T10:40", null))
                .place("heavy-lower-knee", "2027-03-09T12:00", "gym");
        Result result = fridayPrimed(thursdayUpper(wednesdayFast(week))).judged();
        assertThat(result).isEqualTo(new Result(0, 0, 0, 40, Map.of("free-day-place", new RuleSum(1, 40))));
    }

    /** Week C: heavy lower ends Wednesday 13:40, 73 h 20 min before the match; 92 - 73 1/3 = 18 2/3, 12 + 2 x 6 2/3. */
    @Test
    void weekCLiftsTooLate() {
        Sketch week = wednesdayFast(tuesday(sundayRecovery(betweenTwoMatches())))
                .place("heavy-lower-knee", "2027-03-10T12:40", "gym");
        Result result = fridayPrimed(thursdayUpper(week)).judged();
        assertThat(result).isEqualTo(new Result(0, 0, 0, 253, Map.of("before-fixture-margin", new RuleSum(1, 253))));
    }

    /**
     * Week D: maximal speed ends Thursday 11:05, 51 h 55 min before the match; 68 - 51 11/12 = 16 1/12, 12 + 2 x 4 1/12
     * = 20.2. The load rises from Wednesday (425) to Thursday (325 + 375 + 270 = 970): 8; Friday's 345 is more than two
     * thirds of 425: 8.
     */
    @Test
    void weekDSprintsTooLate() {
        Sketch week = tuesday(sundayRecovery(betweenTwoMatches()))
                .place("heavy-lower-knee", "2027-03-09T12:00", "gym")
                .practice("2027-03-10T10:30", 85, Effort.USUAL)
                .place("max-velocity", "2027-03-11T10:00", "turf")
                .practice("2027-03-11T11:10", 85, Effort.USUAL)
                .place("upper-strength", "2027-03-11T12:40", "gym");
        Result result = fridayPrimed(week).judged();
        assertThat(result)
                .isEqualTo(new Result(
                        0,
                        0,
                        0,
                        362,
                        Map.of(
                                "before-fixture-margin", new RuleSum(1, 202),
                                "load-falls-to-fixture", new RuleSum(2, 160))));
    }

    /**
     * Week E. Sunday is free, Monday is not: 4. Intervals on Monday 12:00 come 43 h 10 min after the match (44 counted):
     * 0.8. Upper strength ends Friday 12:45, 26 h 15 min before (44 counted): 12 + 2 x 5 3/4 = 23.5. Friday's load, 550 +
     * 270 = 820, is more than Thursday's 0 and than two thirds of Wednesday's 200: 8 and 8; at 7.5 it is the fourth high
     * day: 24. No acceleration: 12; maximal speed only as a micro dose: half of 16.
     */
    @Test
    void weekEIsWrongThroughout() {
        Result result = sundayRecovery(betweenTwoMatches())
                .practice("2027-03-08T10:30", 85, Effort.USUAL)
                .place("aerobic-intervals", "2027-03-08T12:00", "turf")
                .practice("2027-03-09T10:30", 85, Effort.USUAL)
                .place("heavy-lower-knee", "2027-03-09T12:00", "gym")
                .place("max-velocity", "2027-03-10T10:00", "turf", Dose.MICRO)
                .practice("2027-03-12T10:00", 110, Effort.USUAL)
                .place("upper-strength", "2027-03-12T12:00", "gym")
                .judged();
        assertThat(result)
                .isEqualTo(new Result(
                        0,
                        0,
                        0,
                        883,
                        Map.of(
                                "after-fixture-margin", new RuleSum(1, 8),
                                "aim-target", new RuleSum(1, 120),
                                "before-fixture-margin", new RuleSum(1, 235),
                                "dose-kept", new RuleSum(1, 80),
                                "free-day-place", new RuleSum(1, 40),
                                "high-days-target", new RuleSum(1, 240),
                                "load-falls-to-fixture", new RuleSum(2, 160))));
    }
}
