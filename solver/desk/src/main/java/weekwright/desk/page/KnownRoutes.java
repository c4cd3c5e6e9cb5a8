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
import weekwright.desk.view.FormField;
import weekwright.desk.view.FormPage;
import weekwright.desk.view.KnownsPage;

/** What a coach knows and wants: lists of it, and a form for each thing. */
final class KnownRoutes {
    private static final int UNUSABLE = 422;
    private static final String NEW = "new";
    private static final String ADD = "add:";
    private static final String REMOVE = "remove:";

    private final WeekRoutes weeks;
    private final Templates templates;

    KnownRoutes(WeekRoutes weeks, Templates templates) {
        this.weeks = weeks;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/knowns", this::knowns);
        routes.get("/w/{folder}/knowns/{part}/{thing}", this::show);
        routes.post("/w/{folder}/knowns/{part}/{thing}", this::done);
        routes.post("/w/{folder}/knowns/{part}/{thing}/check", this::check);
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

    private void show(Context request) {
        Seen seen = weeks.place(request).now();
        templates.page(request, "known.jte", page(request, seen, part(request), form(request, seen)));
    }

    private static Part part(Context request) {
        return Part.named(request.pathParam("part")).orElseThrow(Refusal::nothingThere);
    }

    private static Form form(Context request, Seen seen) {
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

    private static FormPage page(Context request, Seen seen, Part part, Form form) {
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

    /** The form as it is filled in at this moment: what is wrong with it, field by field. */
    private void check(Context request) {
        Seen seen = weeks.seen(request, weeks.place(request));
        Form form = form(request, seen).filled(request.formParamMap());
        form.read(true);
        templates.part(request, "faults.jte", "page", page(request, seen, part(request), form));
    }

    private void done(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        String wish = Guards.field(request.formParam("do"));
        if (wish.equals("delete")) {
            Form form = form(request, seen);
            save(request, place, seen, form, form.without(), "taken out");
            return;
        }
        Form form = form(request, seen).filled(request.formParamMap());
        if (wish.startsWith(ADD)) {
            again(request, seen, form.grown(wish.substring(ADD.length())));
        } else if (wish.startsWith(REMOVE)) {
            again(request, seen, form.shrunk(wish.substring(REMOVE.length())));
        } else {
            boolean fresh = request.pathParam("thing").equals(NEW);
            save(request, place, seen, form, form.read(false), fresh ? "added" : "changed");
        }
    }

    private void again(Context request, Seen seen, Form form) {
        FormPage page = page(request, seen, part(request), form);
        if (Templates.isPart(request)) {
            templates.part(request, "form.jte", "page", page);
        } else {
            templates.page(request, "known.jte", page);
        }
    }

    private void save(Context request, Workplace place, Seen seen, Form form, boolean sound, String done) {
        if (!sound) {
            request.status(UNUSABLE);
            again(request, seen, form);
            return;
        }
        Part part = part(request);
        String label = form.label() + " " + done;
        Outcome outcome = place.change(seen.revision().number(), label, form.changed());
        weeks.done(request, place, seen, outcome, "/knowns#" + part.id());
    }
}
