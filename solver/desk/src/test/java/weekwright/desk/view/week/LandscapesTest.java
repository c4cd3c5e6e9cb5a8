package weekwright.desk.view.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.Quayside;
import weekwright.desk.view.week.TimeAxis.Stretch;
import weekwright.desk.view.week.Tracks.Track;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Pin;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

class LandscapesTest {
    private static final Scenario SCENARIO = Quayside.scenario("Quayside", 7, Quayside.oneSquad());

    private static Landscape of(LookAt look, Judged judged) {
        return Landscapes.of(SCENARIO, judged, List::of, look);
    }

    private static Judged week() {
        return Quayside.clean(
                List.of(
                        Quayside.day(0, null, DayClass.FREE, 0, 0),
                        Quayside.day(1, -4, DayClass.HIGH, 10.1, 1060),
                        Quayside.day(2, -3, DayClass.MIDDLE, 6, 500),
                        Quayside.day(3, -2, DayClass.LOW, 4, 425),
                        Quayside.day(4, -1, DayClass.LOW, 4, 390),
                        Quayside.day(5, 0, DayClass.HIGH, 9, 920),
                        Quayside.day(6, 1, DayClass.FREE, 0, 0)),
                Quayside.pinned(
                        Quayside.session("max-velocity", "2027-03-02T16:30", 65, "turf", Dose.FULL),
                        "c1",
                        new Pin(true, false, false, false, false, false, false, List.of())));
    }

    @Test
    void a_session_lies_on_its_day_at_its_time() {
        Landscape land = of(new LookAt(1, LookAt.By.GROUP), week());

        Landscape.Day tuesday = land.weeks().get(0).lanes().get(0).days().get(1);
        Landscape.Card card = tuesday.cards().get(0);

        // The axis begins with the first whole hour in use, the fixture's at 14:00.
        assertThat(land.weeks().get(0).lanes().get(0).axis().hours().get(0)).isEqualTo(new Landscape.Hour(0, "14:00"));
        assertThat(card.row()).isEqualTo(30);
        assertThat(card.rows()).isEqualTo(13);
        assertThat(card.time()).isEqualTo("16:30");
        assertThat(card.end()).isEqualTo("17:35");
        assertThat(card.label()).isEqualTo("Maximal velocity sprinting");
        assertThat(card.place()).isEqualTo("Turf pitch");
        assertThat(card.notes()).containsExactly("Speed coach");
        assertThat(card.pinned()).isEqualTo("pinned: time");
        assertThat(card.demand()).isEqualTo("high");
        assertThat(tuesday.cards().get(1).kind()).isEqualTo(Landscape.Kind.FIXED);
    }

    @Test
    void each_day_says_its_distance_its_class_and_how_much() {
        List<Landscape.Day> days = of(new LookAt(1, LookAt.By.GROUP), week())
                .weeks()
                .get(0)
                .lanes()
                .get(0)
                .days();

        assertThat(days)
                .extracting(Landscape.Day::matchDay)
                .containsExactly("", "MD−4", "MD−3", "MD−2", "MD−1", "MD", "MD+1");
        assertThat(days)
                .extracting(day -> day.sky().word())
                .containsExactly("free", "high", "middle", "low", "low", "high", "free");
        assertThat(days.get(1).sky().points()).isEqualTo("10.1");
        assertThat(days.get(1).sky().amount()).isEqualTo("load 1,060 AU");
        // Higher ground stands nearer to the top; neighbours meet at the same height.
        assertThat(days.get(1).sky().top()).isLessThan(days.get(3).sky().top());
        assertThat(days.get(1).sky().path()).endsWith("L120 20.1 L120 70 Z");
        assertThat(days.get(2).sky().path()).startsWith("M0 70 L0 20.1 ");
    }

    @Test
    void travel_to_a_fixture_is_hatched_on_both_sides() {
        Landscape.Day saturday = of(new LookAt(1, LookAt.By.GROUP), week())
                .weeks()
                .get(0)
                .lanes()
                .get(0)
                .days()
                .get(5);

        assertThat(saturday.shades()).extracting(Landscape.Shade::why).containsExactly("On the way", "On the way back");
        assertThat(saturday.cards()).extracting(Landscape.Card::kind).containsExactly(Landscape.Kind.FIXTURE);
    }

    @Test
    void places_show_how_long_they_are_in_use() {
        Landscape land = of(new LookAt(1, LookAt.By.PLACE), week());

        List<Landscape.Lane> lanes = land.weeks().get(0).lanes();

        assertThat(lanes).extracting(Landscape.Lane::label).containsExactly("Weights room", "Turf pitch");
        assertThat(lanes.get(1).days().get(1).sky().amount()).isEqualTo("2 h 20 min");
        assertThat(lanes.get(0).days().get(1).sky().word()).isEqualTo("not used");
    }

    @Test
    void athletes_see_what_they_take_part_in() {
        Scenario scenario = Scenarios.read("one-match");
        Judged judged = Engine.judge(
                scenario,
                new weekwright.model.plan.Plan(
                        1,
                        scenario.id(),
                        null,
                        null,
                        null,
                        List.of(new weekwright.model.plan.Placement(
                                "first-squad/max-velocity/2027-02-08/1",
                                "first-squad",
                                "max-velocity",
                                Quayside.at("2027-02-10T09:00"),
                                null,
                                "track",
                                null,
                                Dose.FULL,
                                null,
                                null)),
                        List.of(),
                        List.of(),
                        null,
                        List.of()));

        Landscape land = Landscapes.of(
                scenario, judged, () -> Engine.people(scenario, judged.plan()), new LookAt(1, LookAt.By.ATHLETE));

        List<Landscape.Lane> lanes = land.weeks().get(0).lanes();
        assertThat(labels(lanes, "R. Tarrow")).contains("Maximal velocity sprinting", "League round 21, home");
        // A clinician keeps M. Pellor's sprinting light until the 14th.
        assertThat(labels(lanes, "M. Pellor")).contains("Team practice").doesNotContain("Maximal velocity sprinting");
    }

    private static List<String> labels(List<Landscape.Lane> lanes, String athlete) {
        return lanes.stream()
                .filter(lane -> lane.label().equals(athlete))
                .flatMap(lane -> lane.days().stream())
                .flatMap(day -> day.cards().stream())
                .map(Landscape.Card::label)
                .toList();
    }

    @Test
    void what_overlaps_lies_side_by_side() {
        List<Stretch> stretches =
                List.of(new Stretch(0, 60), new Stretch(30, 90), new Stretch(60, 80), new Stretch(100, 120));

        assertThat(Tracks.of(stretches))
                .containsExactly(new Track(1, 2), new Track(2, 2), new Track(1, 2), new Track(1, 1));
    }

    @Test
    void more_than_four_share_the_last_track() {
        List<Stretch> many = java.util.Collections.nCopies(6, new Stretch(0, 60));

        assertThat(Tracks.of(many)).extracting(Track::track).containsExactly(1, 2, 3, 4, 4, 4);
    }

    @Test
    void an_axis_is_never_shorter_than_six_hours() {
        assertThat(TimeAxis.over(List.of(new Stretch(1_200, 1_275)))).isEqualTo(new TimeAxis(1_080, 1_440));
        assertThat(TimeAxis.over(List.of())).isEqualTo(new TimeAxis(420, 1_260));
    }
}
