package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static weekwright.model.document.BrokenDocumentsTest.said;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Texts that are no JSON (RFC 8259), and texts that mean harm; the limits of size are expert proposals. */
class BrokenTextTest {
    static List<Arguments> texts() {
        return List.of(
                Arguments.of("", "line 1:1: the file is empty. Begin with { and end with }."),
                Arguments.of("  \n ", "line 1:1: the file is empty. Begin with { and end with }."),
                Arguments.of("{\"id\": 1,}", "line 1:10: a comma stands before }. Take the comma away."),
                Arguments.of("{\"days\": [1,\n]}", "days, line 2:1: a comma stands before ]. Take the comma away."),
                Arguments.of(
                        "{\"days\" 7}",
                        "line 1:9: a colon is missing between the name and its value. Write \"name\": value."),
                Arguments.of(
                        "{\"days\": 7\n \"id\": 1}",
                        "line 2:2: a comma is missing before this. Put a comma between one and the next."),
                Arguments.of(
                        "{\"groups\": [1 2]}",
                        "groups, line 1:15: a comma is missing before this. Put a comma between one and the next."),
                Arguments.of(
                        "{'days': 7}",
                        "line 1:2: ' does not begin a text. Write names and texts in double quotes, \"so\"."),
                Arguments.of(
                        "{\"id\": 'x'}",
                        "line 1:8: ' does not begin a text. Write names and texts in double quotes, \"so\"."),
                Arguments.of(
                        "{days: 7}",
                        "line 1:2: a field's name stands without quotes. Write the name in double quotes."),
                Arguments.of("{\"days\": NaN}", "line 1:10: NaN is no number. Give a number, or leave it out."),
                Arguments.of(
                        "{\"days\": -Infinity}", "line 1:10: -Infinity is no number. Give a number, or leave it out."),
                Arguments.of("{\"done\": True}", "line 1:10: True is not known. Write true."),
                Arguments.of("{\"done\": None}", "line 1:10: None is not known. Write null, or leave the field out."),
                Arguments.of("{\"id\": week}", "line 1:8: week stands without quotes. Write text in double quotes."),
                Arguments.of("{\"days\": 07}", "line 1:11: a number begins with 0. Write 7, not 07."),
                Arguments.of("{\"days\": +7}", "line 1:11: a number begins with +. Leave the sign out."),
                Arguments.of("{\"quorum\": .8}", "line 1:12: a number begins with a point. Write 0.5, not .5."),
                Arguments.of(
                        "{\"quorum\": 1.}",
                        "line 1:13: the number is not finished. Write it with all its digits, such as 5 or 0.5."),
                Arguments.of(
                        "{\"quorum\": 1e}",
                        "line 1:13: the number is not finished. Write it with all its digits, such as 5 or 0.5."),
                Arguments.of(
                        "{\"quorum\": -}",
                        "line 1:13: the number is not finished. Write it with all its digits, such as 5 or 0.5."),
                Arguments.of(
                        "{\"id\": \"a\nb\"}",
                        "line 1:10: a text runs over the end of its line. Close it with \", or write a new line as \\n."),
                Arguments.of(
                        "{\"id\": \"a\tb\"}",
                        "line 1:10: a tab stands inside a text. Write it as \\t, or use a space."),
                Arguments.of(
                        "{\"id\": \"a\u0001b\"}",
                        "line 1:10: the control character \\u0001 stands inside a text. Take it out."),
                Arguments.of(
                        "{\"id\": \"a\\qb\"}",
                        "line 1:11: \\q means nothing in a text. Write \\\\ for a backslash, \\n for a new line, \\u and four digits for a sign."),
                Arguments.of(
                        "{\"id\": \"a\\u00g1\"}",
                        "line 1:14: the four digits after \\u are not whole. Write such as \\u00e9, or the sign itself."),
                Arguments.of("{\"id\": \"abc", "line 1:12: a text is not closed. Close it with \"."),
                Arguments.of(
                        "{\"groups\": [ { \"id\": \"a\" }",
                        "groups, line 1:27: the file ends too early: ] is missing. Close what begins at line 1:12."),
                Arguments.of(
                        "{\"groups\"",
                        "line 1:10: the file ends too early: } is missing. Close what begins at line 1:1."),
                Arguments.of(
                        "{\"groups\": [ 1 }",
                        "groups, line 1:16: \"}\" stands where ] is due. Close first what begins at line 1:12."),
                Arguments.of(
                        "{\"groups\": { ]",
                        "groups, line 1:14: \"]\" stands where } is due. Close first what begins at line 1:12."),
                Arguments.of(
                        "{ // a week\n}",
                        "line 1:3: a comment is not allowed here. Take it out, or write it into a note."),
                Arguments.of(
                        "{\"days\": 7 /* a week */}",
                        "line 1:12: a comment is not allowed here. Take it out, or write it into a note."),
                Arguments.of(
                        "# a week\n{}",
                        "line 1:1: a comment is not allowed here. Take it out, or write it into a note."),
                Arguments.of(
                        "{\"days\": }",
                        "line 1:10: a value is missing before }. Give the value, or take the name out."),
                Arguments.of("{,}", "line 1:2: nothing stands before this comma. Take the comma away."),
                Arguments.of(
                        "{} {}", "line 1:4: something follows after the end. Take it out; a file holds one document."),
                Arguments.of(
                        "{} x", "line 1:4: something follows after the end. Take it out; a file holds one document."),
                Arguments.of(
                        "{\"a\": \u00a01}",
                        "line 1:7: no value can begin here. Look for a missing comma, quote or bracket just before."),
                Arguments.of("week", "line 1:1: week stands without quotes. Write text in double quotes."));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void aTextThatIsNoJson(String text, String fault) {
        assertThat(said(() -> Documents.readScenario("week.json", Examples.bytes(text))))
                .containsExactly("week.json: " + fault);
    }

    @Test
    void aFileOf17MebibytesIsRefusedUnread() {
        byte[] large = new byte[17 * 1024 * 1024];
        Arrays.fill(large, (byte) ' ');
        assertThat(said(() -> Documents.readScenario("week.json", large)))
                .containsExactly(
                        "week.json: line 1:1: the file is larger than 16 MiB. Give one document of this program; a season of eight squads takes a tenth of that.");
    }

    @Test
    void aFileOf16MebibytesIsRead() {
        byte[] large = Arrays.copyOf(Examples.bytes(Examples.text("scenario.json")), 16 * 1024 * 1024);
        Arrays.fill(large, Examples.text("scenario.json").length(), large.length, (byte) '\n');
        assertThat(catchThrowable(() -> Documents.readScenario("week.json", large)))
                .isNull();
    }

    @Test
    void deepNestingIsRefused() {
        assertThat(said(() -> read("{\"a\":".repeat(64) + "1" + "}".repeat(64))))
                .noneMatch(line -> line.contains("nested"));
        assertThat(said(() -> read("{\"a\":".repeat(65) + "1" + "}".repeat(65))))
                .containsExactly(
                        "week.json: line 1:321: lists and fields are nested more than 64 deep. No document needs a tenth of that: take brackets out.");
        assertThat(said(() -> read("[".repeat(1_000_000))))
                .singleElement(STRING)
                .contains("nested more than 64 deep");
    }

    @Test
    void aMillionValuesAreEnough() {
        assertThat(said(() -> read("[" + "1,".repeat(1_000_000) + "1]")))
                .singleElement(STRING)
                .contains("the file holds more than a million values");
    }

    @Test
    void manyFaultsAreCutShort() {
        List<String> said = said(() -> read("{\"groups\": [" + "7,".repeat(2_000) + "7]}"));
        assertThat(said).hasSize(501);
        assertThat(said)
                .last(STRING)
                .isEqualTo("week.json: line 1:4016: there are more faults than 500. Mend these first.");
    }

    @Test
    void thousandsOfMisspeltNamesTakeNoTime() {
        String athletes = IntStream.range(0, 20_000)
                .mapToObj(i ->
                        "{\"id\": \"athlete-with-a-long-name-%05d\", \"groups\": [\"group-that-is-not-there-%05d\"]}"
                                .formatted(i, i))
                .collect(Collectors.joining(",", "[", "]"));
        String groups = IntStream.range(0, 20_000)
                .mapToObj("{\"id\": \"group-of-another-name-%05d\"}"::formatted)
                .collect(Collectors.joining(",", "[", "]"));
        assertTimeout(
                Duration.ofSeconds(60),
                () -> assertThat(said(() -> read(
                                "{\"weekwright\": 1, \"groups\": " + groups + ", \"athletes\": " + athletes + "}")))
                        .hasSize(501));
    }

    @Test
    void aHundredThousandUnknownFieldsTakeNoTime() {
        String fields = IntStream.range(0, 100_000)
                .mapToObj("\"a-field-of-no-meaning-%06d\": \"x\""::formatted)
                .collect(Collectors.joining(",", "{", "}"));
        assertTimeout(
                Duration.ofSeconds(60),
                () -> assertThat(said(() -> read(fields))).hasSize(501));
    }

    @Test
    void whatIsNotUtf8IsRefusedWhereItBegins() {
        byte[] latin = "{\n \"title\": \"caf\u00e9\" }".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(said(() -> Documents.readScenario("week.json", latin)))
                .containsExactly(
                        "week.json: line 2:15: from here on the file is not UTF-8. Save it with the encoding UTF-8.");
        assertThat(said(() -> Documents.readScenario("week.json", "{}".getBytes(StandardCharsets.UTF_16))))
                .containsExactly(
                        "week.json: line 1:1: from here on the file is not UTF-8. Save it with the encoding UTF-8.");
    }

    @Test
    void aNameOrANumberBeyondAllMeasureIsRefused() {
        assertThat(said(() -> read("{\"" + "a".repeat(300) + "\": 1}")))
                .singleElement(STRING)
                .contains("a name, a number or a text is far too long. Shorten it.");
        assertThat(said(() -> read("{\"days\": " + "7".repeat(300) + "}")))
                .singleElement(STRING)
                .contains("a name, a number or a text is far too long. Shorten it.");
    }

    @Test
    void longTextsAreCutInMessages() {
        String text = Examples.changed(
                Examples.text("scenario.json"),
                "\"zone\": \"Europe/Dublin\"",
                "\"zone\": 1, \"" + "z".repeat(200) + "\": 1");
        assertThat(said(() -> read(text)))
                .contains(
                        "week.json: " + "z".repeat(200) + ", line 5:14: no field is called \"" + "z".repeat(60)
                                + "\u2026\" here. Known are weekwright, id, title, zone, firstDay, days, gridMinutes, groups, athletes, fixtures, commitments, facilities, transfers, staff, history, catalogue, rules, packs.");
    }

    @Test
    void noMessagePrintsAControlCharacter() {
        String nasty = "\\u001b[2J\\u0007\\r\\n\\u202e\\u2028\\u0085";
        for (String text : List.of(
                "{\"" + nasty + "\": 1}",
                "{\"id\": \"" + nasty + "\"}",
                "{\"rules\": {\"" + nasty + "\": {}}}",
                "{\"rules\": {\"pathway-gap\": {\"" + nasty + "\": 1, \"hours\": {\"" + nasty + "\": 1}}}}",
                "{\"catalogue\": [{\"id\": \"max-velocity\", \"pathways\": {\"" + nasty + "\": \"high\"}}]}",
                "{\"gridMinutes\": \"" + nasty + "\", \"zone\": \"" + nasty + "\"}",
                "{\"groups\": [{\"id\": \"g\", \"kind\": \"" + nasty + "\"}]}",
                "{\"a\": \u0007}",
                "{\"a\": x\u001b[2J}",
                "{\"a\": 1 \u202e}")) {
            List<String> said = said(() -> Documents.readScenario("week\u001b[2J.json", Examples.bytes(text)));
            assertThat(said)
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line.chars()
                                    .noneMatch(c -> Character.isISOControl(c) || c == 0x202e || c == 0x2028))
                            .as(line)
                            .isTrue());
        }
    }

    private static void read(String text) throws DocumentException {
        Documents.readScenario("week.json", Examples.bytes(text));
    }
}
