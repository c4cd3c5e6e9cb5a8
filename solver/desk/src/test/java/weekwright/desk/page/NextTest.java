package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** Several weeks side by side, and the next one begun from one of them. */
class NextTest {
    @TempDir
    private Path place;

    private Browser browser;

    @BeforeEach
    void two_weeks_lie_in_the_place() throws IOException {
        put("first", "one-match");
        put("second", "two-matches");
        browser = Browser.in(place);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private void put(String folder, String demo) throws IOException {
        Files.write(Files.createDirectory(place.resolve(folder)).resolve("scenario.json"), Scenarios.bytes(demo));
    }

    private Scenario scenario(String folder) throws IOException, DocumentException {
        return Documents.readScenario(
                folder, Files.readAllBytes(place.resolve(folder).resolve("scenario.json")));
    }

    private HttpResponse<String> next(String title, String firstDay, String folder, String date) {
        return browser.post(
                "/w/first/next",
                "revision",
                "1",
                "week",
                "0",
                "title",
                title,
                "firstDay",
                firstDay,
                "folder",
                folder,
                "fixture",
                "Cup tie",
                "fixtureDate",
                date,
                "fixtureTime",
                "14:30",
                "asPlanned",
                "on");
    }

    @Test
    void weeks_are_listed_by_what_they_are_and_nothing_is_written_for_it() {
        String page = browser.get("/").body();
        assertThat(page)
                .contains(
                        "one fixture, in the folder <i dir=\"auto\">first</i>",
                        "2 fixtures, in the folder <i dir=\"auto\">second</i>")
                .contains("href=\"/w/first\"", "href=\"/w/second/next\"");
        assertThat(place.resolve("first/history")).doesNotExist();
    }

    @Test
    void a_week_that_cannot_be_read_is_listed_all_the_same() throws IOException {
        Files.writeString(place.resolve("second/scenario.json"), "{");
        assertThat(browser.get("/").body())
                .contains("whose scenario.json cannot be read as it stands", "/w/first/next");
    }

    @Test
    void the_next_week_asks_for_its_fixtures_and_carries_the_rest_over() throws IOException, DocumentException {
        String page = browser.get("/w/first/next").body();
        Scenario before = scenario("first");
        assertThat(page).contains("In place of " + before.fixtures().get(0).label());

        String first = before.firstDay().plusWeeks(1).toString();
        String wednesday = before.firstDay().plusDays(9).toString();
        HttpResponse<String> sent = next("The week after", first, "", wednesday);

        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(sent.headers().firstValue("Location")).hasValue("/w/week-" + first);
        Scenario after = scenario("week-" + first);
        assertThat(after.fixtures())
                .as("one was known to come, one was asked for")
                .hasSize(2);
        assertThat(after.fixtures().get(0)).isEqualTo(before.fixtures().get(1));
        assertThat(after.fixtures().get(1)).satisfies(one -> {
            assertThat(one.label()).isEqualTo("Cup tie");
            assertThat(one.groups()).isEqualTo(before.fixtures().get(0).groups());
            assertThat(one.minutes()).isEqualTo(before.fixtures().get(0).minutes());
        });
        assertThat(after.groups().get(0).aims())
                .isEqualTo(before.groups().get(0).aims());
        assertThat(after.history())
                .as("the match of the week before was played")
                .anySatisfy(one -> assertThat(one.start())
                        .isEqualTo(before.fixtures().get(0).start()));
        browser.until("/w/week-" + first, "Planned");
        assertThat(scenario("first")).as("the week before stays as it is").isEqualTo(before);
    }

    @Test
    void what_is_wrong_is_said_and_nothing_typed_is_lost() throws IOException, DocumentException {
        HttpResponse<String> sent = next("", "2027-02-30", "Not A Name", "soon");
        assertThat(sent.statusCode()).isEqualTo(422);
        assertThat(sent.body())
                .contains("the first day is \"2027-02-30\": give a date")
                .contains("the week has no name")
                .contains("the fixture \"Cup tie\" is on \"soon\"")
                .contains("value=\"Cup tie\"", "value=\"Not A Name\"");

        String odd = scenario("first").firstDay().plusDays(8).toString();
        assertThat(next("Next", odd, "next", odd).body()).contains("is not whole weeks after", "give ");
        String first = scenario("first").firstDay().plusWeeks(1).toString();
        assertThat(next("Next", first, "next", "2029-01-01").body())
                .contains("neither in the new week nor in the four weeks after it");
        assertThat(next("Next", first, "second", first).body()).contains("there is a week in second already");
        assertThat(next("Next", first, "../up", first).body()).contains("give small letters, digits and hyphens");
        assertThat(place.resolve("next")).doesNotExist();
    }

    @Test
    void two_weeks_never_share_a_plan_or_a_history() throws IOException, DocumentException {
        Scenario second = scenario("second");
        String moved = "2027-02-10T10:00";
        browser.get("/w/second");
        HttpResponse<String> sent = browser.post(
                "/w/first/knowns/commitments/new",
                "revision",
                "1",
                "label",
                "Photographs",
                "groups",
                scenario("first").groups().get(0).id(),
                "start",
                moved,
                "minutes",
                "30",
                "do",
                "save");
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(browser.get("/w/first/history").body()).contains("Photographs");
        assertThat(browser.get("/w/second/history").body()).doesNotContain("Photographs");
        assertThat(scenario("second")).isEqualTo(second);
    }

    @Test
    void a_desk_of_one_folder_says_how_to_begin_a_further_one() {
        try (Browser alone = Browser.of(place.resolve("first"))) {
            assertThat(alone.get("/w/first/next").body()).contains("This desk was opened with one folder");
            assertThat(alone.post(
                                    "/w/first/next",
                                    "revision",
                                    "1",
                                    "week",
                                    "0",
                                    "title",
                                    "Next",
                                    "firstDay",
                                    "2027-02-15")
                            .body())
                    .contains("there is a week in first already");
        }
    }
}
