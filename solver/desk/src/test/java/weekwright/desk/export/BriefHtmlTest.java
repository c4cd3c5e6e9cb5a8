package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.desk.view.brief.BriefPage;
import weekwright.desk.view.brief.BriefPage.Day;
import weekwright.desk.view.brief.BriefPage.Item;
import weekwright.desk.view.brief.BriefPage.News;
import weekwright.desk.view.brief.BriefPage.Sheet;
import weekwright.desk.view.brief.BriefPages;
import weekwright.desk.view.brief.BriefPages.Wish;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** The head coach's page: one file, in black, a page of A4 for each group. */
class BriefHtmlTest {
    private static Document page(BriefPage page) {
        return Jsoup.parse(new String(BriefHtml.of(page), StandardCharsets.UTF_8));
    }

    private static int pagesOnPaper(BriefPage page) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRendererBuilder()
                .withW3cDocument(new W3CDom().fromJsoup(page(page)), null)
                .toStream(out)
                .run();
        try (PDDocument paper = Loader.loadPDF(out.toByteArray())) {
            return paper.getNumberOfPages();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"one-match", "clash", "two-matches", "academy"})
    void a_group_a_page(String demo) throws IOException {
        Scenario scenario = Scenarios.read(demo);
        Proposal proposal = new Proposal(scenario, null, Budget.moves(300), 1, 1, null);
        BriefPage brief = BriefPages.of(scenario, Engine.propose(proposal, Progress.SILENT), new Wish(0, null, null));

        assertThat(pagesOnPaper(brief)).isEqualTo(scenario.groups().size());
    }

    private static BriefPage page(String text) {
        Sheet sheet = new Sheet(
                text,
                "1 to 7 March 2027",
                "Europe/Dublin",
                List.of(
                        new Day("Mon 1 Mar", "MD−5", "high", 8.6, List.of(new Item("09:30", text, text, false))),
                        new Day("Tue 2 Mar", "MD", "middle", 6, List.of(new Item("15:00", text, "", true))),
                        new Day("Wed 3 Mar", "", "free", 0, List.of())),
                List.of(text),
                List.of(text),
                new News("Sat 27 Feb 18:00", List.of(text)));
        return new BriefPage(text, List.of(sheet));
    }

    @Test
    void names_are_text_and_nothing_else() {
        for (String hostile : List.of(
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "\u202eright to left",
                "😀".repeat(50))) {
            Document html = page(page(hostile));
            assertThat(html.select("script, img, link, iframe, [href]")).isEmpty();
            assertThat(html.select("h1").text()).isEqualTo(hostile);
            assertThat(html.title()).isEqualTo(hostile);
            assertThat(html.select("li").eachText()).containsExactly(hostile, hostile, hostile);
        }
    }

    @Test
    void a_long_name_does_not_run_off_the_page() throws IOException {
        assertThat(pagesOnPaper(page("x".repeat(200)))).isEqualTo(1);
    }

    @Test
    void it_asks_for_nothing_else_and_has_no_colour() {
        String html = new String(BriefHtml.of(page("Squad")), StandardCharsets.UTF_8);
        assertThat(html).doesNotContain("http://", "https://", "@import");
        assertThat(html.replaceAll("#(000|fff)\\b", "")).doesNotContainPattern("#[0-9a-fA-F]{3,6}[ ;\"]");
        assertThat(page(page("Squad")).select("tr.high rect.bar-high").attr("width"))
                .isEqualTo("39");
        assertThat(page(page("Squad")).select("h2").eachText())
                .containsExactly("Why the week looks like this", "What was given up", "Changed since Sat 27 Feb 18:00");
    }

    @Test
    void nothing_given_up_and_nothing_changed_are_said() {
        Sheet empty = new Sheet(
                "Squad",
                "1 to 7 March 2027",
                "Europe/Dublin",
                List.of(),
                List.of(),
                List.of(),
                new News(null, List.of()));
        assertThat(page(new BriefPage("Title", List.of(empty)))
                        .select("section > p")
                        .eachText())
                .startsWith("Nothing: all that was asked for has its place.", "Nothing.");
    }
}
