package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.scenarios.Scenarios;

/**
 * The pictures of the page in the README. They are taken here and written with {@code -Dweekwright.pictures=write}; letters
 * differ from machine to machine, so what is compared is that each is there, shown and no larger than it need be.
 */
class PicturesTest {
    private static final Path KEPT = Path.of("src/site");
    private static final Path TAKEN = Path.of("target/screens");
    private static final List<String> NAMES = List.of("page-week", "page-held");
    private static final boolean WRITE = "write".equals(System.getProperty("weekwright.pictures"));
    private static final int WIDE = 1280;
    private static final int HIGH = 880;
    private static final long MOST_BYTES = 250_000;

    @TempDir
    private Path place;

    @Test
    void of_the_week_and_of_a_session_in_the_hand() throws Exception {
        week();
        try (Coach coach = Coach.in(place, WIDE, HIGH)) {
            Page page = coach.page;
            page.getByText("kilmarrow", new Page.GetByTextOptions().setExact(true))
                    .click();
            assertThat(page.locator(".card.session").first()).isVisible();
            take(page, "page-week");
            page.locator(".card[data-id*='heavy-lower-knee']").click();
            assertThat(page.locator(".cell.here")).isVisible();
            page.locator(".cell[data-start='2027-02-10T12:45']").hover();
            assertThat(page.locator("#hold-says")).containsText("Costs");
            take(page, "page-held");
            coach.quiet();
        }
        String readme = Files.readString(Path.of("../../README.md"));
        for (String name : NAMES) {
            var picture = ImageIO.read(KEPT.resolve(name + ".png").toFile());
            assertThat(picture.getWidth()).as(name).isEqualTo(WIDE);
            assertThat(Files.size(KEPT.resolve(name + ".png"))).as(name).isLessThan(MOST_BYTES);
            assertThat(readme).contains("(solver/desk/src/site/" + name + ".png)");
        }
    }

    /** The week of the README. */
    private void week() {
        Planned.week(place, "kilmarrow", Scenarios.read("one-match"), 5_000);
    }

    private static void take(Page page, String name) throws IOException {
        Path taken = TAKEN.resolve(name + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(taken).setTimeout(Coach.SLOW));
        if (WRITE) {
            Files.createDirectories(KEPT);
            Files.copy(taken, KEPT.resolve(name + ".png"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
