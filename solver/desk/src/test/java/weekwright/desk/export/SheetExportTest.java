package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.sheet.SheetPage;
import weekwright.desk.view.sheet.SheetPage.Block;
import weekwright.desk.view.sheet.SheetPage.Lane;
import weekwright.desk.view.sheet.SheetPage.Line;
import weekwright.desk.view.sheet.SheetPage.Part;
import weekwright.desk.view.sheet.SheetPage.Row;
import weekwright.desk.view.sheet.SheetPage.Step;
import weekwright.desk.view.sheet.SheetPage.Table;

/** Day sheets as pages and on paper. */
class SheetExportTest {
    private static Lane lane(String label, String... names) {
        return new Lane(
                label,
                "MD−3 · high day",
                List.of(new Block(
                        "10:00–11:00",
                        "Sprints",
                        "Track",
                        List.of(),
                        "Warm-up 20 min",
                        List.of("easy running"),
                        List.of(new Part(
                                null,
                                List.of(new Step("Sprint", "4 × 10 m", "95 %", "rest 1 min", "")),
                                List.of("Stop."))),
                        List.of(new Table(
                                List.of("10 m"),
                                java.util.stream.Stream.of(names)
                                        .map(name -> new Row(name, List.of("≤ 1.83 s"), ""))
                                        .toList(),
                                List.of())),
                        List.of(new Line("O. Nlooker", "sits out")))));
    }

    private static SheetPage page(Lane... lanes) {
        return new SheetPage("A title", "Wed 10 Feb 2027", null, List.of(lanes), List.of("Take care."));
    }

    private static String[] squad(int size) {
        return IntStream.rangeClosed(1, size).mapToObj(i -> "Athlete " + i).toArray(String[]::new);
    }

    private static String html(SheetPage page) {
        return new String(SheetHtml.of(page), StandardCharsets.UTF_8);
    }

    @Test
    void a_page_asks_for_nothing_and_runs_nothing() {
        Document document = Jsoup.parse(html(page(lane("Squad", "R. Ash"))));

        assertThat(document.select("script, link, img, iframe, object, [src], [href], [style], [onclick]"))
                .isEmpty();
        assertThat(document.select("style").html()).doesNotContain("url(", "@import");
        assertThat(document.select("meta[name=viewport]").attr("content")).contains("width=device-width");
        assertThat(document.select("html").attr("lang")).isEqualTo("en");
    }

    @Test
    void hostile_names_stay_names() {
        String evil = "<script>alert('x')</script>\" onload=\"y";

        Document document = Jsoup.parse(html(page(lane(evil, evil, "Ω".repeat(200), "\u202Egnikcart"))));

        assertThat(document.select("script")).isEmpty();
        assertThat(document.select("h1").text()).isEqualTo(evil);
        assertThat(document.select(".numbers tbody th").eachText()).first().isEqualTo(evil);
        assertThat(document.select(".numbers tbody th bdi"))
                .as("each name keeps its direction to itself")
                .hasSize(3);
    }

    @Test
    void each_group_has_its_page_and_small_squads_large_letters() throws IOException {
        byte[] pdf = SheetPdf.of(page(lane("First", squad(4)), lane("Second", squad(38))));

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            assertThat(second.getText(document)).contains("Second", "Athlete 38", "Take care.");
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .as("A4, points")
                    .isBetween(595f, 596f);
            assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(841f, 843f);
        }
    }

    @Test
    void a_squad_too_large_for_a_page_goes_on_on_the_next_below_the_same_headings() throws IOException {
        try (PDDocument document = Loader.loadPDF(SheetPdf.of(page(lane("All", squad(120)))))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(1);
            PDFTextStripper last = new PDFTextStripper();
            last.setStartPage(document.getNumberOfPages());
            assertThat(last.getText(document)).startsWith("10 m").contains("Athlete 120");
        }
    }

    @Test
    void the_same_sheet_gives_the_same_bytes() {
        SheetPage page = page(lane("Squad", "R. Ash", "Željko Đurić", "Νίκος", "Олена"));

        assertThat(SheetPdf.of(page)).isEqualTo(SheetPdf.of(page));
    }

    @Test
    void all_letters_of_the_font_are_embedded_and_what_it_lacks_is_known() throws IOException {
        SheetPage page = page(lane("Squad", "Željko Đurić", "Νίκος Λ.", "Олена Ї.", "Գոռ", "გია", "Nguyễn", "山田"));

        assertThat(SheetPdf.lacking(page)).isEqualTo("山田");
        try (PDDocument document = Loader.loadPDF(SheetPdf.of(page))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Željko Đurić", "Νίκος Λ.", "Олена Ї.", "Գոռ", "გია", "Nguyễn");
            document.getPage(0).getResources().getFontNames().forEach(name -> {
                try {
                    assertThat(document.getPage(0).getResources().getFont(name).isEmbedded())
                            .isTrue();
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            });
        }
    }

    @Test
    void nothing_is_fetched_for_paper() throws IOException {
        String trap = "<img src='file:///etc/hostname'><link rel='stylesheet' href='file:///etc/hostname'>";

        try (PDDocument document = Loader.loadPDF(SheetPdf.of(page(lane(trap, "R. Ash"))))) {
            assertThat(document.getPage(0).getResources().getXObjectNames()).isEmpty();
            assertThat(new PDFTextStripper().getText(document)).contains("<img src=");
        }
    }
}
