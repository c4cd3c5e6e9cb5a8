package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.InputFault;
import weekwright.desk.view.page.Notice;
import weekwright.desk.view.page.Notice.Way;

/** What a coach is told where something could not be done. Nothing is written into a log: it could hold names. */
final class Faults {
    private static final int UNUSABLE = 422;
    private static final int NO_DISK = 503;
    private static final int OURS = 500;
    private static final List<Way> BACK = List.of(new Way("To the beginning", "/"));

    private final Templates templates;

    Faults(Templates templates) {
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.exception(Refusal.class, (fault, request) -> templates.notice(request, fault.status(), fault.notice()));
        routes.exception(InputFault.class, this::unusable);
        routes.exception(FileFault.class, this::noDisk);
        routes.exception(Exception.class, this::ours);
        routes.error(404, request -> {
            if (request.resultInputStream() == null
                    || !"text/html; charset=utf-8".equals(request.res().getContentType())) {
                templates.notice(request, 404, Refusal.nothingThere().notice());
            }
        });
    }

    private void unusable(InputFault fault, Context request) {
        templates.notice(request, UNUSABLE, new Notice("That cannot be used yet", fault.problems(), List.of()));
    }

    private void noDisk(FileFault fault, Context request) {
        templates.notice(
                request,
                NO_DISK,
                new Notice("The folder cannot be used now", List.of(String.valueOf(fault.getMessage())), BACK));
    }

    private void ours(Exception fault, Context request) {
        String kind = fault.getClass().getSimpleName();
        List<String> lines = List.of(
                "It is not your doing (" + kind + "). What was saved before is safe; nothing new was saved.",
                "Please report what you did when it happened.");
        templates.notice(request, OURS, new Notice("A fault of the program", lines, BACK));
    }
}
