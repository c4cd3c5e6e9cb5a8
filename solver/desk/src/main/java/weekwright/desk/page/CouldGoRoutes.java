package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import weekwright.desk.app.Bargain;
import weekwright.desk.app.Bargains;
import weekwright.desk.app.Bargains.Given;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.view.plan.Changed;
import weekwright.desk.view.week.WeekPages;

/** What could go: looked for, stopped, tried. */
final class CouldGoRoutes {
    private final WeekRoutes weeks;
    private final Bargains bargains;
    private final Templates templates;

    CouldGoRoutes(WeekRoutes weeks, Bargains bargains, Templates templates) {
        this.weeks = weeks;
        this.bargains = bargains;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/could-go", this::show);
        routes.post("/w/{folder}/could-go", this::look);
        routes.post("/w/{folder}/could-go/end", this::end);
        routes.post("/w/{folder}/could-go/away", this::putAway);
        routes.post("/w/{folder}/could-go/try", this::attempt);
    }

    private void look(Context request) {
        Workplace place = weeks.place(request);
        bargains.ask(place, weeks.seen(request, place));
        show(request);
    }

    private void end(Context request) {
        bargains.of(weeks.place(request)).ifPresent(Bargain::end);
        show(request);
    }

    private void putAway(Context request) {
        bargains.putAway(weeks.place(request));
        show(request);
    }

    private void attempt(Context request) {
        weeks.change(request, place -> {
            Seen seen = weeks.seen(request, place);
            Given given = bargains.given(place, seen, WeekRoutes.number(request, "number"));
            return place.change(
                    seen.revision().number(), Changed.given(given.step()), given.scenario(), given.judged());
        });
    }

    private void show(Context request) {
        if (!Templates.isPart(request)) {
            request.redirect(WeekRoutes.base(request), HttpStatus.SEE_OTHER);
            return;
        }
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        templates.part(
                request,
                "couldgo.jte",
                "part",
                WeekPages.couldGo(
                        WeekRoutes.base(request),
                        Views.open(seen),
                        Views.bargained(bargains, place, seen),
                        WeekRoutes.look(request, seen)));
    }
}
