package weekwright.desk.view.terminal;

import java.util.List;
import weekwright.desk.view.Words;
import weekwright.desk.view.brief.BriefPage;
import weekwright.desk.view.brief.BriefPage.Day;
import weekwright.desk.view.brief.BriefPage.Item;
import weekwright.desk.view.brief.BriefPage.News;
import weekwright.desk.view.brief.BriefPage.Sheet;

/** Sets a week for those who lead the team on a terminal, or as plain text for those who train. */
public final class BriefText {
    private static final int WIDTH = 100;
    private static final String POINT = "· ";

    private BriefText() {}

    /** The page in lines of at most 100 columns, each ended by a line feed. */
    public static String of(BriefPage page, Ink ink) {
        Paper paper = new Paper(WIDTH);
        paper.line(ink.strong(Plain.cut(Plain.text(page.title()), WIDTH)));
        for (Sheet sheet : page.sheets()) {
            paper.blank();
            paper.line(ink.strong(Plain.cut(Plain.text(sheet.group()), WIDTH)) + ", " + sheet.span());
            sheet.days().forEach(day -> day(paper, day));
            paper.line(ink.strong("Why the week looks like this"));
            sheet.why().forEach(sentence -> paper.wrapped(2, "", Plain.text(sentence)));
            list(
                    paper,
                    ink.strong("What was given up"),
                    sheet.givenUp(),
                    "Nothing: all that was asked for has its place.");
            News news = sheet.news();
            if (news != null) {
                list(paper, ink.strong(news.heading()), news.lines(), "Nothing.");
            }
        }
        paper.blank();
        Plain.wrap(Words.CAUTION, WIDTH).forEach(line -> paper.line(ink.faint(line)));
        return paper.toString();
    }

    private static void day(Paper paper, Day day) {
        String before = Plain.fit(day.date(), 10) + "  " + Plain.fit(day.matchDay(), 4) + "  "
                + Plain.fit(day.dayClass(), 6) + "  ";
        List<String> items = day.items().stream().map(BriefText::item).toList();
        paper.wrapped(0, before, String.join(" · ", items));
    }

    private static String item(Item item) {
        return item.start() + " " + (item.fixture() ? "◆ " : "") + Plain.text(item.label());
    }

    private static void list(Paper paper, String heading, List<String> lines, String nothing) {
        paper.line(heading);
        if (lines.isEmpty()) {
            paper.wrapped(2, "", nothing);
        }
        lines.forEach(line -> paper.wrapped(2, POINT, Plain.text(line)));
    }

    /** What a group chat takes: no columns, no figures, and what has changed first. */
    public static String chat(BriefPage page) {
        return String.join("\n", page.sheets().stream().map(BriefText::chat).toList());
    }

    private static String chat(Sheet sheet) {
        StringBuilder text = new StringBuilder();
        line(text, Plain.text(sheet.group()) + ", " + sheet.span());
        line(text, "Times in " + sheet.zone());
        News news = sheet.news();
        if (news != null) {
            line(text, "");
            line(
                    text,
                    news.lines().isEmpty()
                            ? "Nothing has c" + news.heading().substring(1) + "."
                            : news.heading() + ":");
            news.lines().forEach(change -> line(text, "- " + Plain.text(change)));
        }
        for (Day day : sheet.days()) {
            line(text, "");
            line(text, day.date() + (day.matchDay().isEmpty() ? "" : " (" + day.matchDay() + ")"));
            if (day.items().isEmpty()) {
                line(text, "Free");
            }
            for (Item item : day.items()) {
                String place = item.place().isEmpty() ? "" : ", " + Plain.text(item.place());
                line(text, item.start() + " " + Plain.text(item.label()) + place);
            }
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}
