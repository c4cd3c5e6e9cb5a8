package weekwright.desk.page;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Preview;
import weekwright.desk.intake.Row;
import weekwright.desk.intake.Wanted;
import weekwright.desk.intake.What;
import weekwright.desk.view.page.TakePage;
import weekwright.desk.view.page.TakePage.Answer;

/** The form for what is taken in: what was sent, what is answered, what was understood. */
final class TakeForms {
    private static final Map<String, String> YES = new LinkedHashMap<>();
    private static final Map<String, String> TEXTS = new LinkedHashMap<>();
    /** What stands beside each row. */
    private static final Map<String, String> OF_ROW = Map.of(
            Answers.ACCEPT,
            "Right as it stands",
            Answers.LEAVE_OUT,
            "Not wanted",
            Answers.SAME,
            "Is this one of the week",
            Answers.TIME,
            "Start",
            Answers.GROUP,
            "Of whom or what",
            Answers.FACILITY,
            "Of whom or what");

    static {
        YES.put(Answers.DAY_FIRST, "03/04 is the third of April");
        YES.put(Answers.MONTH_FIRST, "03/04 is the fourth of March");
        YES.put(Answers.DECIMAL_COMMA, "1,234 is a little more than one");
        YES.put(Answers.DECIMAL_POINT, "1,234 is more than a thousand");
        YES.put(Answers.PAST, "Fixtures of the four weeks before go into what was done");
        YES.put(Answers.REPLACE, "Take out what is not in it (closures, absences)");
        TEXTS.put(Answers.ZONE, "Clocks of times that name none, such as Europe/Dublin");
        TEXTS.put(Answers.ZONE_OF, "What a zone of the file is, such as Match time=Europe/Dublin");
        TEXTS.put(Answers.TIME, "Start of all rows that have only a date, such as 15:00");
        TEXTS.put(Answers.MINUTES, "Minutes that rows last which have no end");
        TEXTS.put(Answers.COLUMN, "What a column holds, such as date=Match day");
        TEXTS.put(Answers.ONLY, "Only rows that hold this text");
        TEXTS.put(Answers.ENCODING, "How the letters are written, such as windows-1252");
    }

    private TakeForms() {}

    /** Answers are spoken of by the labels of their fields. */
    private static final class FieldWording implements Answers.Wording {
        @Override
        public String of(String answer, String value) {
            String label = YES.getOrDefault(answer, TEXTS.getOrDefault(answer, OF_ROW.getOrDefault(answer, answer)));
            return quoted(label.replaceFirst(", such as .*", ""), value);
        }

        @Override
        public String ofRow(String answer, int row, String value) {
            return quoted(OF_ROW.getOrDefault(answer, answer), value);
        }

        private static String quoted(String label, String value) {
            return "“" + label + "”" + (value.isEmpty() ? "" : ": " + value);
        }
    }

    /** The bytes that were pasted, opened or carried along; empty where there are none. */
    static byte[] bytes(Context request) {
        String pasted = Guards.field(request.formParam("pasted"));
        if (!pasted.isBlank()) {
            return pasted.getBytes(StandardCharsets.UTF_8);
        }
        UploadedFile file = request.uploadedFile("file");
        if (file != null && file.size() > 0) {
            try (InputStream in = file.content()) {
                return in.readAllBytes();
            } catch (IOException e) {
                throw new InputFault("the file could not be read: try again");
            }
        }
        try {
            return Base64.getDecoder().decode(Guards.field(request.formParam("content")));
        } catch (IllegalArgumentException e) {
            throw new Refusal(400, "Something is missing in what was sent", "Load the page again.");
        }
    }

    /** What it is to be taken as, and for whom. */
    static Wanted wanted(String what, String owner) {
        Wanted wanted = Wanted.of(What.named(what));
        String id = owner.substring(owner.indexOf(':') + 1);
        if (owner.startsWith("group:")) {
            return wanted.group(id);
        }
        if (owner.startsWith("athlete:")) {
            return wanted.athlete(id);
        }
        if (owner.startsWith("facility:")) {
            return wanted.facility(id);
        }
        return owner.startsWith("fixture:") ? wanted.fixture(id) : wanted;
    }

    /** What was answered. */
    static Answers answers(Context request) {
        Answers answers = Answers.in(new FieldWording());
        for (Map.Entry<String, List<String>> sent : request.formParamMap().entrySet()) {
            for (String value : sent.getValue()) {
                answers = value.isBlank() ? answers : answer(answers, sent.getKey(), value.strip());
            }
        }
        return answers;
    }

    private static Answers answer(Answers answers, String name, String value) {
        if (YES.containsKey(name)) {
            return answers.with(name);
        }
        if (TEXTS.containsKey(name)) {
            return answers.with(name, value);
        }
        if (name.startsWith("row-") && (value.equals(Answers.ACCEPT) || value.equals(Answers.LEAVE_OUT))) {
            return answers.with(value, name.substring("row-".length()));
        }
        if (name.startsWith("time-")) {
            return answers.with(Answers.TIME, name.substring("time-".length()) + "=" + value);
        }
        return name.startsWith("same-")
                ? answers.with(Answers.SAME, name.substring("same-".length()) + "=" + value)
                : answers;
    }

    /** What was understood, to be shown. */
    static TakePage.Preview shown(Context request, Preview preview) {
        List<TakePage.Row> rows = new ArrayList<>();
        for (Row row : preview.rows()) {
            String said = Guards.field(request.formParam("row-" + row.number()));
            rows.add(new TakePage.Row(
                    row.number(),
                    row.place(),
                    row.verdict().word(),
                    row.text(),
                    row.remarks(),
                    row.verdict().isOpen() || !said.isEmpty(),
                    said.equals(Answers.ACCEPT),
                    said.equals(Answers.LEAVE_OUT),
                    Guards.field(request.formParam("time-" + row.number())),
                    Guards.field(request.formParam("same-" + row.number()))));
        }
        return new TakePage.Preview(
                preview.how(),
                preview.counts(),
                preview.questions(),
                rows,
                preview.notes(),
                preview.open().size(),
                given(request));
    }

    private static List<Answer> given(Context request) {
        List<Answer> answers = new ArrayList<>();
        YES.forEach((name, label) -> answers.add(new Answer(name, label, true, Guards.field(request.formParam(name)))));
        TEXTS.forEach(
                (name, label) -> answers.add(new Answer(name, label, false, Guards.field(request.formParam(name)))));
        return answers;
    }
}
