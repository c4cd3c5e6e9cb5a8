package weekwright.desk.view.terminal;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.plan.PlanPage.Breaches;
import weekwright.desk.view.plan.PlanPage.Day;
import weekwright.desk.view.plan.PlanPage.Entry;
import weekwright.desk.view.plan.PlanPage.Kind;
import weekwright.desk.view.plan.PlanPage.Lane;
import weekwright.desk.view.plan.PlanPage.Line;
import weekwright.desk.view.plan.PlanPage.Standing;
import weekwright.desk.view.plan.PlanPage.Week;
import weekwright.model.catalogue.DayClass;
import weekwright.model.rulebook.RuleLevel;

/** Sets a plan in lines of at most 100 columns. */
public final class TextPage {
    private static final int WIDTH = 100;
    private static final int INDENT = 5;
    private static final int MOST_LABEL = 40;
    private static final int MOST_PLACE = 20;
    /** Wishes, facts and sessions left out that are shown at one place; what must hold is always shown in full. */
    private static final int MOST_LINES = 12;

    private static final int MOST_POINTS = 10;
    private static final String GAP = "  ";

    private final PlanPage page;
    private final Ink ink;
    private final Paper paper = new Paper(WIDTH);
    private final int labelColumns;
    private final int placeColumns;

    private TextPage(PlanPage page, Ink ink) {
        this.page = page;
        this.ink = ink;
        this.labelColumns = widest(TextPage::label);
        this.placeColumns = Math.min(MOST_PLACE, widest(TextPage::place));
    }

    /** The page as lines, each ended by a line feed. */
    public static String of(PlanPage page, Ink ink) {
        TextPage text = new TextPage(page, ink);
        text.head();
        page.weeks().forEach(text::week);
        text.standing(page.standing());
        text.foot();
        return text.paper.toString();
    }

    private int widest(Function<Entry, String> part) {
        return page.weeks().stream()
                .flatMap(week -> week.lanes().stream())
                .flatMap(lane -> lane.days().stream())
                .flatMap(day -> day.entries().stream())
                .mapToInt(entry -> Plain.columns(part.apply(entry)))
                .max()
                .orElse(0);
    }

    private void head() {
        paper.line(ink.strong(Plain.cut(Plain.text(page.title()), WIDTH)));
        paper.line(page.span() + ", times in " + page.zone());
    }

    private void week(Week week) {
        if (week.heading() != null) {
            paper.blank();
            paper.line(ink.strong(week.heading()));
        }
        week.lanes().forEach(this::lane);
    }

    private void lane(Lane lane) {
        paper.blank();
        paper.line(ink.strong(Plain.cut(Plain.text(lane.group()), WIDTH)));
        lane.days().forEach(this::day);
    }

    private void day(Day day) {
        String when = Dates.dayInColumn(day.date()) + GAP + Plain.fit(Dates.matchDay(day.matchDay()), 4) + GAP;
        String what = Plain.fit(day.dayClass().id(), 6);
        if (day.dayClass() == DayClass.FREE) {
            paper.line(when + what);
        } else {
            String figures = String.format(
                    Locale.ROOT, "%4.1f points, load %.0f AU", day.demand(), (double) Math.round(day.load()));
            paper.line(ink.strong(when + what) + GAP + bar(day) + GAP + ink.faint(figures));
        }
        day.entries().forEach(this::entry);
    }

    private static String bar(Day day) {
        int points = (int) Math.max(1, Math.min(MOST_POINTS, Math.round(day.demand())));
        return Plain.fit(Words.mark(day.dayClass()).repeat(points), MOST_POINTS);
    }

    private void entry(Entry entry) {
        String start = Dates.clock(entry.start());
        String end = entry.end() == null ? "     " : Dates.clock(entry.end());
        String when = start + (entry.end() == null ? " " : "–") + end;
        String first = when
                + GAP
                + Plain.fit(label(entry), labelColumns)
                + GAP
                + (hasNoPlaces(entry) ? "" : Plain.fit(place(entry), placeColumns) + GAP);
        paper.wrapped(INDENT, first, notes(entry));
    }

    /** A fixture says where it is in its name: its notes take the room. */
    private boolean hasNoPlaces(Entry entry) {
        return placeColumns == 0 || entry.kind() == Kind.FIXTURE;
    }

    /** What it is; a long name is cut, its dose never is. */
    private static String label(Entry entry) {
        String mark = entry.kind() == Kind.FIXTURE ? "◆ " : "";
        String dose = entry.dose() == null ? "" : ", " + entry.dose();
        return mark + Plain.cut(Plain.text(entry.label()), MOST_LABEL - mark.length() - dose.length()) + dose;
    }

    private static String place(Entry entry) {
        return entry.place() == null ? "" : Plain.text(entry.place());
    }

    private static String notes(Entry entry) {
        return String.join(" · ", entry.notes().stream().map(Plain::text).toList());
    }

    private void standing(Standing standing) {
        paper.blank();
        paper.wrapped(0, "", standing.verdict());
        standing.breaches().forEach(this::breaches);
        lines("Left out", standing.leftOut(), MOST_LINES);
        lines(Words.heading(RuleLevel.TOLD), standing.told(), MOST_LINES);
        list("Changed from the usual", standing.softened());
        list("Rules kept", standing.kept());
    }

    private void breaches(Breaches breaches) {
        int most = breaches.level() == RuleLevel.WANT ? MOST_LINES : Integer.MAX_VALUE;
        lines(Words.heading(breaches.level()), breaches.lines(), most);
    }

    private void lines(String heading, List<Line> lines, int most) {
        if (lines.isEmpty()) {
            return;
        }
        paper.line(ink.strong(heading));
        int costColumns = lines.stream()
                .mapToInt(line -> line.cost() == null ? 0 : line.cost().length())
                .max()
                .orElse(0);
        lines.stream().limit(most).forEach(line -> line(line, costColumns));
        if (lines.size() > most) {
            paper.line(GAP + "and " + (lines.size() - most) + " more; --json gives them all");
        }
    }

    private void line(Line line, int costColumns) {
        String cost = cost(line.cost(), costColumns);
        paper.wrapped(GAP.length(), cost, Plain.text(line.text()));
        if (line.help() != null) {
            paper.wrapped(GAP.length() + cost.length(), "", Plain.text(line.help()));
        }
    }

    private static String cost(@Nullable String cost, int columns) {
        return columns == 0 ? "" : " ".repeat(columns - (cost == null ? 0 : cost.length())) + cost + GAP;
    }

    private void list(String heading, List<String> items) {
        if (!items.isEmpty()) {
            paper.line(ink.strong(heading));
            paper.list(GAP.length(), items);
        }
    }

    private void foot() {
        paper.blank();
        if (page.made() != null) {
            paper.line(ink.faint(page.made()));
        }
        Plain.wrap(Words.CAUTION, WIDTH).forEach(line -> paper.line(ink.faint(line)));
    }
}
