package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Trials;
import weekwright.desk.app.Trials.Trial;
import weekwright.desk.app.WhatIfs;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.EventText;
import weekwright.desk.view.TwinPage;
import weekwright.desk.view.TwinPage.Choice;
import weekwright.desk.view.TwinPages;
import weekwright.desk.view.TwinPages.Side;
import weekwright.model.change.Event;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What would happen if: a second plan beside the first, kept or dropped. */
final class WhatIfRoutes {
    private final WeekRoutes weeks;
    private final Templates templates;
    private final Trials trials;

    WhatIfRoutes(WeekRoutes weeks, Templates templates, Trials trials) {
        this.weeks = weeks;
        this.templates = templates;
        this.trials = trials;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/whatif", this::show);
        routes.post("/w/{folder}/whatif", this::ask);
        routes.post("/w/{folder}/whatif/keep", this::keep);
        routes.post("/w/{folder}/whatif/drop", this::drop);
    }

    private void show(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        Scenario scenario = seen.scenario();
        templates.page(
                request,
                "whatif.jte",
                new TwinPage(
                        WeekRoutes.base(request),
                        scenario.title(),
                        seen.revision().number(),
                        seen.planned(),
                        scenario.fixtures().stream()
                                .map(one -> new Choice(one.id(), one.label() + ", " + when(one.start())))
                                .toList(),
                        scenario.facilities().stream()
                                .map(one -> new Choice(one.id(), one.label()))
                                .toList(),
                        scenario.groups().stream()
                                .map(one -> new Choice(one.id(), one.label()))
                                .toList(),
                        scenario.athletes().stream()
                                .map(one -> new Choice(one.id(), one.name()))
                                .toList(),
                        scenario.firstDay()
                                .datesUntil(scenario.lastDay().plusDays(1))
                                .map(day -> new Choice(day.toString(), Dates.day(day)))
                                .toList(),
                        trials.of(place).map(WhatIfRoutes::twins).orElse(null)));
    }

    private static String when(Moment start) {
        return Dates.day(start.date()) + " " + Dates.clock(start);
    }

    private static TwinPage.Twins twins(Trial trial) {
        return TwinPages.of(
                trial.question(),
                trial.besides(),
                new Side(trial.from().scenario(), trial.from().judged()),
                new Side(trial.answer().scenario(), trial.answer().judged()),
                trial.answer().comparison());
    }

    private void ask(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        Scenario scenario = seen.scenario();
        List<Event> events = List.of(event(request, scenario));
        trials.tried(place, seen, events, EventText.question(scenario, events), EventText.besides(scenario, events));
        request.redirect(WeekRoutes.base(request) + "/whatif#twins", HttpStatus.SEE_OTHER);
    }

    private static Event event(Context request, Scenario scenario) {
        String group = field(request, "group");
        return switch (field(request, "what")) {
            case "move" -> WhatIfs.moved(scenario, field(request, "fixture"), moment(field(request, "to")));
            case "close" -> WhatIfs.closed(scenario, field(request, "place"), day(field(request, "closed")));
            case "lose" -> WhatIfs.lost(scenario, day(field(request, "lost")), group.isEmpty() ? null : group);
            case "without" -> WhatIfs.without(scenario, field(request, "athlete"));
            default -> throw new InputFault("say what happens: choose one of the four");
        };
    }

    private static String field(Context request, String name) {
        return Guards.field(request.formParam(name));
    }

    private static Moment moment(String text) {
        try {
            return Moment.parse(text);
        } catch (DateTimeParseException e) {
            throw new InputFault("the new start is \"" + text + "\": give a date and a time, such as 2027-02-14T15:00");
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new InputFault("the day is \"" + text + "\": give a day of the plan");
        }
    }

    private void keep(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        Outcome outcome = trials.keep(place);
        weeks.done(request, place, seen, outcome, "");
    }

    private void drop(Context request) {
        trials.drop(weeks.place(request));
        request.redirect(WeekRoutes.base(request) + "/whatif", HttpStatus.SEE_OTHER);
    }
}
