package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.scenarios.Scenarios;

/** Whatever things are called, it is shown as it is written, runs nothing and bursts no frame. */
class HostileNamesTest {
    private static final String SCRIPT = "<script>window.hit=1</script><img src=x onerror=window.hit=1>";
    private static final String LONG =
            "Donaudampfschifffahrtsgesellschaftskapitän".repeat(5).substring(0, 200);
    private static final String RIGHT_TO_LEFT = "\u05d4\u05e0\u05d1\u05d7\u05e8\u05ea abc (1)";
    private static final String EMOJI =
            "\ud83c\udfc3\ud83c\udffd\u200d\u2640\ufe0f\ud83c\udff4\udb40\udc67\udb40\udc62\udb40\udc7f";

    @TempDir
    private Path place;

    private void week() throws Exception {
        Path folder = Files.createDirectory(place.resolve("week"));
        String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8)
                .replace("Kilmarrow first squad", SCRIPT.replace("\"", "\\\""))
                .replace("\"First squad\"", "\"" + LONG + "\"")
                .replace("League round 21, home", RIGHT_TO_LEFT)
                .replace("Team practice", LONG)
                .replace("Weights room", SCRIPT)
                .replace("R. Tarrow", EMOJI)
                .replace("S. Fennimar", SCRIPT)
                .replace("A. Corrigate", EMOJI);
        Files.writeString(folder.resolve("scenario.json"), scenario);
    }

    @Test
    void on_every_screen() throws Exception {
        week();
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            page.locator("#search-begin").click();
            assertThat(page.locator("#saved")).containsText("Revision 2,");
            assertThat(page.locator("h1")).containsText(SCRIPT);
            for (String by : List.of("group", "place", "athlete")) {
                page.navigate(coach.origin() + "/w/week?by=" + by);
                page.locator(".card.session").first().click();
                assertThat(page.locator(".hold")).isVisible();
                fine(coach, by);
            }
            page.navigate(coach.origin() + "/w/week?week=all");
            fine(coach, "afar");
            for (String other :
                    List.of("history", "knowns", "paper", "whatif", "load", "log", "rules", "words", "next")) {
                page.navigate(coach.origin() + "/w/week/" + other);
                fine(coach, other);
            }
            page.navigate(coach.origin() + "/");
            fine(coach, "start");
            coach.quiet();
        }
    }

    @Test
    void on_a_phone() throws Exception {
        week();
        try (Coach coach = Coach.in(place, new Browser.NewContextOptions().setViewportSize(390, 800))) {
            coach.page
                    .getByText("week", new Page.GetByTextOptions().setExact(true))
                    .click();
            fine(coach, "phone");
        }
    }

    private static void fine(Coach coach, String screen) {
        assertThat(coach.page.evaluate("() => window.hit === undefined"))
                .as(screen)
                .isEqualTo(true);
        assertThat(coach.page.evaluate("() => document.documentElement.scrollWidth <= window.innerWidth"))
                .as(screen + " is no wider than the window")
                .isEqualTo(true);
        coach.accessible(screen);
        coach.picture("hostile-" + screen);
    }
}
