package weekwright.model.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

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

    /** Numbers of the tables of rules; expert proposal unless the rulebook names another source. */
    private static final String USUAL = """
            visits-per-day: visits 2.0, joinedMinutes 30.0
            night-rest: hours 8.0
            after-fixture: partLessHours 16.0
            primer-end: hours 3.0
            four-high-days: days 4.0
            free-day: days 1.0, travelMinutes 120.0
            pathway-gap: sprintStrengthHours 48.0, toleranceHours 4.0, pointsAnHour 1.0, beyondHours 12.0
            pathway-gap: pointsAnHourBeyond 2.0
            high-block-gap: fixtureWeekHours 24.0, otherWeekHours 48.0, toleranceHours 4.0
            high-block-gap: pointsAnHour 1.0, beyondHours 12.0, pointsAnHourBeyond 2.0
            before-fixture-margin: toleranceHours 4.0, keyFactor 1.5, minorFactor 0.5
            before-fixture-margin: pointsAnHour 1.0, beyondHours 12.0, pointsAnHourBeyond 2.0
            after-fixture-margin: toleranceHours 4.0, partLessHours 24.0
            after-fixture-margin: pointsAnHour 1.0, beyondHours 12.0, pointsAnHourBeyond 2.0
            day-before-light: points 24.0
            load-falls-to-fixture: points 8.0, lastDayThirds 2.0
            free-day-place: firstDayPoints 4.0, elsewherePoints 12.0
            six-days-running: days 6.0, points 12.0
            aim-target: keyPoints 16.0, mainPoints 12.0, sparePoints 4.0
            dose-kept: reducedShare 0.25, microShare 0.5, waivedDays 5.0
            high-days-target: shortPoints 12.0, overPoints 24.0
            no-middle-day: points 10.0, sprintOrOffSeasonFactor 2.0
            three-high-days: days 3.0, points 24.0
            night-rest-margin: hours 10.0, pointsAnHour 3.0
            primer-window: fromHours 4.0, toHours 33.0, points 12.0
            freshest-first: points 8.0, newSkillPoints 16.0, tiringFromOrder 3.0
            strength-endurance-apart: hours 3.0, powerHours 6.0, pointsAnHour 2.0
            even-spread: pointsAnHour 0.25
            speed-exposure: days 7.0, warningDays 10.0, sharePercent 95.0, pointsADay 6.0, mostPoints 36.0
            sprint-metres: noviceLeast 40.0, noviceMost 80.0, inSeasonLeast 40.0, inSeasonMost 120.0
            sprint-metres: offSeasonLeast 60.0, offSeasonMost 150.0, sprintLeast 50.0, sprintMost 150.0
            sprint-metres: allLeast 240.0, allMost 420.0, allMostLong 800.0, longMinutes 75.0
            sprint-metres: metresAMinute 10.0, fastMetresAMinute 3.0, pointsPerTenMetres 1.0
            return-dose: days 14.0, share 0.5, points 12.0
            pathway-neglected: days 10.0, pointsADay 2.0
            maximum-repeated: advancedWeeks 3.0, trainedWeeks 6.0, points 10.0
            variant-churn: exposures 2.0, advancedExposures 1.0, testedWeeks 4.0, points 6.0
            variant-churn: testedPoints 8.0
            learner-frequency: least 2.0, most 4.0, points 10.0, freshPoints 8.0
            top-up: days 1.0, points 16.0
            travel-day-light: travelMinutes 120.0, points 8.0
            attendance: points 6.0
            preferred-time: points 2.0
            preferred-facility: points 2.0
            same-lead: points 1.0
            short-wait: pointsAnHour 1.0
            visit-size: sessions 3.0, minutes 210.0, youthMinutes 120.0, points 8.0
            keep-plan: draftPoints 2.0, dayPoints 24.0, hourPoints 8.0, placePoints 3.0, soonHours 48.0
            keep-plan: soonFactor 2.0
            taper: leastPercent 41.0, mostPercent 60.0, weeks 2.0, pointsAPercent 1.0
            week-load: notedPercent 10.0, askedPercent 15.0
            load-spread: monotony 2.0
            load-ratio: shortDays 7.0, longDays 28.0
            marks-old: days 90.0
            fixtures-close: closeHours 120.0, veryCloseHours 72.0
            college-in-season: weekHours 20.0, dayHours 4.0, daysOff 1.0, competitionHours 3.0
            college-out-of-season: weekHours 8.0, daysOff 2.0
            youth: hoursAYear 1.0, daysOff 2.0
            rest-between-fixtures: hours 72.0, preferredHours 120.0
            """;

    private final Rulebook rulebook = Rulebook.builtIn();

    private static List<Rule> rules() {
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
    void every_rule_is_judged() {
        assertThat(Rulebook.builtIn().rules()).allMatch(Rule::judged);
    }

    @Test
    void a_rule_says_all_in_words_that_a_coach_reads() {
        assertThat(rules()).allSatisfy(RulebookTest::saysAll);
    }

    private static void saysAll(Rule rule) {
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

    @Test
    void each_number_has_a_meaning_a_unit_a_source_and_a_usual_value_inside_its_range() {
        assertThat(rules()).allSatisfy(RulebookTest::hasSoundNumbers);
    }

    private static void hasSoundNumbers(Rule rule) {
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

    @Test
    void a_number_has_its_agreed_usual_value() {
        assertThat(USUAL.lines()).allSatisfy(line -> {
            String[] parts = line.split(": |, ", -1);
            assertThat(parts).hasSizeGreaterThan(1);
            assertThat(rulebook.rule(parts[0]).numbers().stream().map(number -> number.name() + " " + number.usual()))
                    .containsAll(Stream.of(parts).skip(1).toList());
        });
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
