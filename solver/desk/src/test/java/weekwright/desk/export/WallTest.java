package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.plan.WallPage;
import weekwright.desk.view.plan.WallPages;
import weekwright.engine.explain.Judged;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A week for the wall, as a page and on paper. */
class WallTest {
    private static final Scenario WEEK = Plans.week();
    private static final Judged PLAN = Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED, Plans.UPPER);

    private static WallPage page(Scenario scenario, Judged judged, int week) {
        return WallPages.of(
                scenario,
                judged,
                week,
                scenario.groups().stream().map(Group::id).toList());
    }

    private static Document html(WallPage page) {
        return Jsoup.parse(new String(Wall.html(page), StandardCharsets.UTF_8));
    }

    @Test
    void the_days_stand_beside_each_other_with_all_that_lies_on_them() {
        Document page = html(page(WEEK, PLAN, 1));

        assertThat(page.select("h1").text()).isEqualTo("Kilmarrow first squad, one league match on Saturday");
        assertThat(page.select(".span").text()).isEqualTo("8 to 14 February 2027, times in Europe/Dublin");
        assertThat(page.select("thead th").eachText())
                .containsExactly(
                        "Mon 8 Feb", "Tue 9 Feb", "Wed 10 Feb", "Thu 11 Feb", "Fri 12 Feb", "Sat 13 Feb", "Sun 14 Feb");
        List<String> days = page.select("tbody td").eachText();
        assertThat(days).hasSize(7);
        assertThat(days.get(0)).isEqualTo("Mon 8 Feb MD+2 · free");
        assertThat(days.get(1))
                .startsWith("Tue 9 Feb MD−4 · ")
                .contains("10:30–11:55 Team practice Training pitch")
                .contains("12:00–13:00 Heavy lower, knee-dominant Weights room Back squat · H. Wrenlow, speed");
        assertThat(days.get(5)).contains("MD · ").contains("15:00–16:50 League round 21, home");
    }

    @Test
    void no_athlete_is_named_and_no_reason_given() {
        String page = html(page(WEEK, PLAN, 1)).text();

        assertThat(page)
                .doesNotContain(WEEK.athletes().stream().map(Athlete::name).toArray(String[]::new))
                .doesNotContain("clinician ");
    }

    @Test
    void a_page_asks_for_nothing_and_hostile_names_stay_names() {
        String evil = "<script>alert(1)</script>";
        Scenario hostile = Plans.week(
                text -> text.replace("Team practice", evil).replace("First squad", "\u05DE\u05DB\u05D1\u05D9 " + evil));
        Document page = html(page(hostile, Plans.judged(hostile), 1));

        assertThat(page.select("script, link, img, iframe, [src], [href], [style], [onclick]"))
                .isEmpty();
        assertThat(page.select(".label").eachText()).contains(evil);
        assertThat(page.select(".label bdi")).hasSameSizeAs(page.select(".label"));
    }

    @Test
    void a_week_fits_on_one_sheet_lying_on_its_side_and_is_the_same_each_time() throws IOException {
        WallPage page = page(WEEK, PLAN, 1);
        byte[] pdf = Wall.pdf(page);

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .as("A4, points")
                    .isBetween(841f, 843f);
            assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(595f, 596f);
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("Sat 13 Feb", "League round 21", "Heavy lower,", "This is planning help");
        }
        assertThat(Wall.pdf(page)).isEqualTo(pdf);
    }

    @Test
    void eight_groups_go_on_below_the_same_headings() throws IOException {
        Scenario academy = Scenarios.read("academy");
        WallPage page = page(academy, Plans.judged(academy), 1);

        assertThat(page.lanes()).hasSize(8);
        try (PDDocument document = Loader.loadPDF(Wall.pdf(page))) {
            PDFTextStripper last = new PDFTextStripper();
            last.setStartPage(document.getNumberOfPages());
            assertThat(last.getText(document)).contains("Mon ");
        }
    }

    @Test
    void a_later_week_has_its_own_days() {
        Scenario twelve = Scenarios.read("twelve-weeks");
        WallPage second = page(twelve, Plans.judged(twelve), 2);

        assertThat(second.days()).hasSize(7);
        assertThat(second.span())
                .isNotEqualTo(page(twelve, Plans.judged(twelve), 1).span());
    }
}
