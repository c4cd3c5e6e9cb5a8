package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;

/** Rules in words, changed within their range. */
class RuleTest extends OneWeek {
    RuleTest() {
        super("two-groups", "/w/w/rules/");
    }

    @Test
    void every_rule_stands_in_words_with_its_cost_its_numbers_and_its_source() {
        String page = browser.get("/w/w/rules").body();

        for (Rule rule : Rulebook.builtIn().rules()) {
            assertThat(Jsoup.parse(page).text()).as(rule.id()).contains(rule.title(), rule.sentence(), rule.cost());
        }
    }

    /** Where there is one group, too: the page of the rules for all knows nothing of what a group has changed. */
    @Test
    void from_the_plan_a_coach_comes_to_where_a_rule_was_changed() throws Exception {
        String group = scenario().groups().get(0).id();

        send(group + "/no-middle-day", "level", "off", "weight", "", "points", "", "do", "save");

        Document plan = Jsoup.parse(browser.get("/w/w").body());
        Element link = plan.selectFirst("details[open] a[href*=rules]");
        assertThat(link.parent().text())
                .endsWith(": off instead of a wish")
                .contains(scenario().groups().get(0).label());
        assertThat(link.attr("href")).isEqualTo("/w/w/rules?of=" + group + "#rule-no-middle-day");
        Document rules = Jsoup.parse(browser.get("/w/w/rules?of=" + group).body());
        assertThat(rules.selectFirst("#rule-no-middle-day").text()).contains("Changed here: off instead of a wish");
        assertThat(rules.selectFirst("section[aria-labelledby=changed] a").attr("href"))
                .isEqualTo("#rule-no-middle-day");
        assertThat(Jsoup.parse(browser.get("/w/w/rules").body()).text()).contains(": 1 changed");
    }

    @Test
    void a_rule_that_is_softened_is_named_on_its_page_and_beside_the_plan() throws Exception {
        String title = Rulebook.builtIn().rule("no-middle-day").title();

        assertThat(send("all/no-middle-day", "level", "", "weight", "0,5", "points", "", "do", "save")
                        .statusCode())
                .isEqualTo(303);

        assertThat(scenario().rules().get("no-middle-day").weight()).isEqualTo(0.5);
        assertThat(browser.get("/w/w/rules").body()).contains("Changed here: weight 0.5");
        assertThat(Jsoup.parse(browser.get("/w/w").body()).text())
                .contains("Rules changed here 1 " + title + ": weight 0.5");
        assertThat(browser.get("/w/w").body()).contains("href=\"/w/w/rules#rule-no-middle-day\"");
        assertThat(browser.get("/w/w/rules").body()).contains("id=\"rule-no-middle-day\"");

        send("all/no-middle-day", "do", "delete");
        assertThat(scenario().rules()).doesNotContainKey("no-middle-day");
    }

    @Test
    void a_rule_is_changed_for_one_group_and_by_quality() throws Exception {
        String group = scenario().groups().get(0).id();

        assertThat(send(group + "/pathway-gap", "hours.max-velocity-sprint", "60", "level", "told", "do", "save")
                        .statusCode())
                .isEqualTo(303);

        assertThat(scenario().groups().get(0).rules().get("pathway-gap").numbers())
                .containsKey("hours");
        assertThat(browser.get("/w/w/rules?of=" + group).body()).contains("numbers of your own");
        assertThat(browser.get("/w/w").body())
                .as("changed for one group: the way leads to its rules")
                .contains("href=\"/w/w/rules?of=" + group + "#rule-pathway-gap\"");
        assertThat(scenario().rules()).doesNotContainKey("pathway-gap");
    }

    @Test
    void what_is_out_of_range_is_said_beside_its_number() throws Exception {
        HttpResponse<String> answer =
                send("all/three-high-days", "days", "40", "weight", "much", "level", "huge", "do", "save");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("\"much\" is text, not a number", "\"huge\" is no level");
        HttpResponse<String> range = send("all/three-high-days/check", "days", "40");
        assertThat(Jsoup.parse(range.body()).getElementById("f-days-fault").text())
                .contains("40");
        assertThat(scenario().rules()).doesNotContainKey("three-high-days");
    }

    @Test
    void the_words_of_the_page_are_explained_with_the_figures_in_force() {
        assertThat(Jsoup.parse(browser.get("/w/w/words").body()).text())
                .contains("A high day asks 6.5 points or more, a low day up to 5.5.", "MD−2", "micro (one third)")
                .contains("clinicians, local rules and licensed practice come first");
    }

    @Test
    void what_is_not_there_is_said() {
        assertThat(browser.get("/w/w/rules/all/no-such-rule").statusCode()).isEqualTo(404);
        assertThat(browser.get("/w/w/rules/nobody/quorum").statusCode()).isEqualTo(404);
        assertThat(browser.get("/w/w/rules?of=nobody").statusCode()).isEqualTo(404);
    }
}
