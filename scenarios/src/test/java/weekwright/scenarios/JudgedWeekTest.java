package weekwright.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Scenario;

/**
 * The five weeks lie as they are described and cost what was worked out on paper. The order of the weeks and their
 * figures are an expert proposal.
 */
class JudgedWeekTest {
    @Test
    void theWeeksRunFromGoodToBad() {
        List<JudgedWeek> weeks = Scenarios.weeks();

        assertThat(weeks).extracting(JudgedWeek::letter).containsExactly('A', 'B', 'C', 'D', 'E');
        assertThat(weeks).extracting(JudgedWeek::tenths).containsExactly(0, 40, 253, 362, 883);
        assertThat(weeks)
                .allSatisfy(week -> assertThat(week.plan().scenario())
                        .isEqualTo(week.scenario().id()));
    }

    @Test
    void anotherLetterIsRefused() {
        assertThat(Scenarios.week('c').letter()).isEqualTo('C');
        assertThatThrownBy(() -> Scenarios.week('f'))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no judged week is called [f]: there are A to E");
    }

    @Test
    void eachWeekRunsFromSundayToTheMatchAndTheLastMatchLiesInTheHistory() {
        for (JudgedWeek week : Scenarios.weeks()) {
            Scenario scenario = week.scenario();
            assertThat(scenario.firstDay().getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            assertThat(scenario.days()).isEqualTo(7);
            assertThat(scenario.fixtures().get(0).start()).hasToString("2027-03-13T15:00");
            assertThat(scenario.fixtures().get(0).minutes()).isEqualTo(110);
            assertThat(scenario.history().get(0).start()).hasToString("2027-03-06T15:00");
            assertThat(scenario.history().get(0).minutes()).isEqualTo(110);
        }
    }

    @Test
    void theWeeksDifferInNothingButTheirPractices() {
        Scenario first = Scenarios.week('a').scenario();
        for (JudgedWeek week : Scenarios.weeks()) {
            Scenario scenario = week.scenario();
            assertThat(scenario.groups()).isEqualTo(first.groups());
            assertThat(scenario.facilities()).isEqualTo(first.facilities());
            assertThat(scenario.fixtures()).isEqualTo(first.fixtures());
            assertThat(scenario.history()).isEqualTo(first.history());
        }
        assertThat(Scenarios.week('b').scenario().commitments()).isEqualTo(first.commitments());
        assertThat(Scenarios.week('c').scenario().commitments()).isEqualTo(first.commitments());
    }

    @Test
    void theLoadsOfTheDaysAreThoseOfTheSumsOnPaper() {
        assertThat(loads('A')).containsExactly(30.0, 0.0, 1035.0, 700.0, 695.0, 345.0);
        assertThat(loads('B')).containsExactly(0.0, 235.0, 1035.0, 700.0, 695.0, 345.0);
        assertThat(loads('C')).containsExactly(30.0, 0.0, 650.0, 1085.0, 695.0, 345.0);
        assertThat(loads('D')).containsExactly(30.0, 0.0, 1035.0, 425.0, 970.0, 345.0);
        assertThat(loads('E')).containsExactly(0.0, 635.0, 810.0, 200.0, 0.0, 820.0);
    }

    @Test
    void theHoursBeforeTheMatchAreThoseOfTheSumsOnPaper() {
        assertThat(minutesBeforeTheMatch('A', "heavy-lower-knee")).isEqualTo(98 * 60);
        assertThat(minutesBeforeTheMatch('A', "max-velocity")).isEqualTo(75 * 60 + 55);
        assertThat(minutesBeforeTheMatch('A', "upper-strength")).isEqualTo(50 * 60 + 15);
        assertThat(minutesBeforeTheMatch('C', "heavy-lower-knee")).isEqualTo(73 * 60 + 20);
        assertThat(minutesBeforeTheMatch('D', "max-velocity")).isEqualTo(51 * 60 + 55);
        assertThat(minutesBeforeTheMatch('E', "upper-strength")).isEqualTo(26 * 60 + 15);

        assertThat(marginTenths('A', "heavy-lower-knee", 96)).isZero();
        assertThat(marginTenths('A', "max-velocity", 72)).isZero();
        assertThat(marginTenths('C', "heavy-lower-knee", 96)).isEqualTo(253);
        assertThat(marginTenths('D', "max-velocity", 72)).isEqualTo(202);
        assertThat(marginTenths('E', "upper-strength", 48)).isEqualTo(235);
    }

    /** Points in tenths for the hours short of those wanted less 4: one each up to 12, two each beyond. */
    private static long marginTenths(char letter, String family, int wanted) {
        double shortBy = Math.max(0, wanted - 4 - minutesBeforeTheMatch(letter, family) / 60.0);
        return Math.round(10 * (Math.min(shortBy, 12) + 2 * Math.max(0, shortBy - 12)));
    }

    private static long minutesBeforeTheMatch(char letter, String family) {
        JudgedWeek week = Scenarios.week(letter);
        Scenario scenario = week.scenario();
        Instant kickOff = scenario.fixtures().get(0).start().instant(scenario.zone());
        Placement placement = week.plan().placements().stream()
                .filter(one -> one.family().equals(family))
                .findFirst()
                .orElseThrow();
        Instant start = placement.start().instant(scenario.zone());
        return Duration.between(start, kickOff).toMinutes()
                - Demands.wholeMinutes(Catalogue.builtIn().family(family), null, placement.dose(), 1);
    }

    /** Loads of Sunday to Friday in AU, warm-ups shared where things follow each other. */
    private static List<Double> loads(char letter) {
        JudgedWeek week = Scenarios.week(letter);
        Map<LocalDate, List<Part>> days = new LinkedHashMap<>();
        for (int i = 0; i < 6; i++) {
            days.put(week.scenario().firstDay().plusDays(i), new ArrayList<>());
        }
        week.plan().placements().forEach(one -> days.get(one.start().date()).add(Part.of(one)));
        week.scenario()
                .commitments()
                .forEach(one -> days.get(one.start().date()).add(Part.of(one)));
        return days.values().stream().map(JudgedWeekTest::load).toList();
    }

    private static double load(List<Part> day) {
        day.sort(Comparator.comparingInt(Part::start));
        int tenths = 0;
        for (int i = 0; i < day.size(); i++) {
            Part part = day.get(i);
            int minutes = part.minutes();
            if (i > 0 && part.start() - day.get(i - 1).start() - day.get(i - 1).minutes() <= 15) {
                List<Part> before = day.subList(0, i);
                boolean firstSprint = part.family().sprint()
                        && before.stream().noneMatch(p -> p.family().sprint());
                boolean firstLift = part.family().lift()
                        && before.stream().noneMatch(p -> p.family().lift());
                int warmUp = part.family().warmUpMinutes();
                minutes += Demands.sharedWarmUp(warmUp, firstSprint || firstLift) - warmUp;
            }
            tenths += Demands.loadTenths(part.rpe(), minutes);
        }
        return tenths / 10.0;
    }

    private record Part(Family family, int start, int minutes, double rpe) {
        static Part of(Placement one) {
            Family family = Catalogue.builtIn().family(one.family());
            int minutes = Demands.wholeMinutes(family, null, one.dose() == null ? Dose.FULL : one.dose(), 1);
            return new Part(family, one.start().local().toLocalTime().toSecondOfDay() / 60, minutes, family.rpe());
        }

        static Part of(Commitment one) {
            Family family = Catalogue.builtIn().family(one.family());
            Effort effort = one.effort();
            return new Part(
                    family,
                    one.start().local().toLocalTime().toSecondOfDay() / 60,
                    one.minutes(),
                    effort == null ? family.rpe() : effort.rpe());
        }
    }
}
