package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.testing.Squad;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demand;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.GroupKind;

/** A Wednesday on which a session lies from 10:00 to 10:40, beside what is fixed. */
class DayStateTest {
    private static DayState wednesday(Squad squad) {
        return wednesday(squad, "tempo-run");
    }

    private static DayState wednesday(Squad squad, String family) {
        Problem problem = ProblemBuilder.of(squad.aim(family, 0, 1, 1).scenario());
        Session session = problem.sessions.get(0);
        int ten = problem.calendar.minute(LocalDateTime.parse("2027-03-03T10:00"));
        Stimulus at = Arrays.stream(session.options)
                .filter(option -> option.start == ten)
                .findFirst()
                .orElseThrow();
        Judge judge = new Judge(problem);
        judge.move(session, at);
        judge.settle();
        return judge.day(0, 2);
    }

    private static Squad practice(String at, int minutes) {
        return squad().practice("practice", "2027-03-03T" + at).lasting(minutes);
    }

    @Test
    void a_day_of_recovery_alone_is_free() {
        assertThat(wednesday(squad(), "mobility").dayClass()).isEqualTo(DayClass.FREE);
        assertThat(wednesday(squad(), "tempo-run").dayClass()).isEqualTo(DayClass.LOW);
    }

    /** The largest of the catalogue's three figures (expert proposal): 1, and 9 of nerves. */
    @Test
    void its_demand_is_that_of_its_one_session() {
        assertThat(wednesday(squad(), "mobility").demand()).isEqualTo(1);
        assertThat(wednesday(squad(), "max-velocity").demand()).isEqualTo(9);
    }

    /** A night too short is the coach's to mend where the first thing of the morning is placed, or the last of the evening. */
    @Test
    void the_morning_is_ours_where_what_we_placed_begins_it() {
        assertThat(wednesday(squad()).firstPlaced).isTrue();
        assertThat(wednesday(practice("10:00", 20)).firstPlaced)
                .as("both at ten")
                .isTrue();
        assertThat(wednesday(practice("10:00", 85)).firstPlaced)
                .as("both at ten")
                .isTrue();
        assertThat(wednesday(practice("09:00", 20)).firstPlaced).isFalse();
        assertThat(wednesday(practice("11:00", 20)).firstPlaced).isTrue();
    }

    @Test
    void a_journey_that_begins_before_it_begins_the_day() {
        Squad away = squad().fixture("cup-tie", "2027-03-03T15:00").travelling(400, 60);
        assertThat(wednesday(away).firstPlaced).isFalse();
    }

    @Test
    void the_evening_is_ours_where_what_we_placed_ends_it() {
        assertThat(wednesday(squad()).lastPlaced).isTrue();
        assertThat(wednesday(practice("09:40", 60)).lastPlaced)
                .as("both until 10:40")
                .isTrue();
        assertThat(wednesday(practice("10:20", 20)).lastPlaced)
                .as("both until 10:40")
                .isTrue();
        assertThat(wednesday(practice("10:20", 60)).lastPlaced).isFalse();
        assertThat(wednesday(practice("09:00", 120)).lastPlaced).isFalse();
        assertThat(wednesday(practice("09:00", 20)).lastPlaced).isTrue();
    }

    /** Tempo of 40 minutes at RPE 4, ten of them warm-up, of which five are left; practice at RPE 5 (expert proposals). */
    @Test
    void a_quarter_of_an_hour_after_practice_people_are_still_warm() {
        assertThat(wednesday(practice("09:00", 45)).loadTenths()).isEqualTo(2250 + 1600 - 200);
        assertThat(wednesday(practice("09:00", 44)).loadTenths()).isEqualTo(2200 + 1600);
    }

    /** Acceleration at RPE 5, upper body at RPE 6 and full body at RPE 7 (expert proposals). */
    @Test
    void the_first_sprint_and_the_first_lift_of_a_day_keep_ten_minutes_of_warm_up() {
        assertThat(wednesday(practice("09:00", 45), "acceleration").loadTenths())
                .isEqualTo(2250 + 2750 - 500);
        assertThat(wednesday(before("acceleration"), "acceleration").loadTenths())
                .isEqualTo(2250 + 2750 - 750);
        assertThat(wednesday(practice("09:00", 45), "upper-strength").loadTenths())
                .isEqualTo(2250 + 2700);
        assertThat(wednesday(before("full-body-strength"), "upper-strength").loadTenths())
                .isEqualTo(3150 + 2700 - 300);
    }

    private static Squad before(String family) {
        return squad().commitment("club", family, "2027-03-03T09:00").lasting(45);
    }

    /** 90 minutes of play and 25 of warm-up at RPE 8, until 09:45. */
    @Test
    void after_a_fixture_a_session_warms_up_anew() {
        assertThat(wednesday(squad().fixture("cup-tie", "2027-03-03T08:00")).loadTenths())
                .isEqualTo(9200 + 1600);
    }

    /** At five, at ten and at one; the journey takes up all hours from eight on. */
    @Test
    void what_lies_on_a_journey_is_one_visit_with_it() {
        assertThat(wednesday(atFiveAndAtOne()).visits).isEqualTo(3);
        assertThat(wednesday(atFiveAndAtOne()
                                .fixture("cup-tie", "2027-03-03T15:00")
                                .travelling(400, 60))
                        .visits)
                .isEqualTo(2);
    }

    private static Squad atFiveAndAtOne() {
        return practice("05:00", 20).practice("talk", "2027-03-03T13:00").lasting(20);
    }

    /** Maximal velocity from 10:00 to 11:05, and skill runs from 14:00 to 15:00. */
    @Test
    void work_at_the_edge_of_low_is_no_part_of_a_block() {
        DayState low = wednesday(skillRuns("14:00", 5.5), "max-velocity");
        assertThat(low.blockEnd - low.blockStart).isEqualTo(65);
        DayState middle = wednesday(skillRuns("14:00", 5.6), "max-velocity");
        assertThat(middle.blockEnd - middle.blockStart).isEqualTo(300);
    }

    @Test
    void work_at_the_edge_of_low_leaves_a_high_day_to_the_upper_body() {
        DayState low = wednesday(skillRuns("14:00", 5.5).kind(GroupKind.STRENGTH), "upper-strength");
        assertThat(low.high()).isTrue();
        assertThat(low.upperOnly).isTrue();
        DayState middle = wednesday(skillRuns("14:00", 5.6).kind(GroupKind.STRENGTH), "upper-strength");
        assertThat(middle.upperOnly).isFalse();
    }

    /** What tires is above low, and has no late place in the order of a day, as practice has. */
    @Test
    void a_skill_is_learnt_fresh_after_work_at_the_edge_of_low() {
        assertThat(tired(skillRuns("08:00", 5.5))).isFalse();
        assertThat(tired(skillRuns("08:00", 5.6))).isTrue();
        assertThat(tired(practice("08:00", 60).effort(Effort.HARD))).isFalse();
    }

    private static boolean tired(Squad squad) {
        DayState day = wednesday(squad);
        return day.tiringStart < day.lastEnd;
    }

    private static Squad skillRuns(String at, double demand) {
        return squad().family(new FamilyPatch(
                        "skill-at-speed",
                        null,
                        null,
                        new Demand(demand, 3, 5),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null))
                .commitment("skill-runs", "skill-at-speed", "2027-03-03T" + at);
    }
}
