package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page itself on paper without colour: what leads elsewhere is left out, and the inks of its pictures stay. */
class PrintTest {
    @TempDir
    private Path place;

    @Test
    void week_and_load_on_paper() throws IOException {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("button.demo[value=one-match]").click();
            assertThat(page.locator("#saved")).containsText("Planned");
            String week = page.url();
            page.navigate(week);
            assertThat(firstPage(page)).contains("First squad", "Tempo run", "10:30–11:55");
            paper(coach, week, "week");
            paper(coach, week + "/load", "load");
            assertThat(page.locator(".loads").first()).isVisible();
            assertThat((String)
                            page.locator(".loads").first().evaluate("one => getComputedStyle(one).printColorAdjust"))
                    .isEqualTo("exact");
            assertThat((String) page.locator(".loads .ink-1").first().evaluate("one => getComputedStyle(one).fill"))
                    .as("what was done is black, what is planned is hatched")
                    .isNotEqualTo((String)
                            page.locator(".loads .outlined").first().evaluate("one => getComputedStyle(one).fill"));
            coach.quiet();
        }
    }

    /** What stands on the first page where the page is printed as it is. */
    private static String firstPage(Page page) throws IOException {
        try (PDDocument printed = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("A4")))) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            return first.getText(printed);
        }
    }

    /** Asked of the browser itself: its driver spells the name of the medium by the letters of the machine's language. */
    private static void paper(Coach coach, String address, String name) {
        Page page = coach.page;
        page.navigate(address);
        JsonObject print = new JsonObject();
        print.addProperty("media", "print");
        page.context().newCDPSession(page).send("Emulation.setEmulatedMedia", print);
        assertThat(page.locator(".ways-on")).isHidden();
        assertThat(page.locator(".home")).isHidden();
        page.evaluate("() => document.documentElement.animate({ filter: ['grayscale(1)', 'grayscale(1)'] },"
                + " { duration: 1, fill: 'forwards' })");
        coach.picture("paper-" + name);
    }
}
