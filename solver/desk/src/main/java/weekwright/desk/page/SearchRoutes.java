package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.function.Consumer;
import weekwright.desk.app.Search;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Workplace;
import weekwright.desk.view.search.SearchStrip;

/** Begins a search, shows how it goes, ends it. */
final class SearchRoutes {
    private final WeekRoutes weeks;
    private final Searches searches;
    private final Templates templates;

    SearchRoutes(WeekRoutes weeks, Searches searches, Templates templates) {
        this.weeks = weeks;
        this.searches = searches;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/search", this::show);
        routes.post("/w/{folder}/search", this::begin);
        routes.post("/w/{folder}/search/end", request -> change(request, Search::end));
        routes.post("/w/{folder}/search/drop", request -> change(request, Search::drop));
        routes.post("/w/{folder}/search/away", request -> {
            searches.putAway(weeks.place(request));
            show(request);
        });
    }

    private void begin(Context request) {
        Workplace place = weeks.place(request);
        int seen = WeekRoutes.revision(request);
        Workplace.Seen now = place.now();
        if (now.revision().number() != seen) {
            throw weeks.moved(request, now, seen);
        }
        int seconds = WeekRoutes.number(request, "seconds");
        if (!SearchStrip.SECONDS.contains(seconds)) {
            throw new Refusal(400, "A search cannot take that long", "Choose one of the times on the page.");
        }
        searches.ask(place, now, seconds, "yes".equals(request.formParam("afresh")));
        show(request);
    }

    private void change(Context request, Consumer<Search> change) {
        searches.of(weeks.place(request)).ifPresent(change);
        show(request);
    }

    /** The strip, and where a search is on the best plan so far in place of the week. */
    private void show(Context request) {
        if (Templates.isPart(request)) {
            templates.part(request, "live.jte", "page", weeks.page(request, weeks.place(request)));
        } else {
            request.redirect(WeekRoutes.base(request), HttpStatus.SEE_OTHER);
        }
    }
}
