package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Trials;
import weekwright.desk.app.Trials.Trial;
import weekwright.desk.app.WhatIfs;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.EventText;
import weekwright.desk.view.plan.TwinPage;
import weekwright.desk.view.plan.TwinPage.Asked;
import weekwright.desk.view.plan.TwinPage.Choice;
import weekwright.desk.view.plan.TwinPages;
import weekwright.desk.view.plan.TwinPages.Side;
import weekwright.model.change.Event;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What would happen if: a second plan beside the first, kept or dropped. */
final class WhatIfRoutes {
    private static final int UNUSABLE = 422;
    private static final List<String> FIELDS = List.of("fixture", "to", "place", "closed", "lost", "group", "athlete");

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
        templates.page(request, "whatif.jte", page(request, place, place.now(), Asked.NOTHING));
    }

    private TwinPage page(Context request, Workplace place, Seen seen, Asked asked) {
        Scenario scenario = seen.scenario();
        return new TwinPage(
                WeekRoutes.base(request),
                scenario.title(),
                seen.revision().number(),
                seen.planned(),
                choices(scenario.fixtures(), one -> new Choice(one.id(), one.label() + ", " + when(one.start()))),
                choices(scenario.facilities(), one -> new Choice(one.id(), one.label())),
                choices(scenario.groups(), one -> new Choice(one.id(), one.label())),
                choices(scenario.athletes(), one -> new Choice(one.id(), one.name())),
                choices(
                        scenario.firstDay()
                                .datesUntil(scenario.lastDay().plusDays(1))
                                .toList(),
                        day -> new Choice(day.toString(), Dates.day(day))),
                asked,
                trials.of(place).map(WhatIfRoutes::twins).orElse(null));
    }

    private static <T> List<Choice> choices(List<T> things, Function<T, Choice> choice) {
        return things.stream().map(choice).toList();
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

    /** Asks; what cannot happen is said in its form, where all stays as it was filled in. */
    private void ask(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        Scenario scenario = seen.scenario();
        try {
            List<Event> events = List.of(event(request, scenario));
            trials.tried(
                    place, seen, events, EventText.question(scenario, events), EventText.besides(scenario, events));
            request.redirect(WeekRoutes.base(request) + "/whatif#twins", HttpStatus.SEE_OTHER);
        } catch (InputFault fault) {
            request.status(UNUSABLE);
            templates.page(request, "whatif.jte", page(request, place, seen, asked(request, fault.problems())));
        }
    }

    private static Asked asked(Context request, List<String> problems) {
        Map<String, String> fields = new HashMap<>();
        FIELDS.forEach(name -> fields.put(name, field(request, name)));
        return new Asked(field(request, "what"), fields, problems);
    }

    private static Event event(Context request, Scenario scenario) {
        String group = field(request, "group");
        return switch (field(request, "what")) {
            case "move" -> WhatIfs.moved(scenario, field(request, "fixture"), moment(field(request, "to")));
            case "close" -> WhatIfs.closed(scenario, field(request, "place"), day(field(request, "closed")));
            case "lose" -> WhatIfs.lost(scenario, day(field(request, "lost")), group.isEmpty() ? null : group);
            case "without" -> WhatIfs.without(scenario, field(request, "athlete"));
            default -> throw Refusal.misread();
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
