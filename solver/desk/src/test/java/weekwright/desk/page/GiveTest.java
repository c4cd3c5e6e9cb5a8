package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.document.Documents;
import weekwright.scenarios.Scenarios;

/** What a coach takes along, and under which name. */
class GiveTest {
    @TempDir
    private Path place;

    private void week(String title) throws IOException {
        Path folder = Files.createDirectory(place.resolve("week"));
        String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8)
                .replace("Kilmarrow first squad, one league match on Saturday", title);
        Files.writeString(folder.resolve("scenario.json"), scenario);
    }

    @Test
    void documents_tables_and_the_sheet_for_the_wall_are_given_as_files() throws Exception {
        week("Harbour seconds");
        try (Browser browser = Browser.in(place)) {
            assertThat(browser.get("/w/week").body())
                    .contains("Take along", "/w/week/give/wall.pdf?week=1&amp;by=group");

            byte[] scenario = browser.get("/w/week/give/scenario.json").body().getBytes(StandardCharsets.UTF_8);
            assertThat(Documents.readScenario("given", scenario).title()).isEqualTo("Harbour seconds");
            assertThat(browser.get("/w/week/give/bookings.csv").body()).contains("Training pitch");
            for (String what : List.of("plan.json", "plan.csv", "findings.csv", "loads.csv", "wall.html")) {
                HttpResponse<String> given = browser.get("/w/week/give/" + what);
                assertThat(given.statusCode()).as(what).isEqualTo(200);
                assertThat(given.headers().firstValue("Content-Disposition"))
                        .contains("attachment; filename=\"harbour-seconds-" + what + "\"");
            }
            try (var sheet = Loader.loadPDF(browser.bytes("/w/week/give/wall.pdf"))) {
                assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            }
            assertThat(browser.get("/w/week/give/history").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void no_name_reaches_a_header() throws Exception {
        week("a\\r\\nSet-Cookie: x=1\\r\\n\\\"; filename=../../b.exe; \u05d0\ud83c\udfc3");
        try (Browser browser = Browser.in(place)) {
            String disposition = "unread";
            HttpResponse<String> given = browser.get("/w/week/give/plan.csv");
            if (given.statusCode() == 200) {
                disposition = given.headers().firstValue("Content-Disposition").orElseThrow();
                assertThat(disposition).matches("attachment; filename=\"[a-z0-9-]*plan[.]csv\"");
            } else {
                // Titles hold no ends of lines: such a week cannot even be opened.
                assertThat(given.statusCode()).isEqualTo(422);
            }
            assertThat(given.headers().firstValue("Set-Cookie")).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Harbour seconds | harbour-seconds-",
                "\"; filename=../../b.exe | filename-b-exe-",
                "\u05d4\u05e0\u05d1\u05d7\u05e8\u05ea | ''",
                "  -- | ''",
                "x\u0000y\u2028z | x-y-z-",
                "I\u0130STANBUL 1000000000000000000000000000000000000 | ii-stanbul-10000000000000000000000000000-"
            })
    void of_a_title_only_letters_and_digits_come_into_the_name_of_a_file(String title, String name) {
        assertThat(GiveRoutes.named(title)).isEqualTo(name).hasSizeLessThanOrEqualTo(41);
    }
}
