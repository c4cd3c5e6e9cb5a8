package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.form.Form;
import weekwright.desk.form.Knowns;
import weekwright.desk.form.Part;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormPage;
import weekwright.desk.view.page.KnownsPage;

/** What a coach knows and wants: lists of it, and a form for each thing. */
final class KnownRoutes extends FormRoutes<Form> {
    private static final String NEW = "new";

    KnownRoutes(WeekRoutes weeks, Templates templates) {
        super(weeks, templates);
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/knowns", this::knowns);
        addForm(routes, "/w/{folder}/knowns/{part}/{thing}");
    }

    private void knowns(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = place.now();
        templates.page(
                request,
                "knowns.jte",
                new KnownsPage(
                        WeekRoutes.base(request),
                        seen.scenario().title(),
                        weeks.saved(seen),
                        place.news(),
                        Knowns.of(WeekRoutes.base(request), seen.scenario())));
    }

    @Override
    void whole(Context request, Seen seen, Form form) {
        templates.page(request, "known.jte", page(request, seen, form));
    }

    private static Part part(Context request) {
        return Part.named(request.pathParam("part")).orElseThrow(Refusal::nothingThere);
    }

    @Override
    Form form(Context request, Seen seen) {
        Part part = part(request);
        String thing = request.pathParam("thing");
        if (part == Part.WEEK) {
            return Form.of(seen.scenario(), part, 0);
        }
        if (thing.equals(NEW)) {
            return Form.fresh(seen.scenario(), part);
        }
        int index = Form.find(seen.scenario(), part, thing).orElseThrow(Refusal::nothingThere);
        return Form.of(seen.scenario(), part, index);
    }

    @Override
    Form filled(Context request, Seen seen) {
        return form(request, seen).filled(request.formParamMap());
    }

    @Override
    FormPage page(Context request, Seen seen, Form form) {
        Part part = part(request);
        boolean fresh = request.pathParam("thing").equals(NEW);
        String base = WeekRoutes.base(request);
        FormField shown = form.shown();
        return new FormPage(
                base,
                base + "/knowns/" + part.id() + "/" + request.pathParam("thing"),
                fresh ? "A new " + part.one() : form.label(),
                base + "/knowns#" + part.id(),
                seen.revision().number(),
                fresh,
                fresh || part == Part.WEEK ? "" : "Take it out",
                cautions(part),
                form.elsewhere(),
                shown);
    }

    private static List<String> cautions(Part part) {
        return part == Part.ATHLETES
                ? List.of("What is written here about a person stays on this machine. A restriction is typed in as a"
                        + " clinician gave it; this program never clears anybody to play or to train.")
                : List.of();
    }

    @Override
    Outcome save(Context request, Workplace place, Seen seen, Form form, boolean out) {
        boolean fresh = request.pathParam("thing").equals(NEW);
        String done = out ? "taken out" : fresh ? "added" : "changed";
        return place.change(seen.revision().number(), form.label() + " " + done, form.changed());
    }

    @Override
    String next(Context request, Seen seen) {
        return "/knowns#" + part(request).id();
    }
}
