package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.NextWeeks;
import weekwright.desk.app.NextWeeks.Before;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Shelf;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Contents;
import weekwright.desk.view.page.NextPage;
import weekwright.desk.view.page.NextPage.Choice;
import weekwright.desk.view.page.NextPage.Form;
import weekwright.desk.view.page.StartPages;
import weekwright.model.change.NextWeek;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Begins the next week from one that is there, in a folder of its own. */
final class NextRoutes {
    private static final int UNUSABLE = 422;
    private static final int FIRST_SECONDS = 2;

    private final Shelf shelf;
    private final WeekRoutes weeks;
    private final Searches searches;
    private final Templates templates;

    NextRoutes(Shelf shelf, WeekRoutes weeks, Searches searches, Templates templates) {
        this.shelf = shelf;
        this.weeks = weeks;
        this.searches = searches;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/next", this::ask);
        routes.post("/w/{folder}/next", this::begin);
    }

    private void ask(Context request) {
        Seen seen = weeks.place(request).now();
        int week = week(Guards.field(request.queryParam("week")), seen.scenario());
        Form form = new NextForms(seen.scenario(), week).empty();
        templates.page(request, "next.jte", page(request, seen, form, List.of()));
    }

    /** The week that is asked for; else the latest with one game. */
    private static int week(String asked, Scenario scenario) {
        if (asked.matches("[0-9]{1,2}") && Integer.parseInt(asked) < scenario.weeks()) {
            return Integer.parseInt(asked);
        }
        return NextWeek.latestWithOneGame(scenario);
    }

    private void begin(Context request) {
        Seen seen = weeks.seen(request, weeks.place(request));
        NextForms forms =
                new NextForms(seen.scenario(), week(Guards.field(request.formParam("week")), seen.scenario()));
        Form form = forms.sent(request);
        try {
            NextWeek next = forms.read(form);
            Contents first = NextWeeks.contents(before(seen), next, form.asPlanned(), form.pins(), shelf.planner());
            String folder = shelf.begin(NextForms.folder(form), "Begun from " + request.pathParam("folder"), first);
            shelf.open(folder).ifPresent(place -> searches.ask(place, place.now(), FIRST_SECONDS, false));
            request.redirect(WeekRoutes.base(folder), HttpStatus.SEE_OTHER);
        } catch (InputFault fault) {
            request.status(UNUSABLE);
            templates.page(request, "next.jte", page(request, seen, form, fault.problems()));
        }
    }

    private static Before before(Seen seen) {
        return new Before(seen.scenario(), seen.judged().plan(), seen.log());
    }

    private NextPage page(Context request, Seen seen, Form form, List<String> problems) {
        Scenario scenario = seen.scenario();
        String base = WeekRoutes.base(request);
        return new NextPage(
                base,
                scenario.title(),
                seen.revision().number(),
                StartPages.week(scenario, form.week()),
                choices(scenario, base, form.week()),
                StartPages.carried(scenario),
                known(scenario, form),
                problems,
                form,
                held(scenario, seen.judged().plan(), form.week()),
                shelf.only() != null);
    }

    private static List<Choice> choices(Scenario scenario, String base, int chosen) {
        return IntStream.range(0, scenario.weeks())
                .mapToObj(week ->
                        new Choice(StartPages.week(scenario, week), base + "/next?week=" + week, week == chosen))
                .toList();
    }

    private static List<String> known(Scenario scenario, Form form) {
        try {
            LocalDate first = LocalDate.parse(form.firstDay());
            return new NextWeek("next", "", first, form.week(), List.of())
                    .known(scenario).stream().map(StartPages::fixture).toList();
        } catch (java.time.format.DateTimeParseException e) {
            return List.of();
        }
    }

    private static int held(Scenario scenario, Plan plan, int week) {
        LocalDate first = NextWeek.firstDay(scenario, week);
        String key = "/" + first + "/";
        long placed = plan.placements().stream()
                .filter(one -> one.pin() != null && !one.start().date().isBefore(first))
                .map(Placement::start)
                .filter(start -> start.date().isBefore(first.plusDays(7)))
                .count();
        long out = plan.leftOut().stream()
                .filter(one -> one.pin() != null)
                .map(LeftOut::id)
                .filter(id -> id.contains(key))
                .count();
        return (int) (placed + out);
    }
}
