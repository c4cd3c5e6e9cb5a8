package weekwright.model.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules as data: which there are, and that each says all that is said of it anywhere. */
class RulebookTest {
    private static final List<String> MUST = List.of(
            "one-place-at-a-time",
            "inside-window",
            "facility-open",
            "facility-room",
            "facility-fits",
            "lead-free",
            "visits-per-day",
            "night-rest",
            "pathway-gap-floor",
            "high-block-floor",
            "before-fixture",
            "after-fixture",
            "primer-end",
            "four-high-days",
            "free-day",
            "aim-most",
            "high-days-most",
            "quorum",
            "pins");
    private static final List<String> KEY = List.of("aim-least", "high-days-least");
    private static final List<String> WANT = List.of(
            "pathway-gap",
            "high-block-gap",
            "before-fixture-margin",
            "after-fixture-margin",
            "day-before-light",
            "load-falls-to-fixture",
            "free-day-place",
            "six-days-running",
            "aim-target",
            "dose-kept",
            "high-days-target",
            "no-middle-day",
            "three-high-days",
            "night-rest-margin",
            "primer-window",
            "freshest-first",
            "strength-endurance-apart",
            "even-spread",
            "speed-exposure",
            "sprint-metres",
            "return-dose",
            "pathway-neglected",
            "maximum-repeated",
            "variant-churn",
            "learner-frequency",
            "top-up",
            "travel-day-light",
            "attendance",
            "preferred-time",
            "preferred-facility",
            "same-lead",
            "short-wait",
            "visit-size",
            "keep-plan",
            "taper");
    private static final List<String> TOLD =
            List.of("week-load", "load-spread", "load-ratio", "fixtures-close", "sits-out", "marks-old", "softened");
    private static final List<String> PACKS =
            List.of("college-in-season", "college-out-of-season", "youth", "rest-between-fixtures");
    private static final Set<String> COSTED_BY_HOURS = Set.of(
            "night-rest", "pathway-gap-floor", "high-block-floor", "before-fixture", "after-fixture", "primer-end");
    private static final Set<String> NOT_YET_JUDGED = Set.of(
            "quorum",
            "pins",
            "six-days-running",
            "night-rest-margin",
            "primer-window",
            "strength-endurance-apart",
            "even-spread",
            "sprint-metres",
            "return-dose",
            "pathway-neglected",
            "maximum-repeated",
            "variant-churn",
            "learner-frequency",
            "top-up",
            "travel-day-light",
            "attendance",
            "same-lead",
            "short-wait",
            "visit-size",
            "taper");

    private final Rulebook rulebook = Rulebook.builtIn();

    static List<Rule> rules() {
        return Rulebook.builtIn().rules();
    }

    private List<String> idsAt(RuleLevel level) {
        return rules().stream()
                .filter(rule -> rule.level() == level)
                .map(Rule::id)
                .toList();
    }

    @Test
    void all_rules_are_there_must_above_key_above_want() {
        assertThat(rules())
                .extracting(Rule::id)
                .containsExactlyElementsOf(Stream.of(MUST, KEY, WANT, TOLD, PACKS)
                        .flatMap(List::stream)
                        .toList());
        assertThat(idsAt(RuleLevel.MUST)).isEqualTo(MUST);
        assertThat(idsAt(RuleLevel.KEY)).isEqualTo(KEY);
        assertThat(idsAt(RuleLevel.WANT)).isEqualTo(WANT);
        assertThat(idsAt(RuleLevel.TOLD)).isEqualTo(TOLD);
        assertThat(idsAt(RuleLevel.OFF)).isEqualTo(PACKS);
    }

    @Test
    void what_is_not_yet_judged_says_so() {
        assertThat(rules())
                .allSatisfy(rule -> assertThat(rule.judged())
                        .as(rule.id())
                        .isEqualTo(!NOT_YET_JUDGED.contains(rule.id())
                                && !TOLD.contains(rule.id())
                                && !PACKS.contains(rule.id())));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_says_all_in_words_that_a_coach_reads(Rule rule) {
        assertThat(rule.theme())
                .isIn(
                        "place-and-time",
                        "recovery",
                        "fixtures",
                        "week-shape",
                        "aims",
                        "load",
                        "learning",
                        "preferences",
                        "packs");
        assertThat(rule.title()).matches("[A-Z].{3,44}[^.]");
        assertThat(rule.sentence()).matches("[A-Z][^.]+\\.");
        assertThat(List.of(rule.unit(), rule.cost(), rule.source()))
                .allSatisfy(text -> assertThat(text).isNotBlank());
        assertThat(rule.title() + rule.sentence() + rule.cost())
                .doesNotContainIgnoringCase("cohort", "stimulus", "slot", "constraint", "pathway");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void each_number_has_a_meaning_a_unit_a_source_and_a_usual_value_inside_its_range(Rule rule) {
        assertThat(rule.numbers()).extracting(RuleNumber::name).doesNotHaveDuplicates();
        assertThat(rule.numbers()).allSatisfy(number -> {
            assertThat(number.name()).matches("[a-z][A-Za-z]+").isNotIn("level", "weight");
            assertThat(List.of(number.meaning(), number.unit(), number.source()))
                    .allSatisfy(text -> assertThat(text).isNotBlank());
            assertThat(number.least()).isLessThan(number.most());
            if (number.keyed() == null) {
                assertThat(number.usual()).isBetween(number.least(), number.most());
            } else {
                assertThat(number.keyed()).isEqualTo("pathway");
                assertThat(number.usual()).isNull();
            }
        });
    }

    @Test
    void sources_are_published_with_a_year_or_plainly_called_proposal_practice_or_memory() {
        Stream<String> sources = rules().stream()
                .flatMap(rule -> Stream.concat(
                        Stream.of(rule.source()), rule.numbers().stream().map(RuleNumber::source)));
        assertThat(sources)
                .allSatisfy(source -> assertThat(source)
                        .matches(".*(expert proposal|common practice, no source|from memory|secondary pages"
                                + "|(19|20)\\d\\d).*")
                        .doesNotContain("[", "ection "));
    }

    /** A price where a coach makes a must into a want: expert proposal. */
    @Test
    void every_must_has_a_price_in_points_or_by_the_hour() {
        assertThat(rules())
                .filteredOn(rule -> rule.level() == RuleLevel.MUST && !rule.id().equals("pins"))
                .allSatisfy(rule -> {
                    if (COSTED_BY_HOURS.contains(rule.id())) {
                        assertThat(usual(rule, "pointsAnHour")).isEqualTo(1);
                        assertThat(usual(rule, "beyondHours")).isEqualTo(12);
                        assertThat(usual(rule, "pointsAnHourBeyond")).isEqualTo(2);
                    } else {
                        assertThat(usual(rule, "points")).isEqualTo(24);
                    }
                });
    }

    private static double usual(Rule rule, String name) {
        return rule.number(name).orElseThrow().usual();
    }

    /** Numbers of the tables of rules; expert proposal unless the rulebook names another source. */
    @ParameterizedTest
    @CsvSource({
        "visits-per-day, visits, 2",
        "visits-per-day, joinedMinutes, 30",
        "night-rest, hours, 8",
        "after-fixture, partLessHours, 16",
        "primer-end, hours, 3",
        "four-high-days, days, 4",
        "free-day, days, 1",
        "free-day, travelMinutes, 120",
        "pathway-gap, sprintStrengthHours, 48",
        "pathway-gap, toleranceHours, 4",
        "pathway-gap, pointsAnHour, 1",
        "pathway-gap, beyondHours, 12",
        "pathway-gap, pointsAnHourBeyond, 2",
        "high-block-gap, fixtureWeekHours, 24",
        "high-block-gap, otherWeekHours, 48",
        "high-block-gap, toleranceHours, 4",
        "before-fixture-margin, toleranceHours, 4",
        "before-fixture-margin, keyFactor, 1.5",
        "before-fixture-margin, minorFactor, 0.5",
        "after-fixture-margin, toleranceHours, 4",
        "after-fixture-margin, partLessHours, 24",
        "day-before-light, points, 24",
        "load-falls-to-fixture, points, 8",
        "load-falls-to-fixture, lastDayThirds, 2",
        "free-day-place, firstDayPoints, 4",
        "free-day-place, elsewherePoints, 12",
        "six-days-running, days, 6",
        "six-days-running, points, 12",
        "aim-target, keyPoints, 16",
        "aim-target, mainPoints, 12",
        "aim-target, sparePoints, 4",
        "dose-kept, reducedShare, 0.25",
        "dose-kept, microShare, 0.5",
        "dose-kept, waivedDays, 5",
        "high-days-target, shortPoints, 12",
        "high-days-target, overPoints, 24",
        "no-middle-day, points, 10",
        "no-middle-day, sprintOrOffSeasonFactor, 2",
        "three-high-days, days, 3",
        "three-high-days, points, 24",
        "night-rest-margin, hours, 10",
        "night-rest-margin, pointsAnHour, 3",
        "primer-window, fromHours, 4",
        "primer-window, toHours, 33",
        "primer-window, points, 12",
        "freshest-first, points, 8",
        "freshest-first, newSkillPoints, 16",
        "freshest-first, tiringFromOrder, 3",
        "strength-endurance-apart, hours, 3",
        "strength-endurance-apart, powerHours, 6",
        "strength-endurance-apart, pointsAnHour, 2",
        "even-spread, pointsAnHour, 0.25",
        "speed-exposure, days, 7",
        "speed-exposure, warningDays, 10",
        "speed-exposure, sharePercent, 95",
        "speed-exposure, pointsADay, 6",
        "speed-exposure, mostPoints, 36",
        "sprint-metres, noviceLeast, 40",
        "sprint-metres, noviceMost, 80",
        "sprint-metres, inSeasonLeast, 40",
        "sprint-metres, inSeasonMost, 120",
        "sprint-metres, offSeasonLeast, 60",
        "sprint-metres, offSeasonMost, 150",
        "sprint-metres, sprintLeast, 50",
        "sprint-metres, sprintMost, 150",
        "sprint-metres, allLeast, 240",
        "sprint-metres, allMost, 420",
        "sprint-metres, allMostLong, 800",
        "sprint-metres, longMinutes, 75",
        "sprint-metres, metresAMinute, 10",
        "sprint-metres, fastMetresAMinute, 3",
        "sprint-metres, pointsPerTenMetres, 1",
        "return-dose, days, 14",
        "return-dose, share, 0.5",
        "return-dose, points, 12",
        "pathway-neglected, days, 10",
        "pathway-neglected, pointsADay, 2",
        "maximum-repeated, advancedWeeks, 3",
        "maximum-repeated, trainedWeeks, 6",
        "maximum-repeated, points, 10",
        "variant-churn, exposures, 2",
        "variant-churn, advancedExposures, 1",
        "variant-churn, testedWeeks, 4",
        "variant-churn, points, 6",
        "variant-churn, testedPoints, 8",
        "learner-frequency, least, 2",
        "learner-frequency, most, 4",
        "learner-frequency, points, 10",
        "learner-frequency, freshPoints, 8",
        "top-up, days, 1",
        "top-up, points, 16",
        "travel-day-light, travelMinutes, 120",
        "travel-day-light, points, 8",
        "attendance, points, 6",
        "preferred-time, points, 2",
        "preferred-facility, points, 2",
        "same-lead, points, 1",
        "short-wait, pointsAnHour, 1",
        "visit-size, sessions, 3",
        "visit-size, minutes, 210",
        "visit-size, youthMinutes, 120",
        "visit-size, points, 8",
        "keep-plan, draftPoints, 2",
        "keep-plan, dayPoints, 24",
        "keep-plan, hourPoints, 8",
        "keep-plan, placePoints, 3",
        "keep-plan, soonHours, 48",
        "keep-plan, soonFactor, 2",
        "taper, leastPercent, 41",
        "taper, mostPercent, 60",
        "taper, weeks, 2",
        "taper, pointsAPercent, 1",
        "week-load, notedPercent, 10",
        "week-load, askedPercent, 15",
        "load-spread, monotony, 2",
        "load-ratio, shortDays, 7",
        "load-ratio, longDays, 28",
        "fixtures-close, closeHours, 120",
        "fixtures-close, veryCloseHours, 72",
        "college-in-season, weekHours, 20",
        "college-in-season, dayHours, 4",
        "college-in-season, daysOff, 1",
        "college-in-season, competitionHours, 3",
        "college-out-of-season, weekHours, 8",
        "college-out-of-season, daysOff, 2",
        "youth, hoursAYear, 1",
        "youth, daysOff, 2",
        "rest-between-fixtures, hours, 72",
        "rest-between-fixtures, preferredHours, 120"
    })
    void a_number_has_its_agreed_usual_value(String rule, String name, double value) {
        assertThat(usual(rulebook.rule(rule), name)).isEqualTo(value);
    }

    @Test
    void a_misspelt_rule_is_answered_with_the_nearest() {
        assertThat(rulebook.find("pathway-gap")).isPresent();
        assertThat(rulebook.find("pathway-gaps")).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rulebook.rule("pathway-gaps"))
                .withMessage("no rule is called \"pathway-gaps\": did you mean pathway-gap?");
    }
}
