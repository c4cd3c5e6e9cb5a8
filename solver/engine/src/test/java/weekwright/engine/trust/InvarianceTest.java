package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** Names, the order of lists and the date of a week are nothing to the rules. */
class InvarianceTest {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    static Stream<Scenario> scenarios() {
        return Stream.concat(
                Stream.of("one-match", "two-matches", "sprint-week", "clash", "two-groups", "four-evenings")
                        .map(Scenarios::read),
                Stream.of(4L, 5L).map(SquadGenerator::tiny));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void renaming_leaves_the_figures_equal(Scenario scenario) throws DocumentException {
        for (Plan plan : plans(scenario)) {
            Scenario renamed = renamed(scenario);
            Plan same = Documents.readPlan("p", bytes(rename(scenario, Documents.write(plan))), renamed);
            assertThat(totals(renamed, same)).isEqualTo(totals(scenario, plan));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void reordering_leaves_the_figures_equal(Scenario scenario) {
        for (Plan plan : plans(scenario)) {
            assertThat(totals(reversed(scenario), plan)).isEqualTo(totals(scenario, plan));
        }
    }

    /** Where one athlete is wanted in two places, the order of the groups decides, and is all that does. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void reordering_all_but_the_groups_leaves_the_figures_of_a_club_equal(long seed) {
        Scenario club = SquadGenerator.club(seed);
        Scenario reversed = reversed(club).withGroups(backwards(reversed(club).groups()));
        Plan plan = RandomPlans.randomPlan(club, new Random(seed));
        assertThat(totals(reversed, plan)).isEqualTo(totals(club, plan));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void shifting_by_a_week_leaves_the_figures_equal(Scenario scenario) throws DocumentException {
        for (Plan plan : plans(scenario)) {
            Scenario later = Documents.readScenario("s", bytes(shifted(Documents.write(scenario))));
            Plan same = Documents.readPlan("p", bytes(shifted(Documents.write(plan))), later);
            assertThat(totals(later, same)).isEqualTo(totals(scenario, plan));
        }
    }

    @Test
    void the_best_plan_of_a_small_week_is_as_good_under_other_names_orders_and_dates() throws DocumentException {
        for (long seed = 1; seed <= 4; seed++) {
            Scenario scenario = SquadGenerator.tiny(seed);
            Totals best = best(scenario);
            assertThat(best(renamed(scenario))).as("renamed, %d", seed).isEqualTo(best);
            assertThat(best(reversed(scenario))).as("reordered, %d", seed).isEqualTo(best);
            Scenario later = Documents.readScenario("s", bytes(shifted(Documents.write(scenario))));
            assertThat(best(later)).as("shifted, %d", seed).isEqualTo(best);
        }
    }

    private static Totals best(Scenario scenario) {
        Proposal proposal = new Proposal(scenario, null, Budget.moves(20_000), 1, 2, null);
        return Engine.propose(proposal, Progress.SILENT).plan().totals();
    }

    private static List<Plan> plans(Scenario scenario) {
        List<Plan> plans = new ArrayList<>();
        for (int seed = 1; seed <= 5; seed++) {
            plans.add(RandomPlans.randomPlan(scenario, new Random(seed)));
        }
        return plans;
    }

    private static Totals totals(Scenario scenario, Plan plan) {
        return Engine.judgeWithoutRemedies(scenario, plan).plan().totals();
    }

    private static Scenario renamed(Scenario scenario) throws DocumentException {
        return Documents.readScenario("s", bytes(rename(scenario, Documents.write(scenario))));
    }

    /** Puts other ids for groups, athletes, facilities, staff, fixtures and commitments, in another alphabetical order. */
    private static String rename(Scenario scenario, String text) {
        List<String> ids = new ArrayList<>();
        scenario.groups().forEach(group -> ids.add(group.id()));
        scenario.athletes().forEach(athlete -> ids.add(athlete.id()));
        scenario.facilities().forEach(facility -> ids.add(facility.id()));
        scenario.staff().forEach(member -> ids.add(member.id()));
        scenario.fixtures().forEach(fixture -> ids.add(fixture.id()));
        scenario.commitments().forEach(commitment -> ids.add(commitment.id()));
        // A facility called by its kind keeps its name: its kind is written the same way.
        ids.removeIf(id ->
                Stream.of(FacilityKind.values()).anyMatch(kind -> kind.id().equals(id)));
        String renamed = text;
        for (int i = 0; i < ids.size(); i++) {
            String other = (char) ('z' - i % 26) + "x" + i;
            renamed = renamed.replace("\"" + ids.get(i) + "\"", "\"" + other + "\"")
                    .replace("\"" + ids.get(i) + "/", "\"" + other + "/");
        }
        return renamed;
    }

    private static Scenario reversed(Scenario s) {
        List<Group> groups = s.groups().stream()
                .map(g -> new Group(
                        g.id(),
                        g.label(),
                        g.kind(),
                        g.phase(),
                        g.level(),
                        g.headcount(),
                        g.quorum(),
                        backwards(g.windows()),
                        g.away(),
                        g.highDays(),
                        backwards(g.aims()),
                        g.rules(),
                        g.packs()))
                .toList();
        return new Scenario(
                s.weekwright(),
                s.id(),
                s.title(),
                s.zone(),
                s.firstDay(),
                s.days(),
                s.gridMinutes(),
                backwards(groups),
                backwards(s.athletes()),
                backwards(s.fixtures()),
                backwards(s.commitments()),
                backwards(s.facilities()),
                backwards(s.transfers()),
                backwards(s.staff()),
                backwards(s.history()),
                s.catalogue(),
                s.rules(),
                s.packs());
    }

    private static <T> List<T> backwards(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.reverse(copy);
        return copy;
    }

    private static String shifted(String text) {
        Matcher matcher = DATE.matcher(text);
        return matcher.replaceAll(
                found -> LocalDate.parse(found.group()).plusWeeks(1).toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
