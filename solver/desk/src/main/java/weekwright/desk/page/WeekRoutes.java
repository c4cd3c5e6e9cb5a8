package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Bargains;
import weekwright.desk.app.Comparing;
import weekwright.desk.app.Comparing.Side;
import weekwright.desk.app.Comparing.Sides;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Search.Glance;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Shelf;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.page.DifferencePage;
import weekwright.desk.view.page.HistoryPage;
import weekwright.desk.view.page.Notice;
import weekwright.desk.view.page.Notice.Way;
import weekwright.desk.view.search.Underway;
import weekwright.desk.view.week.LookAt;
import weekwright.desk.view.week.WeekPage;
import weekwright.desk.view.week.WeekPages;
import weekwright.model.answer.Comparison;
import weekwright.model.plan.Plan;

/** The week, its history, undo and redo. */
final class WeekRoutes {
    private static final int STALE = 409;

    private final Shelf shelf;
    private final Searches searches;
    private final Bargains bargains;
    private final Templates templates;

    WeekRoutes(Shelf shelf, Searches searches, Bargains bargains, Templates templates) {
        this.shelf = shelf;
        this.searches = searches;
        this.bargains = bargains;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}", this::week);
        routes.get("/w/{folder}/remedies", this::remedies);
        routes.get("/w/{folder}/history", this::history);
        routes.get("/w/{folder}/history/{number}", this::difference);
        routes.post("/w/{folder}/undo", request -> change(request, place -> place.undo(revision(request))));
        routes.post("/w/{folder}/redo", request -> change(request, place -> place.redo(revision(request))));
        routes.post(
                "/w/{folder}/restore",
                request -> change(request, place -> place.restore(revision(request), number(request, "number"))));
    }

    /** A change of a folder. */
    interface Change {
        Outcome of(Workplace place);
    }

    /** Makes a change and shows what came of it; what comes late is refused with both versions. */
    void change(Context request, Change change) {
        Workplace place = place(request);
        Outcome outcome = change.of(place);
        if (outcome instanceof Outcome.Stale stale) {
            throw stale(request, stale);
        }
        if (Templates.isPart(request)) {
            String said = outcome instanceof Outcome.Same ? outcome.message() : null;
            templates.part(request, "desk.jte", "page", page(request, place, said));
        } else {
            request.redirect(base(request), HttpStatus.SEE_OTHER);
        }
    }

    /** The refusal of something that was asked for from a revision that is no longer in force. */
    Refusal moved(Context request, Seen now, int seen) {
        String text = "This was asked for from revision " + seen + ", and revision "
                + now.revision().number() + " (" + now.revision().label() + ") is in force.";
        return new Refusal(
                STALE,
                new Notice(
                        "The week has changed meanwhile",
                        List.of(text),
                        List.of(new Way("Show what is in force", base(request)))));
    }

    /** The revision that the coach saw, if it is still in force. */
    Seen seen(Context request, Workplace place) {
        Seen now = place.now();
        int seen = revision(request);
        if (now.revision().number() != seen) {
            throw moved(request, now, seen);
        }
        return now;
    }

    /** A revision in words. */
    String saved(Seen seen) {
        return WeekPages.saved(seen.revision(), seen.scenario());
    }

    /** Goes to a page after a change that was asked for from what was seen; what comes late is refused. */
    void done(Context request, Workplace place, Seen seen, Outcome outcome, String page) {
        if (outcome instanceof Outcome.Stale) {
            throw moved(request, place.now(), seen.revision().number());
        }
        request.redirect(base(request) + page, HttpStatus.SEE_OTHER);
    }

    private Refusal stale(Context request, Outcome.Stale stale) {
        List<Way> ways = new ArrayList<>();
        ways.add(new Way("Show what is in force", base(request)));
        if (stale.kept() != null) {
            ways.add(new Way("Find yours in the history", base(request) + "/history"));
        }
        return new Refusal(STALE, new Notice("The week has changed meanwhile", List.of(stale.message()), ways));
    }

    private void week(Context request) {
        Workplace place = place(request);
        WeekPage page = page(request, place);
        if (Templates.isPart(request)) {
            templates.part(request, "desk.jte", "page", page);
        } else {
            templates.page(request, "week.jte", page);
        }
    }

    /** The page of a folder as it is now; while a search is on, with the best plan so far drawn in place of the week. */
    WeekPage page(Context request, Workplace place) {
        return page(request, place, null);
    }

    private WeekPage page(Context request, Workplace place, @Nullable String said) {
        Glance glance = searches.glance(place);
        Seen seen = glance.seen();
        List<String> news = new ArrayList<>(place.news());
        if (said != null) {
            news.add(said);
        }
        LookAt look = look(request, seen);
        Underway underway =
                new Underway(Views.course(searches, place, glance.search()), Views.bargained(bargains, place, seen));
        return WeekPages.of(base(request), Views.open(seen), underway, look, news);
    }

    /** What would help, which the page asks for once it has shown the rest; nothing where the week has changed meanwhile. */
    private void remedies(Context request) {
        Workplace place = place(request);
        String revision = Guards.field(request.queryParam("revision"));
        Seen seen = revision.matches("[0-9]{1,9}")
                ? place.helped(Integer.parseInt(revision)).orElse(null)
                : null;
        if (seen == null) {
            request.status(HttpStatus.NO_CONTENT);
            return;
        }
        String query = look(request, seen).query();
        templates.part(
                request,
                "remedies.jte",
                Map.of(
                        "panel",
                        WeekPages.panel(seen.scenario(), seen.judged()),
                        "base",
                        base(request),
                        "query",
                        query,
                        "revision",
                        seen.revision().number()));
    }

    static LookAt look(Context request, Seen seen) {
        int weeks = seen.scenario().weeks();
        String shown = request.method().equals(HandlerType.GET) ? null : request.formParam("look");
        if (shown == null) {
            return LookAt.of(request.queryParam("week"), request.queryParam("by"), weeks);
        }
        return LookAt.of(part(shown, "week="), part(shown, "by="), weeks);
    }

    /** A part of a query such as {@code week=1&by=group}. */
    private static String part(String query, String name) {
        for (String part : query.split("&", -1)) {
            if (part.startsWith(name)) {
                return part.substring(name.length());
            }
        }
        return "";
    }

    private void history(Context request) {
        Workplace place = place(request);
        Seen seen = place.now();
        templates.page(request, "history.jte", history(request, place, seen));
    }

    private static HistoryPage history(Context request, Workplace place, Seen seen) {
        return HistoryPage.of(base(request), seen.scenario(), seen.revision().number(), place.history());
    }

    /** What differs between an older revision and the one in force. */
    private void difference(Context request) {
        Workplace place = place(request);
        Seen seen = place.now();
        HistoryPage history = history(request, place, seen);
        HistoryPage.Entry entry = history.entries().stream()
                .filter(one -> request.pathParam("number").equals(Integer.toString(one.number())))
                .findFirst()
                .orElseThrow(Refusal::nothingThere);
        Comparison comparison = new Comparing(place.planner())
                .of(new Sides(
                        side(place.contents(entry.number())),
                        side(place.contents(seen.revision().number()))));
        templates.page(
                request,
                "difference.jte",
                DifferencePage.of(history.base(), history.title(), history.revision(), entry, comparison));
    }

    private static Side side(Contents contents) {
        Plan plan = contents.plan();
        if (plan == null) {
            throw new InputFault("there is no plan in one of the two: nothing can be held beside the other");
        }
        return new Side(contents.scenario(), plan);
    }

    Workplace place(Context request) {
        return shelf.open(request.pathParam("folder")).orElseThrow(Refusal::nothingThere);
    }

    static String base(Context request) {
        return base(request.pathParam("folder"));
    }

    /** The address of a folder. */
    static String base(String folder) {
        return "/w/" + URLEncoder.encode(folder, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** The revision that the coach saw. */
    static int revision(Context request) {
        return number(request, "revision");
    }

    static int number(Context request, String field) {
        String text = Guards.field(request.formParam(field));
        if (!text.matches("[0-9]{1,9}")) {
            throw Refusal.misread();
        }
        return Integer.parseInt(text);
    }
}
