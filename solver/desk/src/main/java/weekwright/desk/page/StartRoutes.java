package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Shelf;
import weekwright.desk.store.Contents;
import weekwright.desk.view.page.StartPage;
import weekwright.desk.view.page.StartPage.BlankForm;
import weekwright.desk.view.page.StartPage.DemoCard;
import weekwright.desk.view.page.StartPage.Link;
import weekwright.desk.view.page.StartPage.Way;
import weekwright.desk.view.page.StartPages;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** Where a coach begins: a folder that is there, an invented demo, a blank week, files. */
final class StartRoutes {
    private static final int UNUSABLE = 422;
    private static final int FIRST_SECONDS = 2;
    private static final int MOST_BYTES = 16 * 1024 * 1024 + 1;

    private final Shelf shelf;
    private final Searches searches;
    private final Templates templates;
    private final Rehearsal rehearsal;

    StartRoutes(Shelf shelf, Searches searches, Templates templates, Rehearsal rehearsal) {
        this.shelf = shelf;
        this.searches = searches;
        this.templates = templates;
        this.rehearsal = rehearsal;
    }

    void add(RoutesConfig routes) {
        routes.get("/", this::start);
        routes.post("/begin/demo", this::demo);
        routes.post("/begin/blank", this::blank);
        routes.post(Guards.FILES, this::files);
    }

    private void start(Context request) {
        List<String> names = shelf.names();
        if (shelf.only() != null && !names.isEmpty()) {
            request.redirect(WeekRoutes.base(names.get(0)), HttpStatus.SEE_OTHER);
        } else {
            templates.page(request, "start.jte", page(null, BlankForms.EMPTY, names(), List.of()));
            rehearsal.begin();
        }
    }

    private Map<Way, String> names() {
        Map<Way, String> names = new EnumMap<>(Way.class);
        for (Way way : Way.values()) {
            names.put(way, shelf.free(way.folder()));
        }
        return names;
    }

    private StartPage page(@Nullable Way failed, BlankForm blank, Map<Way, String> names, List<String> problems) {
        return new StartPage(
                shelf.where(),
                shelf.weeks().stream().map(StartRoutes::link).toList(),
                shelf.only(),
                Scenarios.all().stream()
                        .map(demo -> new DemoCard(demo.name(), demo.title(), demo.note()))
                        .toList(),
                names,
                blank,
                failed,
                problems);
    }

    private static Link link(Shelf.Week week) {
        String base = WeekRoutes.base(week.folder());
        Scenario scenario = week.scenario();
        return scenario == null
                ? new Link("A week", "whose scenario.json cannot be read as it stands", week.folder(), base, "")
                : new Link(scenario.title(), StartPages.note(scenario), week.folder(), base, base + "/next");
    }

    private void demo(Context request) {
        String name = Guards.field(request.formParam("demo"));
        begin(request, Way.INVENTED, BlankForms.EMPTY, "Demo " + name, () -> Inputs.documents(Inputs.demo(name), null));
    }

    private void blank(Context request) {
        BlankForm form = BlankForms.of(request);
        begin(
                request,
                Way.BLANK,
                form,
                "A blank week",
                () -> new Contents(BlankForms.week(form).scenario(), null, null));
    }

    private void files(Context request) {
        begin(request, Way.FILES, BlankForms.EMPTY, "Opened from files", () -> {
            byte[] scenario = bytes(request.uploadedFile("scenario"));
            if (scenario == null) {
                throw new InputFault("no scenario was chosen: give a scenario.json");
            }
            return Inputs.documents(scenario, bytes(request.uploadedFile("plan")));
        });
    }

    private static byte @Nullable [] bytes(@Nullable UploadedFile file) {
        if (file == null || file.size() == 0) {
            return null;
        }
        try (InputStream in = file.content()) {
            return in.readNBytes(MOST_BYTES);
        } catch (IOException e) {
            throw new InputFault("the file could not be read: try again");
        }
    }

    private interface First {
        Contents contents();
    }

    /** Begins a week and goes there; what cannot be used is told in its form, with all that was typed in. */
    private void begin(Context request, Way way, BlankForm form, String label, First first) {
        rehearsal.end();
        try {
            String folder = shelf.begin(request.formParam("folder"), label, first.contents());
            // What was just begun is planned at once: an empty week is not what anybody came for.
            shelf.open(folder)
                    .filter(place -> !place.now().planned())
                    .ifPresent(place -> searches.ask(place, place.now(), FIRST_SECONDS, false));
            request.redirect(WeekRoutes.base(folder), HttpStatus.SEE_OTHER);
        } catch (InputFault fault) {
            request.status(UNUSABLE);
            Map<Way, String> names = names();
            names.put(way, Guards.field(request.formParam("folder")));
            templates.page(request, "start.jte", page(way, form, names, fault.problems()));
        }
    }
}
