package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Intake;
import weekwright.desk.intake.Preview;
import weekwright.desk.intake.What;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.page.TakePage;
import weekwright.desk.view.page.TakePage.Choice;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Takes in what is pasted from a spreadsheet or opened from a calendar: first a preview, then the same is taken. */
final class TakeRoutes {
    private static final int UNUSABLE = 422;

    private final WeekRoutes weeks;
    private final Templates templates;

    TakeRoutes(WeekRoutes weeks, Templates templates) {
        this.weeks = weeks;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/take", this::ask);
        routes.post("/w/{folder}/take", this::done);
    }

    private void ask(Context request) {
        Seen seen = weeks.place(request).now();
        templates.page(
                request,
                "take.jte",
                page(
                        request,
                        seen,
                        Guards.field(request.queryParam("what")),
                        Guards.field(request.queryParam("of")),
                        "",
                        "",
                        List.of(),
                        null));
    }

    private static TakePage page(
            Context request,
            Seen seen,
            String what,
            String owner,
            String pasted,
            String content,
            List<String> problems,
            TakePage.@Nullable Preview preview) {
        Scenario scenario = seen.scenario();
        return new TakePage(
                WeekRoutes.base(request),
                scenario.title(),
                seen.revision().number(),
                kinds(what),
                owners(scenario, owner),
                pasted,
                content,
                problems,
                preview);
    }

    private static List<Choice> kinds(String chosen) {
        List<Choice> kinds = new ArrayList<>();
        for (What what : What.values()) {
            kinds.add(new Choice(what.id(), label(what), what.id().equals(chosen)));
        }
        return kinds;
    }

    private static String label(What what) {
        return switch (what) {
            case FIXTURES -> "Fixtures (table or calendar)";
            case WINDOWS -> "Free or opening hours (table or calendar)";
            case CLOSURES -> "When a place is closed (table or calendar)";
            case AWAY -> "When somebody is away (table or calendar)";
            case ATHLETES -> "Athletes (table)";
            case MARKS -> "Marks (table)";
            case MINUTES -> "Minutes played, such as Saturday's (table)";
            case EXPECTED -> "Minutes expected (table)";
        };
    }

    private static List<Choice> owners(Scenario scenario, String chosen) {
        List<Choice> owners = new ArrayList<>();
        owners.add(new Choice("", "As it says, or the only group", chosen.isEmpty()));
        add(owners, "group:", scenario.groups(), Group::id, Group::label, chosen);
        add(
                owners,
                "fixture:",
                scenario.fixtures(),
                Fixture::id,
                fixture -> fixture.label() + ", " + Dates.day(fixture.start().date()),
                chosen);
        add(owners, "facility:", scenario.facilities(), Facility::id, Facility::label, chosen);
        add(owners, "athlete:", scenario.athletes(), Athlete::id, Athlete::name, chosen);
        return owners;
    }

    private static <T> void add(
            List<Choice> into,
            String kind,
            List<T> things,
            Function<T, String> id,
            Function<T, String> label,
            String chosen) {
        for (T thing : things) {
            String value = kind + id.apply(thing);
            into.add(new Choice(value, label.apply(thing), value.equals(chosen)));
        }
    }

    private void done(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        byte[] bytes = TakeForms.bytes(request);
        try {
            if (bytes.length == 0) {
                throw new InputFault("nothing was given: paste rows from a spreadsheet, or choose a file");
            }
            Preview preview = Intake.preview(
                    bytes,
                    seen.scenario(),
                    TakeForms.wanted(field(request, "what"), field(request, "of")),
                    TakeForms.answers(request));
            boolean rest = request.formParam(Answers.REST) != null;
            if (field(request, "do").equals("take") && (rest || preview.open().isEmpty())) {
                take(request, place, seen, preview.take(rest), preview.counts());
            } else {
                show(request, seen, bytes, List.of(), preview);
            }
        } catch (InputFault fault) {
            request.status(UNUSABLE);
            show(request, seen, bytes, fault.problems(), null);
        }
    }

    private static String field(Context request, String name) {
        return Guards.field(request.formParam(name));
    }

    private void show(Context request, Seen seen, byte[] bytes, List<String> problems, @Nullable Preview preview) {
        boolean pasted = !field(request, "pasted").isBlank();
        templates.page(
                request,
                "take.jte",
                page(
                        request,
                        seen,
                        field(request, "what"),
                        field(request, "of"),
                        pasted ? new String(bytes, StandardCharsets.UTF_8) : "",
                        pasted ? "" : Base64.getEncoder().encodeToString(bytes),
                        problems,
                        preview == null ? null : TakeForms.shown(request, preview)));
    }

    private void take(Context request, Workplace place, Seen seen, Scenario taken, String counts) {
        String label = label(What.named(field(request, "what"))).replaceFirst(" \\(.*", "") + " taken in: " + counts;
        Outcome outcome = place.change(seen.revision().number(), label, taken);
        weeks.done(request, place, seen, outcome, "/knowns");
    }
}
