package weekwright.desk.view.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.Quayside;
import weekwright.desk.view.brief.BriefPage.News;
import weekwright.desk.view.brief.BriefPage.Sheet;
import weekwright.desk.view.brief.BriefPages.Since;
import weekwright.desk.view.brief.BriefPages.Wish;
import weekwright.desk.view.terminal.BriefText;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;

/** What a head coach reads of a week, sentence by sentence. */
class BriefPagesTest {
    private static final Placement HEAVY =
            Quayside.session("heavy-lower-knee", "2027-03-02T18:00", 60, "gym", Dose.FULL);
    private static final Placement SPEED = Quayside.session("max-velocity", "2027-03-03T16:30", 65, "turf", Dose.FULL);
    private static final Totals CLEAN = new Totals(0, 0, 0, 0);

    private static Group squad() {
        return Quayside.oneSquad().get(0);
    }

    private static Sheet sheet(Judged judged) {
        return sheet(Quayside.scenario("Quayside", 7, List.of(squad())), judged, null);
    }

    private static Sheet sheet(Scenario scenario, Judged judged, @Nullable Since since) {
        List<Sheet> sheets =
                BriefPages.of(scenario, judged, new Wish(0, null, since)).sheets();
        assertThat(sheets).hasSize(1);
        return sheets.get(0);
    }

    private static Judged week(List<DayPicture> days, Placement... placements) {
        return Quayside.clean(days, placements);
    }

    private static List<DayPicture> days(DayClass... classes) {
        List<DayPicture> days = new ArrayList<>();
        for (int day = 0; day < classes.length; day++) {
            days.add(Quayside.day(day, day - 5, classes[day], 3, 100));
        }
        return days;
    }

    private static Judged found(Finding... findings) {
        Plan plan = Quayside.plan(CLEAN, List.of(), List.of(findings), List.of());
        return new Judged(plan, List.of(), Quayside.week());
    }

    private static Judged missing(LeftOut... leftOut) {
        return new Judged(
                Quayside.plan(CLEAN, List.of(HEAVY), List.of(), List.of(leftOut)), List.of(), Quayside.week());
    }

    private static Scenario without(Scenario of, List<Fixture> fixtures) {
        return new Scenario(
                of.weekwright(),
                of.id(),
                of.title(),
                of.zone(),
                of.firstDay(),
                of.days(),
                of.gridMinutes(),
                of.groups(),
                of.athletes(),
                fixtures,
                of.commitments(),
                of.facilities(),
                of.transfers(),
                of.staff(),
                of.history(),
                of.catalogue(),
                of.rules(),
                of.packs());
    }

    private static Scenario quiet() {
        return without(Quayside.scenario("Quayside", 7, List.of(squad())), List.of());
    }

    // --- the high work ---

    @Test
    void where_the_high_work_lies_and_how_far_from_the_match() {
        Judged judged = week(
                days(DayClass.FREE, DayClass.HIGH, DayClass.HIGH, DayClass.LOW, DayClass.LOW, DayClass.HIGH),
                HEAVY,
                SPEED);
        assertThat(sheet(judged).why().get(0))
                .isEqualTo(
                        "The high work lies on Tue 2 Mar (MD−4) and Wed 3 Mar (MD−3); the last of it ends 68 h 55 min"
                                + " before League round 18.");
    }

    @Test
    void without_a_match_how_far_one_high_day_lies_from_the_next() {
        Judged judged = week(days(DayClass.FREE, DayClass.HIGH, DayClass.HIGH, DayClass.LOW), HEAVY, SPEED);
        assertThat(sheet(quiet(), judged, null).why().get(0))
                .isEqualTo("The high work lies on Tue 2 Mar (MD−4) and Wed 3 Mar (MD−3); at least 21 h 30 min lie"
                        + " between one and the next.");
        Judged one = week(days(DayClass.FREE, DayClass.HIGH, DayClass.LOW), HEAVY);
        assertThat(sheet(quiet(), one, null).why().get(0)).isEqualTo("The high work lies on Tue 2 Mar (MD−4).");
    }

    @Test
    void a_week_without_high_work() {
        DayClass[] low = {DayClass.FREE, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.HIGH};
        assertThat(sheet(week(days(low))).why().get(0)).isEqualTo("No day is high but that of League round 18.");
        assertThat(sheet(quiet(), week(days(DayClass.LOW, DayClass.FREE)), null)
                        .why()
                        .get(0))
                .isEqualTo("No day of this week is high.");
    }

    // --- free and light days ---

    @Test
    void which_days_are_free_and_how_the_day_before_the_match_is() {
        Judged judged = week(days(
                DayClass.FREE, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.HIGH, DayClass.FREE));
        assertThat(sheet(judged).why().get(1))
                .isEqualTo(
                        "Mon 1 Mar (MD−5) and Sun 7 Mar (MD+1) are free, and the day before League round 18 is low.");
        Judged none =
                week(days(DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.MIDDLE, DayClass.HIGH));
        assertThat(sheet(none).why().get(1)).isEqualTo("No day is free, and the day before League round 18 is middle.");
        Judged rested =
                week(days(DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.LOW, DayClass.FREE, DayClass.HIGH));
        assertThat(sheet(rested).why().get(1)).isEqualTo("Fri 5 Mar (MD−1) is free.");
    }

    // --- what gives way ---

    @Test
    void what_gives_way_most_without_naming_anybody() {
        assertThat(sheet(found()).why().get(2)).isEqualTo("All that must hold holds, and no wish gives way.");
        assertThat(sheet(found(Quayside.finding(RuleLevel.WANT, 1.9, "Small.", null)))
                        .why()
                        .get(2))
                .isEqualTo("All that must hold holds, and only small wishes give way.");
        Finding small = Quayside.finding(RuleLevel.WANT, 4, "Something else.", null);
        Finding most = Quayside.finding(
                RuleLevel.WANT, 12, "Match squad: Thu 4 Mar is a middle day. Concerns R. Ash and B. Oak.", null);
        assertThat(sheet(found(small, most)).why().get(2))
                .isEqualTo("All that must hold holds; what gives way most: Thu 4 Mar is a middle day.");
    }

    @Test
    void what_concerns_few_says_how_many() {
        Finding few = new Finding(
                "free-day-place",
                "",
                RuleLevel.WANT,
                4,
                3,
                List.of("squad"),
                List.of("a1", "a2", "a3"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                Quayside.MONDAY,
                null,
                0,
                1,
                "days",
                "No free day. Concerns X.",
                null,
                null);
        assertThat(sheet(found(few)).why().get(2))
                .isEqualTo("All that must hold holds; what gives way most, for 3 of 18: No free day.");
    }

    @Test
    void what_must_hold_and_does_not() {
        Finding must = Quayside.finding(RuleLevel.MUST, 1, "There is no free day.", null);
        assertThat(sheet(found(must)).why().get(2))
                .isEqualTo("One thing that must hold does not: There is no free day.");
        assertThat(sheet(found(must, must)).why().get(2))
                .isEqualTo("2 things that must hold do not, first: There is no free day.");
    }

    /** Facts, missing sessions and small doses stand elsewhere; what belongs to another week is not of this one. */
    @Test
    void what_is_told_elsewhere_is_not_told_again() {
        Finding fact = Quayside.finding(RuleLevel.TOLD, 0, "Two fixtures lie close.", null);
        Finding short1 = new Finding(
                "aim-least",
                "",
                RuleLevel.KEY,
                1,
                18,
                List.of("squad"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                Quayside.MONDAY,
                null,
                0,
                1,
                "sessions",
                "None.",
                null,
                null);
        assertThat(sheet(found(fact, short1)).why().get(2))
                .isEqualTo("All that must hold holds, and no wish gives way.");
    }

    // --- what was given up ---

    private static LeftOut left(
            String id, RuleLevel level, @Nullable Pin pin, @Nullable CheapestOption best, String... by) {
        List<Blocker> blockers = new ArrayList<>();
        for (String rule : by) {
            blockers.add(new Blocker(rule, 9, 1));
        }
        return new LeftOut(id, "least", level, 1, pin, 9, blockers, best, "");
    }

    private static CheapestOption best(double must) {
        return new CheapestOption(Moment.parse("2027-03-04T17:00"), "gym", Dose.FULL, new Totals(must, 0, 0, 3));
    }

    @Test
    void what_has_no_place_and_why() {
        LeftOut speed = left(
                "squad/max-velocity/2027-03-01/1",
                RuleLevel.KEY,
                null,
                best(1),
                "before-fixture",
                "facility-open",
                "lead-free",
                "night-rest");
        assertThat(sheet(missing(speed)).givenUp())
                .containsExactly(
                        "Maximal velocity sprinting (key): none this week; wherever it could lie, it is too soon"
                                + " before a fixture, the place is closed or nobody is free to lead it.");
        LeftOut pricey = left("squad/heavy-lower-knee/2027-03-01/2", RuleLevel.WANT, null, best(0));
        assertThat(sheet(missing(pricey)).givenUp())
                .containsExactly(
                        "Heavy lower, knee-dominant: one fewer than wanted; it would find a place, on Thu 4 Mar at"
                                + " 17:00 at best, but bring no more than it costs.");
        CheapestOption gain =
                new CheapestOption(Moment.parse("2027-03-04T17:00"), "gym", Dose.FULL, new Totals(0, 0, 0, -3));
        assertThat(sheet(missing(left("squad/primer/2027-03-01/1", RuleLevel.WANT, null, gain)))
                        .givenUp())
                .containsExactly(
                        "Primer: none this week; it would find a place, on Thu 4 Mar at 17:00 at best, and the plan"
                                + " would be better for it.");
        Pin out = new Pin(false, false, false, false, false, false, true, List.of());
        assertThat(sheet(missing(left("squad/primer/2027-03-01/1", RuleLevel.MAIN, out, null)))
                        .givenUp())
                .containsExactly("Primer (main): none this week; left out on purpose.");
        assertThat(sheet(missing(left("squad/primer/2027-03-01/1", RuleLevel.WANT, null, null)))
                        .givenUp())
                .containsExactly("Primer: none this week; no free time is long enough for it.");
    }

    @Test
    void several_sessions_of_one_aim_stand_together_and_the_most_important_first() {
        LeftOut two = left("squad/heavy-lower-knee/2027-03-01/2", RuleLevel.WANT, null, best(0));
        LeftOut three = left("squad/heavy-lower-knee/2027-03-01/3", RuleLevel.WANT, null, best(0));
        LeftOut key = left("squad/max-velocity/2027-03-01/1", RuleLevel.KEY, null, best(1), "four-high-days");
        LeftOut otherWeek = left("squad/primer/2027-03-08/1", RuleLevel.KEY, null, null);
        assertThat(sheet(missing(two, three, key, otherWeek)).givenUp())
                .containsExactly(
                        "Maximal velocity sprinting (key): none this week; wherever it could lie, it would be a fourth high"
                                + " day running.",
                        "Heavy lower, knee-dominant: 2 fewer than wanted; it would find a place, on Thu 4 Mar at 17:00 at"
                                + " best, but bring no more than it costs.");
    }

    @Test
    void a_smaller_dose_is_given_up_too_where_the_whole_was_asked_for() {
        Group asking = new Group(
                "squad",
                "Match squad",
                null,
                null,
                null,
                18,
                0.8,
                List.of(),
                List.of(),
                null,
                List.of(aim("max-velocity", Dose.FULL, Dose.MICRO), aim("acceleration", Dose.MICRO)),
                Map.of(),
                List.of());
        Judged judged = week(
                Quayside.week(),
                Quayside.session("max-velocity", "2027-03-03T16:30", 40, "turf", Dose.MICRO),
                Quayside.session("acceleration", "2027-03-04T16:30", 40, "turf", Dose.MICRO));
        assertThat(sheet(Quayside.scenario("Quayside", 7, List.of(asking)), judged, null)
                        .givenUp())
                .containsExactly("Maximal velocity sprinting: a micro dose only, on Wed 3 Mar.");
    }

    private static Aim aim(String family, Dose... doses) {
        return new Aim(
                family,
                null,
                new PerWeek(1, 1, 1),
                Priority.KEY,
                List.of(doses),
                null,
                false,
                false,
                false,
                List.of(),
                null,
                null);
    }

    /** A must rule that can stand in a session's way is told in words of its own, not by its title. */
    @Test
    void every_rule_that_must_hold_has_words_for_standing_in_the_way() {
        assertThat(Rulebook.builtIn().rules())
                .filteredOn(rule -> rule.level() == RuleLevel.MUST
                        && rule.judged()
                        && !rule.id().equals("pins"))
                .allSatisfy(rule -> assertThat(InTheWay.of(rule.id())).doesNotContain("\""));
        assertThat(InTheWay.of("youth")).isEqualTo("it would break the rule \"Youth hours\"");
    }

    // --- what has changed ---

    private static News news(Scenario old, Plan before, Scenario now, Judged judged, @Nullable String at) {
        Since since = new Since(old, before, at == null ? null : Moment.parse(at));
        return java.util.Objects.requireNonNull(sheet(now, judged, since).news());
    }

    @Test
    void what_has_changed_since_the_plan_was_given_out() {
        Scenario now = Quayside.scenario("Quayside", 7, List.of(squad()));
        Fixture match = now.fixtures().get(0);
        Fixture friendly = new Fixture(
                "f1",
                "Friendly",
                List.of("squad"),
                null,
                Moment.parse("2027-03-04T19:00"),
                90,
                null,
                null,
                null,
                null,
                List.of(),
                List.of());
        Fixture earlier = new Fixture(
                match.id(),
                match.label(),
                match.groups(),
                match.family(),
                Moment.parse("2027-03-07T12:00"),
                match.minutes(),
                null,
                match.weight(),
                match.travel(),
                null,
                List.of(),
                List.of());
        Plan before = Quayside.plan(
                CLEAN,
                List.of(
                        Quayside.session("heavy-lower-knee", "2027-03-02T17:00", 60, "gym", Dose.FULL),
                        Quayside.session("max-velocity", "2027-03-03T16:30", 65, "gym", Dose.FULL),
                        Quayside.session("primer", "2027-03-05T10:00", 30, null, Dose.FULL),
                        Quayside.session("upper-strength", "2027-03-05T16:30", 45, "gym", Dose.REDUCED)),
                List.of(),
                List.of());
        Judged judged = week(
                Quayside.week(),
                HEAVY,
                SPEED,
                Quayside.session("tempo-run", "2027-03-04T16:30", 40, "turf", Dose.FULL),
                Quayside.session("upper-strength", "2027-03-05T16:30", 45, "gym", Dose.FULL));
        News news = news(without(now, List.of(friendly, earlier)), before, now, judged, "2027-02-27T18:00");
        assertThat(news.heading()).isEqualTo("Changed since Sat 27 Feb 18:00");
        assertThat(news.lines())
                .containsExactly(
                        "Heavy lower, knee-dominant: now Tue 2 Mar 18:00, Weights room (was Tue 2 Mar 17:00)",
                        "Maximal velocity sprinting: now Wed 3 Mar 16:30, Turf pitch (was Wed 3 Mar 16:30, Weights room)",
                        "Tempo run: new, Thu 4 Mar 16:30, Turf pitch",
                        "Friendly: off (was Thu 4 Mar 19:00)",
                        "Primer: off (was Fri 5 Mar 10:00)",
                        "League round 18: now Sat 6 Mar 14:30 (was Sun 7 Mar 12:00)");
    }

    @Test
    void nothing_has_changed() {
        Scenario now = Quayside.scenario("Quayside", 7, List.of(squad()));
        Judged judged = week(Quayside.week(), HEAVY);
        News news = news(now, judged.plan(), now, judged, null);
        assertThat(news).isEqualTo(new News(null, List.of()));
        assertThat(news.heading()).isEqualTo("Changed since it was given out");
        assertThat(sheet(judged).news()).isNull();
    }

    // --- the pages ---

    @Test
    void one_week_and_one_group_of_many() {
        Scenario two = Quayside.scenario("Two weeks", 14, List.of(squad(), Quayside.group("youth", "Youth")));
        List<DayPicture> days = new ArrayList<>();
        for (String group : List.of("squad", "youth")) {
            for (int day = 0; day < 14; day++) {
                LocalDate date = Quayside.MONDAY.plusDays(day);
                days.add(new DayPicture(group, date, null, 0, 0, DayClass.FREE));
            }
        }
        Judged judged = Quayside.clean(days);
        BriefPage page = BriefPages.of(two, judged, new Wish(1, "youth", null));
        assertThat(page.sheets()).extracting(Sheet::group).containsExactly("Youth");
        assertThat(page.sheets().get(0).span()).isEqualTo("8 to 14 March 2027");
        assertThat(BriefText.chat(page)).startsWith("""
                        Youth, 8 to 14 March 2027
                        Times in Europe/Dublin

                        Mon 8 Mar
                        Free

                        Tue 9 Mar
                        """);
        assertThat(BriefPages.of(two, judged, new Wish(0, null, null)).sheets()).hasSize(2);
    }
}
