package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.catalogue.Variant;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Priority;

/** What sessions hold, and what dose, week, taper and break leave of it. */
class WorkTest {
    private static final Group SQUAD = Someone.group(GroupKind.FIELD, Phase.IN_SEASON, Level.TRAINED);

    private static String main(Work work, Level level) {
        return work.lines(level).stream()
                .filter(line -> line.kind() != ContentKind.WARM_UP)
                .map(line -> line.sets() + "x" + line.repetitions())
                .toList()
                .toString();
    }

    /** Doses: main part × 1, 2/3, 1/3 (expert proposal). Sets of lifts shrink, repetitions and weights do not. */
    @Test
    void a_dose_takes_sets_away() {
        assertThat(main(Someone.work("heavy-lower-knee", Dose.FULL), Level.TRAINED))
                .isEqualTo("[4x3, 2x6, 2x8, 2xnull]");
        assertThat(main(Someone.work("heavy-lower-knee", Dose.REDUCED), Level.TRAINED))
                .isEqualTo("[3x3, 1x6, 1x8, 2xnull]");
        assertThat(main(Someone.work("heavy-lower-knee", Dose.MICRO), Level.TRAINED))
                .isEqualTo("[1x3, 1x6, 1x8, 2xnull]");
    }

    @Test
    void the_warm_up_never_shrinks() {
        assertThat(Someone.work("max-velocity", Dose.MICRO).lines(Level.TRAINED).stream()
                        .filter(line -> line.kind() == ContentKind.WARM_UP))
                .hasSize(4);
    }

    @Test
    void a_dose_takes_runs_away() {
        assertThat(main(Someone.work("max-velocity", Dose.FULL), Level.TRAINED)).isEqualTo("[1x5]");
        assertThat(main(Someone.work("max-velocity", Dose.REDUCED), Level.TRAINED))
                .isEqualTo("[1x3]");
        assertThat(main(Someone.work("max-velocity", Dose.MICRO), Level.TRAINED))
                .isEqualTo("[1x2]");
        assertThat(main(Someone.work("tempo-run", Dose.FULL), Level.TRAINED)).isEqualTo("[2x7]");
        assertThat(main(Someone.work("tempo-run", Dose.REDUCED), Level.TRAINED)).isEqualTo("[1x9]");
    }

    @Test
    void a_week_makes_more_or_less_of_it() {
        assertThat(main(Someone.work("heavy-lower-knee", Dose.FULL, 0.7, 1, null, SQUAD), Level.TRAINED))
                .startsWith("[3x3");
        assertThat(main(Someone.work("heavy-lower-knee", Dose.FULL, 1.25, 1, null, SQUAD), Level.TRAINED))
                .startsWith("[5x3");
    }

    /** Most of it is a limit: never rounded up over it. */
    @Test
    void a_taper_or_a_break_is_never_passed() {
        Work half = Someone.work("max-velocity", Dose.FULL).atMost(0.5);

        assertThat(main(half, Level.TRAINED)).as("of 5 runs").isEqualTo("[1x2]");
        assertThat(main(Someone.work("heavy-lower-knee", Dose.FULL, 1, 0.7, null, SQUAD), Level.TRAINED))
                .as("of 4 sets at 70 %")
                .startsWith("[2x3");
        assertThat(Someone.work("heavy-lower-knee", Dose.FULL, 0.7, 0.7, null, SQUAD)
                        .share())
                .as("a week that the coach has cut is not cut twice")
                .isEqualTo(0.7);
    }

    /** Bosquet et al. 2007, MSSE 39:1358-1365: volume 41 to 60 % less over two weeks; 0.7 and 0.45 mean 42.5 %. */
    @Test
    void two_weeks_of_taper() {
        List<Fixture> meet = List.of(fixture(14));

        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 13))).isEqualTo(1);
        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 14))).isEqualTo(0.7);
        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 20))).isEqualTo(0.7);
        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 21))).isEqualTo(0.45);
        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 27))).isEqualTo(0.45);
        assertThat(Taper.share(meet, SQUAD, LocalDate.of(2027, 2, 28))).isEqualTo(1);
        assertThat(100 * (1 - (Taper.FIRST_HALF + Taper.SECOND_HALF) / 2)).isBetween(41.0, 60.0);
    }

    private static Fixture fixture(Integer taperDays) {
        return new Fixture(
                "meet",
                "Meet",
                List.of("squad"),
                "meet-sprint",
                Moment.parse("2027-02-28T12:00"),
                60,
                null,
                FixtureWeight.KEY,
                null,
                taperDays,
                List.of(),
                List.of());
    }

    @Test
    void without_a_taper_nothing_is_taken_away() {
        assertThat(Taper.share(List.of(fixture(null)), SQUAD, LocalDate.of(2027, 2, 27)))
                .isEqualTo(1);
    }

    /** Bands: Haugen et al. 2019, Sports Med Open 5:44, Table 2, and expert proposal. */
    @ParameterizedTest
    @CsvSource({
        "max-velocity, FIELD, IN_SEASON, NOVICE, 40, 80", "max-velocity, FIELD, IN_SEASON, TRAINED, 40, 120",
        "max-velocity, FIELD, OFF_SEASON, TRAINED, 60, 150", "max-velocity, SPRINT, PRE_SEASON, ADVANCED, 50, 150",
        "acceleration, FIELD, IN_SEASON, NOVICE, 60, 150", "acceleration, FIELD, IN_SEASON, TRAINED, 80, 200",
        "acceleration, SPRINT, PRE_SEASON, ADVANCED, 100, 300"
    })
    void fast_metres_lie_inside_the_band_at_full_dose_and_never_pass_it(
            String family, GroupKind kind, Phase phase, Level level, int least, int most) {
        Group group = Someone.group(kind, phase, level);

        assertThat(Someone.work(family, Dose.FULL, 1, 1, null, group).fastMetres(level))
                .isBetween((double) least, (double) most);
        assertThat(Someone.work(family, Dose.FULL, 2, 1, null, group).fastMetres(level))
                .as("in a week of twice as much")
                .isLessThanOrEqualTo(most);
    }

    private static Aim aim(String family, Integer minutes, Metres metres) {
        return new Aim(
                family,
                null,
                new PerWeek(1, 1, 1),
                Priority.KEY,
                List.of(),
                null,
                false,
                false,
                false,
                List.of(),
                minutes,
                metres);
    }

    @Test
    void metres_that_an_aim_gives_go_before_the_band() {
        Aim aim = aim("max-velocity", null, new Metres(200, 400));

        assertThat(Someone.work("max-velocity", Dose.FULL, 1, 1, aim, SQUAD).fastMetres(Level.TRAINED))
                .isEqualTo(200);
    }

    /** NSCA: 80 to 100 contacts for novices (seen in a secondary page), 100 to 120, 120 to 140 (from memory). */
    @ParameterizedTest
    @CsvSource({"NOVICE, 80, 100", "TRAINED, 100, 120", "ADVANCED, 120, 140"})
    void contacts_go_by_level(Level level, int least, int most) {
        assertThat(Someone.work("extensive-plyometrics", Dose.FULL).contacts(level))
                .isBetween(least, most);
        assertThat(Someone.work("intensive-plyometrics", Dose.FULL).contacts(level))
                .as("hard contacts are fewer")
                .isLessThan(least);
        assertThat(Someone.work("intensive-plyometrics", Dose.FULL).contacts(level))
                .isPositive();
    }

    @Test
    void where_there_is_no_bar_there_are_no_lifts() {
        Work primer = Someone.work("primer", Dose.FULL);
        Work onGrass = new Work(primer.family(), primer.group(), Dose.FULL, 1, null, null, primer.settings(), 1, false);

        assertThat(primer.lines(Level.TRAINED)).anyMatch(line -> line.kind() == ContentKind.LIFT);
        assertThat(onGrass.lines(Level.TRAINED)).noneMatch(line -> line.kind() == ContentKind.LIFT);
        assertThat(onGrass.lines(Level.TRAINED)).anyMatch(line -> line.kind() == ContentKind.JUMP);
    }

    /** Thurlow et al. 2024, Sports Med 54:953-974: 3 sets of 6 × 30 m; twice a week 1080 m. */
    @Test
    void repeated_sprints_twice_a_week() {
        Content line = Someone.work("repeated-sprint", Dose.FULL).lines(Level.TRAINED).stream()
                .filter(one -> one.kind() == ContentKind.SPRINT)
                .findFirst()
                .orElseThrow();

        assertThat(2 * line.count() * line.metres()).isEqualTo(1080);
    }

    /** World Rugby and players' guidance of 2021: full contact at most 15 min a week (secondary pages). */
    @Test
    void a_contact_practice_alone_keeps_the_week_s_minutes() {
        Content contact = Someone.work("contact-practice", Dose.FULL).lines(Level.TRAINED).stream()
                .filter(one -> one.seconds() != null)
                .findFirst()
                .orElseThrow();

        assertThat(contact.sets() * contact.seconds() / 60.0).isLessThanOrEqualTo(15);
    }

    static Stream<Family> families() {
        return Catalogue.builtIn().families().stream().filter(family -> family.role() != Role.FIXTURE);
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_family_says_what_is_done_and_where_that_comes_from(Family family) {
        assertThat(family.content()).isNotEmpty();
        assertThat(family.content())
                .allSatisfy(line -> assertThat(line.source()).isNotBlank());
        for (GroupKind kind : GroupKind.values()) {
            for (Phase phase : Phase.values()) {
                for (Level level : Level.values()) {
                    Work work = new Work(
                            family,
                            Someone.group(kind, phase, level),
                            Dose.FULL,
                            1,
                            null,
                            null,
                            Someone.work("primer", Dose.FULL).settings(),
                            1,
                            true);
                    assertThat(work.lines(level))
                            .as("%s for %s %s %s", family.id(), kind, phase, level)
                            .anyMatch(line -> line.kind() != ContentKind.WARM_UP || family.minutes() == 0);
                }
            }
        }
    }

    /** NSCA Essentials (textbook, from memory): strength 85 % and more, at most 6 repetitions; here 80 to 90 %, 2 to 5. */
    @ParameterizedTest
    @CsvSource({"heavy-lower-knee", "heavy-lower-hip", "heavy-upper-push", "heavy-upper-pull"})
    void heavy_lifts_are_two_to_five_at_80_to_90_per_cent_with_some_in_reserve(String family) {
        assertThat(Catalogue.builtIn().family(family).content().stream()
                        .filter(line -> line.kind() == ContentKind.LIFT && line.percentFrom() != null))
                .isNotEmpty()
                .allSatisfy(line -> {
                    assertThat(line.repetitions()).isBetween(2, 5);
                    assertThat(line.percentFrom()).isGreaterThanOrEqualTo(80);
                    assertThat(line.percentTo()).isLessThanOrEqualTo(90);
                    assertThat(line.inReserve()).isPositive();
                });
    }

    /** So many are possible at that share (NSCA load chart, seen in a copy): nobody is asked for more than that. */
    @Test
    void no_set_asks_for_more_repetitions_than_the_chart_has_for_its_weight() {
        Catalogue.builtIn().families().stream()
                .flatMap(family -> family.content().stream())
                .filter(line -> line.kind() == ContentKind.LIFT && line.percentTo() != null)
                .forEach(line -> assertThat(RepMax.chartPercent(line.repetitions()))
                        .as("%s × %s at %s %%", line.label(), line.repetitions(), line.percentTo())
                        .isGreaterThanOrEqualTo(line.percentTo().intValue()));
    }

    private static Work of(Family family, String variant, Aim aim) {
        return new Work(
                family,
                SQUAD,
                Dose.FULL,
                1,
                aim,
                variant,
                Someone.work("primer", Dose.FULL).settings(),
                1,
                true);
    }

    private static Family squats(List<Variant> variants) {
        Family usual = Catalogue.builtIn().family("heavy-lower-knee");
        return new Family(
                usual.id(),
                usual.label(),
                usual.role(),
                usual.demand(),
                usual.rpe(),
                usual.minutes(),
                usual.warmUpMinutes(),
                usual.facility(),
                usual.straightMetres(),
                usual.pathways(),
                usual.againHours(),
                usual.crossHours(),
                usual.beforeFixtureHours(),
                usual.beforeFixtureMicroHours(),
                usual.afterHours(),
                usual.order(),
                variants,
                usual.content(),
                usual.note(),
                usual.source());
    }

    @Test
    void the_lift_of_the_day_is_the_one_that_is_placed_else_the_one_that_is_tested_else_the_first() {
        Variant box = new Variant("box-squat", "Box squat", false);
        Variant back = new Variant("back-squat", "Back squat", true);

        assertThat(of(squats(List.of(back, box)), "box-squat", null).done()).isEqualTo(box);
        assertThat(of(squats(List.of(box, back)), null, null).done()).isEqualTo(back);
        assertThat(of(squats(List.of(box)), null, null).done()).isEqualTo(box);
        assertThat(of(squats(List.of()), null, null).done()).isNull();
    }

    @Test
    void a_line_s_own_lift_goes_before_that_of_the_day_and_what_is_no_lift_has_none() {
        Work work = of(Catalogue.builtIn().family("heavy-lower-knee"), "box-squat", null);

        assertThat(work.lines(Level.TRAINED))
                .filteredOn(line -> line.kind() == ContentKind.LIFT && line.lift() == null)
                .isNotEmpty()
                .allSatisfy(line -> assertThat(work.lift(line)).isEqualTo("box-squat"));
        assertThat(work.lines(Level.TRAINED))
                .filteredOn(line -> line.kind() != ContentKind.LIFT && line.lift() == null)
                .isNotEmpty()
                .allSatisfy(line -> assertThat(work.lift(line)).isNull());
        Work upper = Someone.work("upper-strength", Dose.FULL);
        assertThat(upper.lines(Level.TRAINED))
                .filteredOn(line -> line.lift() != null)
                .allSatisfy(line -> assertThat(upper.lift(line)).isEqualTo(line.lift()));
    }

    /** Two thirds of a dose, in a week of 90 per cent, of an aim of half the minutes: 0.3. */
    @Test
    void dose_week_and_minutes_of_the_aim_are_multiplied() {
        int minutes = Catalogue.builtIn().family("heavy-lower-knee").minutes();
        Aim half = aim("heavy-lower-knee", minutes / 2, null);

        assertThat(Someone.work("heavy-lower-knee", Dose.REDUCED, 0.9, 1, half, SQUAD)
                        .share())
                .isCloseTo(2 / 3.0 * 0.9 * (minutes / 2) / minutes, within(1e-12));
        assertThat(Someone.work("heavy-lower-knee", Dose.REDUCED, 0.9, 1, null, SQUAD)
                        .share())
                .isCloseTo(0.6, within(1e-12));
    }

    @Test
    void only_jumps_are_contacts() {
        Work primer = Someone.work("primer", Dose.FULL);

        assertThat(primer.lines(Level.TRAINED))
                .anyMatch(line -> line.kind() != ContentKind.JUMP && line.repetitions() != null);
        assertThat(primer.contacts(Level.TRAINED))
                .isEqualTo(primer.lines(Level.TRAINED).stream()
                        .filter(line -> line.kind() == ContentKind.JUMP)
                        .mapToInt(line -> line.sets() * line.repetitions())
                        .sum());
    }

    @Test
    void somebody_else_s_meet_tapers_nothing() {
        Group others = Someone.group("others");

        assertThat(Taper.share(List.of(fixture(14)), others, LocalDate.of(2027, 2, 27)))
                .isEqualTo(1);
    }

    /** Haugen et al. 2019, Sports Med Open 5:44, Table 2, and expert proposal: who returns trains as in season. */
    @ParameterizedTest
    @CsvSource({
        "max-velocity, RETURN, 40, 120",
        "max-velocity, IN_SEASON, 40, 120",
        "max-velocity, OFF_SEASON, 60, 150",
        "acceleration, RETURN, 80, 200",
        "acceleration, OFF_SEASON, 100, 300"
    })
    void bands_by_phase(String family, Phase phase, int least, int most) {
        Group group = Someone.group(GroupKind.FIELD, phase, Level.TRAINED);

        assertThat(SprintBand.of(
                        Catalogue.builtIn().family(family),
                        group,
                        Level.TRAINED,
                        Someone.work("primer", Dose.FULL).settings()))
                .isEqualTo(new SprintBand(least, most));
    }
}
