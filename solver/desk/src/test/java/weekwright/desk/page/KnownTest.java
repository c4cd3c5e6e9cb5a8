package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** What a coach knows and wants, changed in forms. */
class KnownTest extends OneWeek {
    private static final String HOSTILE = "<script>alert(1)</script>\"'& \u05e9\u05dc\u05d5\u05dd";

    KnownTest() {
        super("one-match", "/w/w/knowns/");
    }

    @Test
    void all_that_is_known_is_listed_with_a_way_to_change_it() {
        String page = browser.get("/w/w/knowns").body();

        assertThat(page).contains("League round 21, home", "Add a fixture", "/w/w/knowns/fixtures/new");
        assertThat(page).contains("Groups and what they train", "R. Tarrow", "Weights room");
    }

    @Test
    void a_fixture_with_its_travel_is_added_and_the_plan_is_judged_anew() throws Exception {
        HttpResponse<String> answer = send(
                "fixtures/new",
                "label",
                "Cup tie, away",
                "groups",
                scenario().groups().get(0).id(),
                "family",
                "fixture",
                "start",
                "2027-02-17T19:30",
                "minutes",
                "105",
                "weight",
                "minor",
                "travel.outMinutes",
                "75",
                "travel.backMinutes",
                "80",
                "do",
                "save");

        assertThat(answer.statusCode()).isEqualTo(303);
        Fixture added = scenario().fixtures().get(scenario().fixtures().size() - 1);
        assertThat(added.id()).isEqualTo("cup-tie-away");
        assertThat(added.label()).isEqualTo("Cup tie, away");
        assertThat(added.travel().backMinutes()).isEqualTo(80);
        assertThat(browser.get("/w/w/history").body()).contains("Cup tie, away added");
        assertThat(browser.get("/w/w/knowns").body())
                .as("fixtures are listed by their time")
                .containsSubsequence("League round 21, home", "Cup tie, away", "League round 22, away");
    }

    @Test
    void all_that_is_wrong_is_said_beside_its_field_in_the_words_of_the_files_and_nothing_is_lost() throws Exception {
        int before = scenario().fixtures().size();

        HttpResponse<String> answer = send(
                "fixtures/new",
                "label",
                "Cup <b>tie",
                "groups",
                "nobody",
                "start",
                "soon",
                "minutes",
                "0",
                "weight",
                "huge",
                "travel.outMinutes",
                "9.5",
                "do",
                "save");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"Cup &lt;b>tie\"")
                .contains("\"soon\" is no time. Give a local date and time of the scenario's zone")
                .contains("0 is too small. Give a whole number from 1 to 1440.")
                .contains("no group is called \"nobody\"")
                .contains("\"huge\" is no weight of a fixture. Give one of key, regular, minor.")
                .contains("9.5 is not a whole number. Give a whole number from 0 to 2880.");
        assertThat(scenario().fixtures()).hasSize(before);
    }

    @Test
    void what_is_missing_is_said_when_it_is_saved_and_not_while_it_is_typed() {
        HttpResponse<String> typing = send("fixtures/new/check", "label", "Cup", "minutes", "x");
        HttpResponse<String> saving = send("fixtures/new", "do", "save");
        assertThat(saving.body()).contains("name=\"label\" value=\"\"");

        assertThat(typing.body())
                .contains("hx-swap-oob", "\"x\" is text, not a whole number. Give a whole number from 1 to 1440.")
                .doesNotContain("This is missing", "<form");
        assertThat(saving.statusCode()).isEqualTo(422);
        assertThat(saving.body())
                .contains("This is missing. Give a line of text, such as \"Match squad\".")
                .contains("This is missing. Give a whole number from 1 to 1440.")
                .contains("Nothing is chosen: choose one or more.");
    }

    @Test
    void a_mark_that_is_half_typed_is_faulted_where_it_is_wrong_and_nowhere_else() {
        String[] mark = {"marks[0]", "row", "marks[0].measure", "lift", "marks[0].kg", "heavy"};
        String typing = send("athletes/new/check", mark).body();
        assertThat(typing.split("\"heavy\" is text, not a number", -1)).hasSize(2);
        assertThat(typing).contains("One thing is to be mended.").doesNotContain("needs lift, kg");

        assertThat(send("athletes/new", mark).body())
                .as("once it is saved, what is missing is said of each field in its own words")
                .contains("This is missing. Give a whole number")
                .doesNotContain("needs lift, kg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "week/1 | days | 700 | 700 is too large. Give a whole number from 1 to 84.",
                "week/1 | zone | Atlantis | Atlantis",
                "fixtures/new | minutes | long | is text, not a whole number",
                "commitments/new | lends.minutes | 900 | 900 is too large. Give a whole number from 1 to 240.",
                "groups/new | quorum | 2 | 2 is too large",
                "groups/new | windows[0].from | 9:00 | Did you mean \"09:00\"?",
                "groups/new | aims[0].perWeek.most | 20 | 20 is too large. Give a whole number from 0 to 14.",
                "groups/new | aims[0].weeks | 1.0 nine | \"nine\" is text, not a number",
                "athletes/new | marks[0].kg | 5000 | 5000 is too large",
                "athletes/new | restrictions[0].from | 2027-02-30 | That month ends on 2027-02-28.",
                "facilities/new | straightMetres | -5 | -5 is too small. Give a whole number from 1 to 1000.",
                "facilities/new | closed[0].to | 2027-02-08 | 2027-02-08",
                "transfers/new | minutes | 700 | 700 is too large. Give a whole number from 0 to 600.",
                "staff/new | atOnce | 99 | 99 is too large. Give a whole number from 1 to 20."
            })
    void wrong_input_of_every_form_is_answered(String form, String field, String value, String said) {
        List<String> fields = new ArrayList<>(List.of(field, value, "do", "save"));
        if (field.contains("[0]")) {
            fields.addAll(List.of(field.replaceFirst("\\].*", "]"), "row"));
        }
        if (field.startsWith("marks")) {
            fields.addAll(List.of("marks[0].measure", "lift"));
        }

        HttpResponse<String> answer = send(form, fields.toArray(String[]::new));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(said);
    }

    @Test
    void rows_are_added_and_taken_out_without_saving() throws Exception {
        String group = scenario().groups().get(0).id();
        int aims = scenario().groups().get(0).aims().size();

        String page = send("groups/" + group, "aims[0]", "row", "aims[0].family", "tempo-run", "do", "add:aims")
                .body();

        assertThat(page).contains("name=\"aims[1].family\"", "autofocus").doesNotContain("aims[2]");
        assertThat(send("groups/" + group, "aims[0]", "row", "aims[1]", "row", "do", "remove:aims[0]")
                        .body())
                .contains("name=\"aims[0].family\"")
                .doesNotContain("aims[1]");
        assertThat(scenario().groups().get(0).aims()).hasSize(aims);
    }

    @Test
    void what_no_form_shows_stays_as_it_was() throws Exception {
        Scenario before = scenario();
        Group group = before.groups().get(0);
        String page = browser.get("/w/w/knowns/groups/" + group.id()).body();

        HttpResponse<String> answer =
                browser.post("/w/w/knowns/groups/" + group.id(), filled(page, "label", "Harbour first"));

        assertThat(answer.statusCode()).isEqualTo(303);
        Group after = scenario().groups().get(0);
        assertThat(after.label()).isEqualTo("Harbour first");
        assertThat(after.rules()).isEqualTo(group.rules());
        assertThat(after.aims()).isEqualTo(group.aims());
        assertThat(after.windows()).isEqualTo(group.windows());
        assertThat(scenario().athletes()).isEqualTo(before.athletes());
    }

    @Test
    void sending_every_form_back_as_it_is_changes_nothing() throws Exception {
        Scenario before = scenario();
        for (String list : List.of("fixtures", "commitments", "groups", "athletes", "facilities", "staff")) {
            String lists = browser.get("/w/w/knowns").body();
            for (String address : addresses(lists, list)) {
                String page = browser.get(address).body();
                assertThat(browser.post(address, filled(page, "", "")).statusCode())
                        .as(address)
                        .isEqualTo(303);
                assertThat(scenario()).as(address).isEqualTo(before);
            }
        }
        String week = browser.get("/w/w/knowns/week/1").body();
        browser.post("/w/w/knowns/week/1", filled(week, "", ""));
        assertThat(scenario()).isEqualTo(before);
    }

    private static List<String> addresses(String page, String list) {
        return java.util.regex.Pattern.compile("href=\"(/w/w/knowns/" + list + "/[^\"]+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .filter(address -> !address.endsWith("/new"))
                .toList();
    }

    /** The fields of a form as a browser would send them, one of them changed. */
    private static String[] filled(String page, String name, String value) {
        List<String> fields = new ArrayList<>();
        org.jsoup.nodes.Document document = org.jsoup.Jsoup.parse(page);
        org.jsoup.nodes.FormElement form = (org.jsoup.nodes.FormElement) document.getElementById("form");
        form.formData()
                .forEach(
                        field -> fields.addAll(List.of(field.key(), field.key().equals(name) ? value : field.value())));
        fields.addAll(List.of("do", "save"));
        return fields.toArray(String[]::new);
    }

    @Test
    void a_thing_that_others_need_is_not_taken_out() throws Exception {
        String group = scenario().groups().get(0).id();

        HttpResponse<String> answer = send("groups/" + group, "do", "delete");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Fixtures, League round 21, home: no group is called \"" + group + "\"");
    }

    @Test
    void what_is_taken_out_takes_its_sessions_along_and_can_be_undone() throws Exception {
        String fixture = scenario().fixtures().get(0).id();

        assertThat(send("fixtures/" + fixture, "do", "delete").statusCode()).isEqualTo(303);
        assertThat(scenario().fixtures()).noneMatch(other -> other.id().equals(fixture));

        assertThat(browser.post("/w/w/undo", "revision", revision()).statusCode())
                .isEqualTo(303);
        assertThat(scenario().fixtures()).anyMatch(other -> other.id().equals(fixture));
    }

    @Test
    void an_aim_that_goes_leaves_its_session_in_the_plan_until_the_coach_drops_it() throws Exception {
        browser.post("/w/w/search", "revision", revision(), "seconds", "2");
        browser.until("/w/w", "Planned. ");
        Group group = scenario().groups().get(0);
        String family = group.aims().get(0).family();
        String page = browser.get("/w/w/knowns/groups/" + group.id()).body();
        List<String> fields = new ArrayList<>(List.of(filled(page, "", "")));
        fields.set(fields.lastIndexOf("save"), "remove:aims[0]");
        String shrunk = browser.post("/w/w/knowns/groups/" + group.id(), fields.toArray(String[]::new))
                .body();

        HttpResponse<String> answer = browser.post("/w/w/knowns/groups/" + group.id(), filled(shrunk, "", ""));

        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(scenario().groups().get(0).aims())
                .noneMatch(aim -> aim.family().equals(family));
        assertThat(browser.get("/w/w").body()).contains("Heavy lower, knee-dominant");
    }

    @Test
    void what_comes_late_is_refused_with_what_is_in_force() {
        HttpResponse<String> late = browser.post("/w/w/knowns/fixtures/new", "revision", "99", "do", "save");

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("The week has changed meanwhile");
    }

    @Test
    void names_stay_text() throws Exception {
        send("facilities/new", "label", HOSTILE, "offers", "gym", "do", "save");

        assertThat(scenario().facilities()).anyMatch(one -> one.label().equals(HOSTILE));
        assertThat(browser.get("/w/w/knowns").body())
                .contains("&lt;script&gt;alert(1)")
                .doesNotContain("<script>alert");
        assertThat(browser.get("/w/w/knowns/facilities/"
                                + scenario()
                                        .facilities()
                                        .get(scenario().facilities().size() - 1)
                                        .id())
                        .body())
                .doesNotContain("<script>alert");
    }

    @Test
    void what_is_not_there_is_said() {
        assertThat(browser.get("/w/w/knowns/fixtures/none").statusCode()).isEqualTo(404);
        assertThat(browser.get("/w/w/knowns/secrets/1").statusCode()).isEqualTo(404);
    }
}
