package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Named;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.view.load.LoadPages;
import weekwright.desk.view.load.LoadReports;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.model.answer.LoadReport;
import weekwright.model.load.Spread.Divisor;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Scenario;

/** Load planned and done. */
final class LoadRoutes {
    private final WeekRoutes weeks;
    private final Templates templates;

    LoadRoutes(WeekRoutes weeks, Templates templates) {
        this.weeks = weeks;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/load", this::load);
    }

    private void load(Context request) {
        Seen seen = weeks.place(request).now();
        Scenario scenario = seen.scenario();
        String asked = request.queryParam("athlete");
        @Nullable
        String athlete = asked == null ? null : Named.athlete(scenario, asked).id();
        Sources sources = new Sources(scenario, seen.planned() ? seen.judged() : null, seen.people(), seen.log());
        LoadReport report = LoadReports.of(sources, athlete, Divisor.SAMPLE, Units.METRIC);
        templates.page(
                request,
                "load.jte",
                LoadPages.of(WeekRoutes.base(request), weeks.saved(seen), scenario, report, seen.judged(), athlete));
    }
}
