package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpClient;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.scenarios.Scenarios;

/** A search: begun once, seen from everywhere, ended as the coach wishes, saved whatever happens. */
class SearchTest {
    private static final String RUNNING = "Stop and take this plan";

    @TempDir
    private Path place;

    private final PatientPlanner planner = new PatientPlanner();
    private Browser browser;

    @BeforeEach
    void open() throws Exception {
        week("week", "Week");
        browser = Browser.in(place, planner);
    }

    @AfterEach
    void close() {
        planner.go();
        browser.close();
    }

    private void week(String folder, String title) throws Exception {
        Files.createDirectories(place.resolve(folder));
        String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8)
                .replace("Kilmarrow first squad, one league match on Saturday", title);
        Files.writeString(place.resolve(folder).resolve("scenario.json"), scenario);
    }

    private int ask(String folder, int revision) {
        return browser.post("/w/" + folder + "/search", "revision", "" + revision, "seconds", "5")
                .statusCode();
    }

    @Test
    void the_best_plan_is_drawn_while_it_is_searched() {
        assertThat(browser.get("/w/week").body()).contains("There is no plan yet", "Plan the week");

        assertThat(ask("week", 1)).isEqualTo(303);

        String page = browser.until("/w/week", "After 1.0 s");
        assertThat(page).contains(RUNNING, "Searching, at most 5 s.", "aria-busy=\"true\"");
        assertThat(page).contains("Maximal velocity sprinting", "2.5 points of wishes unmet");
        assertThat(page).contains("d=\"M30.0 0.0 L60.0 0.0 L60.0 47.5\"");
        assertThat(page).contains("Revision 1,").doesNotContain("Revision 2,");
        // Of the empty week before it nothing is said: it is not what anybody wants to know.
        assertThat(page).contains("The first plan is being looked for.").doesNotContain("Left out");

        planner.go();
        // What it saves is never seen before its end.
        assertThat(browser.until("/w/week", "Revision 2,"))
                .contains("Plan again", "Planned. ", "How it stands")
                .doesNotContain(RUNNING, "The first plan");
    }

    @Test
    void a_second_click_never_starts_a_second_search() {
        ask("week", 1);
        browser.until("/w/week", RUNNING);
        for (int i = 0; i < 5; i++) {
            assertThat(ask("week", 1)).isEqualTo(303);
        }
        planner.go();
        browser.until("/w/week", "Revision 2,");

        assertThat(planner.asked).containsExactly("Week");
    }

    @Test
    void twenty_weeks_asked_for_at_once_take_turns_in_order() throws Exception {
        List<String> titles = new ArrayList<>();
        for (int i = 10; i < 30; i++) {
            week("w" + i, "Week " + i);
            titles.add("Week " + i);
        }
        for (int i = 10; i < 30; i++) {
            ask("w" + i, 1);
            ask("w" + i, 1);
        }
        assertThat(browser.get("/w/w11").body()).contains("One search comes before this one.");
        assertThat(browser.get("/w/w29").body()).contains("19 searches come before this one.");

        planner.go();
        for (int i = 10; i < 30; i++) {
            browser.until("/w/w" + i, "Revision 2,");
        }
        assertThat(planner.asked).isEqualTo(titles);
    }

    @Test
    void it_can_be_stopped_and_its_plan_taken() {
        ask("week", 1);
        browser.until("/w/week", "After 1.0 s");

        browser.post("/w/week/search/end");

        assertThat(browser.until("/w/week", "Revision 2,")).contains("Planned. ");
    }

    @Test
    void it_can_be_stopped_and_its_plan_dropped() {
        ask("week", 1);
        browser.until("/w/week", "After 1.0 s");

        browser.post("/w/week/search/drop");

        String page = browser.until("/w/week", "What was found is dropped; the plan stays as it was.");
        assertThat(page).contains("Revision 1,").doesNotContain("Revision 2,");
        assertThat(browser.post("/w/week/search/away").statusCode()).isEqualTo(303);
        assertThat(browser.get("/w/week").body()).doesNotContain("is dropped");
    }

    @Test
    void what_is_found_for_a_week_that_has_changed_meanwhile_is_kept_beside() throws Exception {
        ask("week", 1);
        browser.until("/w/week", "After 1.0 s");
        Path file = place.resolve("week/scenario.json");
        Files.writeString(file, Files.readString(file).replace("Team run-through", "Team walk"));
        assertThat(browser.get("/w/week").body()).contains("Revision 2,");

        planner.go();

        String page = browser.until("/w/week", "Yours is kept beside as revision 3.");
        assertThat(page).contains("Revision 2,");
        assertThat(browser.get("/w/week/history").body()).contains("came late, kept beside");
        assertThat(browser.post("/w/week/search", "revision", "1", "seconds", "5")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void a_desk_that_is_closed_saves_the_best_plan_so_far() {
        ask("week", 1);
        browser.until("/w/week", "After 1.0 s");
        browser.close();

        browser = Browser.in(place, planner);

        assertThat(browser.get("/w/week").body()).contains("Revision 2,", "Planned. ", "Maximal velocity sprinting");
    }

    @Test
    void a_plan_again_says_what_has_changed_and_afresh_keeps_only_pins() throws Exception {
        planner.go();
        ask("week", 1);
        browser.until("/w/week", "Revision 2,");

        ask("week", 2);
        browser.until("/w/week", "Nothing better was found close to this plan: it stays.");

        Path file = place.resolve("week/scenario.json");
        Files.writeString(file, Files.readString(file).replace("\"TUE\", \"WED\"", "\"WED\""));
        browser.until("/w/week", "Revision 3,");
        ask("week", 3);
        assertThat(browser.until("/w/week", "What has changed")).contains("Revision 4,", "Sessions that differ");
        browser.post("/w/week/search", "revision", "4", "seconds", "5", "afresh", "yes");
        browser.until("/w/week", "Planned afresh");
    }

    @Test
    void open_pages_are_told_that_there_is_news() throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        var stream = client.send(
                browser.request("/w/week/events")
                        .header("Accept", "text/event-stream")
                        .build(),
                BodyHandlers.ofInputStream());
        try (InputStream in = stream.body();
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            browser.get("/w/week");
            assertThat(next(lines, "event: revision")).isEqualTo("data: 1");
            ask("week", 1);
            assertThat(next(lines, "event: search")).startsWith("data: ");
            planner.go();
            assertThat(next(lines, "event: revision")).isEqualTo("data: 2");
        }
    }

    private static String next(BufferedReader lines, String event) throws Exception {
        String line = lines.readLine();
        while (line != null && !line.equals(event)) {
            line = lines.readLine();
        }
        return lines.readLine();
    }

    @Test
    void a_search_cannot_take_longer_than_the_page_offers() {
        assertThat(browser.post("/w/week/search", "revision", "1", "seconds", "86400")
                        .statusCode())
                .isEqualTo(400);
        assertThat(planner.asked).isEmpty();
    }
}
