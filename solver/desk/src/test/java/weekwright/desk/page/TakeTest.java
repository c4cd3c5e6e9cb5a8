package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/** What is pasted from a spreadsheet or opened from a calendar. */
class TakeTest extends OneWeek {
    private static final String CUP = """
            Date\tTime\tMatch\tMinutes
            2027-02-20\t14:00\tLeague round 22, away\t105
            2027-02-24\t19:30\tCup <b>tie</b>\t105
            """;

    TakeTest() {
        super("one-match", "/w/w/take");
    }

    private HttpResponse<String> take(String what, String pasted, String... more) {
        List<String> fields = new ArrayList<>(List.of("what", what, "of", "", "pasted", pasted));
        fields.addAll(List.of(more));
        return send("", fields.toArray(String[]::new));
    }

    @Test
    void what_is_pasted_is_shown_first_and_taken_after() throws Exception {
        int before = scenario().fixtures().size();

        HttpResponse<String> preview = take("fixtures", CUP, "do", "preview");
        assertThat(preview.statusCode()).isEqualTo(200);
        assertThat(preview.body())
                .contains("What was understood", "League round 22, away", "Cup &lt;b&gt;tie&lt;/b&gt;");
        assertThat(scenario().fixtures()).hasSize(before);

        HttpResponse<String> taken = take("fixtures", CUP, "do", "take");
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(303);
        assertThat(scenario().fixtures()).hasSizeGreaterThan(before);
        assertThat(browser.get("/w/w/history").body()).contains("Fixtures taken in: ");
    }

    @Test
    void taking_the_same_again_adds_nothing() throws Exception {
        take("fixtures", CUP, "do", "take");
        int after = scenario().fixtures().size();

        take("fixtures", CUP, "do", "take");

        assertThat(scenario().fixtures()).hasSize(after);
    }

    @Test
    void what_can_be_read_in_two_ways_is_asked_in_the_words_of_the_page_and_answered() throws Exception {
        String rows = "Date\tTime\tMatch\tMinutes\n03/04/2027\t15:00\tRound 30\t105\n";

        HttpResponse<String> asked = take("fixtures", rows, "do", "take");
        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.body()).contains("“03/04 is the third of April”").doesNotContain("--day-first");
        assertThat(scenario().fixtures()).noneMatch(fixture -> fixture.label().equals("Round 30"));

        HttpResponse<String> answered = take("fixtures", rows, "do", "preview", "month-first", "yes");
        assertThat(answered.body()).contains("2027-03-04 15:00");
    }

    @Test
    void a_question_names_the_fields_in_which_it_is_answered() {
        String text = Jsoup.parse(take("fixtures", "Date\tMatch\n2027-02-17\tCup tie\n", "do", "preview")
                        .body())
                .text();

        assertThat(text)
                .contains(
                        "Some rows have no time: say when they start with “Start of all rows that have only a date”: 15:00,"
                                + " or for one row “Start”: 15:00, or leave them out with “Not wanted”.")
                .doesNotContain("--");
    }

    @Test
    void athletes_marks_and_saturday_s_minutes_are_pasted() throws Exception {
        int before = scenario().athletes().size();
        assertThat(take("athletes", "Name\tGroup\nN. Quarrie\tFirst squad\n", "do", "take")
                        .statusCode())
                .isEqualTo(303);
        assertThat(scenario().athletes()).hasSize(before + 1);

        String fixture = scenario().fixtures().get(0).id();
        HttpResponse<String> minutes =
                take("minutes", "Athlete\tMinutes\nN. Quarrie\t35\n", "do", "take", "of", "fixture:" + fixture);
        assertThat(minutes.statusCode()).as(minutes.body()).isEqualTo(200);
    }

    @Test
    void a_calendar_is_opened_as_a_file_and_carried_along() throws Exception {
        String calendar = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//y//EN\r\nBEGIN:VEVENT\r\nUID:1@x\r\n"
                + "DTSTAMP:20270101T000000Z\r\nDTSTART:20270227T140000Z\r\nDTEND:20270227T154500Z\r\n"
                + "SUMMARY:Away at the harbour\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";

        HttpResponse<String> preview = upload(calendar);

        assertThat(preview.body()).contains("Away at the harbour");
        String content = preview.body().replaceFirst("(?s).*name=\"content\" value=\"([^\"]*)\".*", "$1");
        HttpResponse<String> taken = take("fixtures", "", "content", content, "do", "take");
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(303);
        assertThat(scenario().fixtures()).anyMatch(fixture -> fixture.label().equals("Away at the harbour"));
    }

    private HttpResponse<String> upload(String file) {
        String revision = browser.get("/w/w").body().replaceFirst("(?s).*data-revision=\"([0-9]+)\".*", "$1");
        String edge = "edge-of-a-part";
        StringBuilder body = new StringBuilder();
        for (String[] field : new String[][] {
            {"revision", revision}, {"what", "fixtures"}, {"of", ""}, {"pasted", ""}, {"do", "preview"}
        }) {
            body.append("--")
                    .append(edge)
                    .append("\r\nContent-Disposition: form-data; name=\"")
                    .append(field[0]);
            body.append("\"\r\n\r\n").append(field[1]).append("\r\n");
        }
        body.append("--")
                .append(edge)
                .append("\r\nContent-Disposition: form-data; name=\"file\"; filename=\"../x.ics\"");
        body.append("\r\nContent-Type: text/calendar\r\n\r\n")
                .append(file)
                .append("\r\n--")
                .append(edge)
                .append("--\r\n");
        return browser.send(browser.request("/w/w/take")
                .header("Origin", browser.origin())
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .POST(BodyPublishers.ofString(body.toString(), StandardCharsets.UTF_8)));
    }

    @Test
    void what_cannot_be_read_is_said_and_what_was_typed_stays() {
        HttpResponse<String> answer = take("fixtures", "no table at all", "do", "preview");

        assertThat(answer.body()).contains("no table at all</textarea>");
        assertThat(take("secrets", CUP, "do", "preview").statusCode()).isEqualTo(422);
        assertThat(take("fixtures", " ", "do", "preview").body()).contains("nothing was given");
        assertThat(take("fixtures", CUP, "do", "preview", "zone", "Atlantis").body())
                .contains("Atlantis");
    }
}
