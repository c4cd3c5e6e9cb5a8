package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Briefing;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Named;
import weekwright.desk.app.Sheeting;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.export.BriefHtml;
import weekwright.desk.export.SheetHtml;
import weekwright.desk.export.SheetPdf;
import weekwright.desk.export.Tables;
import weekwright.desk.export.Wall;
import weekwright.desk.page.CalendarCourses.Now;
import weekwright.desk.page.CalendarCourses.Past;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.brief.BriefPage;
import weekwright.desk.view.brief.BriefPages;
import weekwright.desk.view.brief.BriefPages.Since;
import weekwright.desk.view.page.PaperPage;
import weekwright.desk.view.page.PaperPage.Choice;
import weekwright.desk.view.page.PaperPage.Reader;
import weekwright.desk.view.plan.WallPage;
import weekwright.desk.view.plan.WallPages;
import weekwright.desk.view.sheet.DaySheets;
import weekwright.desk.view.sheet.DaySheets.Wish;
import weekwright.desk.view.sheet.SheetPage;
import weekwright.desk.view.sheet.SheetPages;
import weekwright.desk.view.terminal.BriefText;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What is given out: sheets, the page for the wall, the brief, calendars, tables, the message; and that it was given out. */
final class PaperRoutes {
    private static final String PDF = "application/pdf";
    private static final String CALENDAR = "text/calendar; charset=utf-8";
    private static final String TABLE = "text/csv; charset=utf-8";

    private final CalendarCourses calendars = new CalendarCourses();
    private final WeekRoutes weeks;
    private final Templates templates;
    private final Clock clock;

    PaperRoutes(WeekRoutes weeks, Templates templates, Clock clock) {
        this.weeks = weeks;
        this.templates = templates;
        this.clock = clock;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/paper", this::paper);
        routes.get("/w/{folder}/paper/sheet", this::sheet);
        routes.get("/w/{folder}/paper/wall", this::wall);
        routes.get("/w/{folder}/paper/brief", this::brief);
        routes.get("/w/{folder}/paper/calendar", this::calendar);
        routes.get("/w/{folder}/paper/table", this::table);
        routes.post("/w/{folder}/publish", this::publish);
    }

    private static @Nullable String given(Context request, String name) {
        String value = request.queryParam(name);
        return value == null || value.isEmpty() ? null : value;
    }

    private void paper(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        Scenario scenario = seen.scenario();
        BriefPage brief = BriefPages.of(
                scenario, seen.judged(), new BriefPages.Wish(week(request, scenario), null, since(place, seen)));
        Moment published = seen.judged().plan().published();
        templates.page(
                request,
                "paper.jte",
                new PaperPage(
                        WeekRoutes.base(request),
                        scenario.title(),
                        weeks.saved(seen),
                        seen.revision().number(),
                        seen.planned(),
                        published == null ? null : Dates.day(published.date()) + " " + Dates.clock(published),
                        news(brief),
                        weeks(scenario),
                        days(scenario),
                        readers(scenario),
                        BriefText.chat(brief),
                        place.news()));
    }

    private static List<PaperPage.Since> news(BriefPage brief) {
        List<PaperPage.Since> news = new ArrayList<>();
        for (BriefPage.Sheet sheet : brief.sheets()) {
            BriefPage.News since = sheet.news();
            if (since != null) {
                news.add(new PaperPage.Since(sheet.group(), since.heading(), since.lines()));
            }
        }
        return news;
    }

    private static List<Choice> weeks(Scenario scenario) {
        List<Choice> weeks = new ArrayList<>();
        for (int week = 1; week <= scenario.weeks(); week++) {
            weeks.add(new Choice(
                    Integer.toString(week),
                    "Week " + week + ", from " + Dates.day(scenario.firstDay().plusDays(7L * (week - 1)))));
        }
        return weeks;
    }

    private static List<Choice> days(Scenario scenario) {
        return scenario.firstDay()
                .datesUntil(scenario.lastDay().plusDays(1))
                .map(day -> new Choice(day.toString(), Dates.day(day)))
                .toList();
    }

    private static List<Reader> readers(Scenario scenario) {
        List<Reader> readers = new ArrayList<>();
        for (Group group : scenario.groups()) {
            readers.add(new Reader("group:" + group.id(), group.label()));
        }
        for (Athlete athlete : scenario.athletes()) {
            readers.add(new Reader("athlete:" + athlete.id(), athlete.name()));
        }
        return readers;
    }

    /** The week that is wanted, from 0. */
    private static int week(Context request, Scenario scenario) {
        String week = given(request, "week");
        return Briefing.week(scenario, week != null && week.matches("[0-9]{1,3}") ? Integer.parseInt(week) : 1);
    }

    private static @Nullable Since since(Workplace place, Seen seen) {
        return Briefing.since(place.givenOut(), seen.scenario(), place.planner());
    }

    private void sheet(Context request) {
        Seen seen = weeks.place(request).now();
        Scenario scenario = seen.scenario();
        String day = given(request, "day");
        String reader = given(request, "for");
        String athlete = reader != null && reader.startsWith("athlete:") ? reader.substring("athlete:".length()) : null;
        String units = given(request, "units");
        Wish wish = Sheeting.wish(
                scenario,
                day == null ? scenario.firstDay().toString() : day,
                athlete,
                units == null ? "metric" : units,
                "epley");
        SheetPage page = SheetPages.of(
                DaySheets.of(scenario, seen.judged(), seen.people(), wish),
                athlete == null ? null : Named.athlete(scenario, athlete).name(),
                scenario.zone());
        if ("pdf".equals(given(request, "as"))) {
            Paper.file(request, "sheet " + wish.day(), ".pdf", PDF, SheetPdf.of(page));
        } else {
            Paper.page(request, SheetHtml.shown(page, back(request)));
        }
    }

    private void wall(Context request) {
        Seen seen = weeks.place(request).now();
        Scenario scenario = seen.scenario();
        int week = week(request, scenario) + 1;
        List<String> groups = scenario.groups().stream().map(Group::id).toList();
        WallPage page = WallPages.of(scenario, seen.judged(), week, groups);
        if ("pdf".equals(given(request, "as"))) {
            Paper.file(request, scenario.title() + " week " + week, ".pdf", PDF, Wall.pdf(page));
        } else {
            Paper.page(request, Wall.shown(page, back(request)));
        }
    }

    private void brief(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        int week = week(request, seen.scenario());
        Paper.page(
                request,
                BriefHtml.shown(
                        BriefPages.of(
                                seen.scenario(), seen.judged(), new BriefPages.Wish(week, null, since(place, seen))),
                        back(request)));
    }

    private static String back(Context request) {
        return WeekRoutes.base(request) + "/paper";
    }

    private void calendar(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        String reader = given(request, "for");
        if (reader == null || !reader.matches("(group|athlete):.*")) {
            throw new InputFault("say for whom the calendar is: a group or an athlete");
        }
        String id = reader.substring(reader.indexOf(':') + 1);
        String text = calendars.text(request.pathParam("folder"), reader, Past.of(place), Now.of(seen));
        Paper.file(request, "calendar " + id, ".ics", CALENDAR, text.getBytes(StandardCharsets.UTF_8));
    }

    private void table(Context request) {
        Seen seen = weeks.place(request).now();
        String what = given(request, "what");
        Tables.Kind kind = Tables.Kind.named(what == null ? "plan" : what);
        Judged judged = seen.judged();
        String text = Tables.of(kind, seen.scenario(), judged, "semicolon".equals(given(request, "columns")));
        Paper.file(request, "table " + what, ".csv", TABLE, text.getBytes(StandardCharsets.UTF_8));
    }

    private void publish(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        if (!seen.planned()) {
            throw new InputFault("there is no plan to give out yet: plan the week first");
        }
        Plan given = Briefing.givenOut(seen.judged().plan(), seen.scenario(), clock);
        Outcome outcome =
                place.save(seen.revision().number(), "Given out", seen.judged().with(given));
        weeks.done(request, place, seen, outcome, "/paper");
    }
}
