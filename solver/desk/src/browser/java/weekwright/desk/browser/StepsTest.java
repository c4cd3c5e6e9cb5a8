package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How many clicks and keys a coach needs for the whole way, counted as a hand does them. The figures stand in
 * {@code benchmarks/report.md} too.
 */
class StepsTest {
    /** What {@code Ctrl+P} and {@code Enter} are in the window from which a browser prints. */
    private static final int KEYS_TO_PRINT = 3;

    @TempDir
    private Path place;

    /** Does what a hand does, and counts it. */
    private static final class Hand {
        private final Page page;
        private int clicks;
        private int keys;

        Hand(Page page) {
            this.page = page;
        }

        void click(String selector) {
            page.locator(selector).click();
            clicks++;
        }

        void type(String selector, String text) {
            click(selector);
            page.keyboard().type(text);
            keys += text.length();
        }

        /** A date or time: the hand goes on to it with the tabulator and types its digits. */
        void digits(String selector, String value) {
            page.locator(selector).fill(value);
            keys += 1 + value.replaceAll("\\D", "").length();
        }
    }

    @Test
    void from_a_blank_week_to_a_printed_sheet_without_leaving_the_page_or_touching_a_file() throws IOException {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            Hand hand = new Hand(page);
            hand.type("#title", "Harbour seconds");
            hand.digits("#first-day", "2027-03-01");
            hand.type("#fixture-0", "Cup tie");
            hand.digits("#fixture-date-0", "2027-03-06");
            hand.digits("#fixture-time-0", "14:30");
            hand.click("text=Begin this week");
            assertThat(page.locator("#saved")).containsText("Planned");
            hand.click(".ways-on a:has-text('Sheets and paper')");
            hand.click("#sheet-show");
            assertThat(page.locator("body")).containsText("Mon 1 Mar");
            byte[] printed = page.pdf(new Page.PdfOptions().setFormat("A4"));
            hand.keys += KEYS_TO_PRINT;

            try (PDDocument sheet = Loader.loadPDF(printed)) {
                assertThat(sheet.getNumberOfPages()).isEqualTo(1);
                assertThat(new PDFTextStripper().getText(sheet)).contains("Mon 1 Mar", "Squad");
            }
            assertThat(hand.clicks).isLessThanOrEqualTo(5);
            assertThat(hand.keys).isLessThanOrEqualTo(48);
            assertThat(coach.window.pages()).as("one page, all the way").hasSize(1);
            coach.picture("first-sheet");
            coach.quiet();
        }
    }

    @Test
    void the_next_week_is_begun_from_the_last_one_and_planned() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("button.demo[value=one-match]").click();
            assertThat(page.locator("#saved")).containsText("Planned");
            Hand hand = new Hand(page);
            hand.click(".home a");
            hand.click(".shelf .button");
            coach.accessible("the next week");
            coach.picture("next-week");
            hand.type("#fixture-0", "Cup tie");
            hand.digits("#fixture-date-0", "2027-02-17");
            hand.digits("#fixture-time-0", "19:30");
            hand.click("#begin");
            assertThat(page.locator("#saved")).containsText("Planned");
            assertThat(page.locator("#land")).containsText("Cup tie");

            assertThat(hand.clicks).isLessThanOrEqualTo(4);
            assertThat(hand.keys).isLessThanOrEqualTo(21);
            page.locator(".home a").click();
            assertThat(page.locator(".shelf li")).hasCount(2);
            coach.accessible("two weeks to open");
            coach.picture("start-with-weeks");
            assertThat(Files.isDirectory(place.resolve("week-2027-02-15"))).isTrue();
            coach.quiet();
        }
    }
}
