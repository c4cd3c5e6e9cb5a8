package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.export.Tables;
import weekwright.desk.export.Tables.Kind;
import weekwright.desk.export.Wall;
import weekwright.desk.view.LookAt;
import weekwright.desk.view.WallPage;
import weekwright.desk.view.WallPages;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** What a coach takes along of a week: the documents themselves, tables for a spreadsheet, a sheet for the wall. */
final class GiveRoutes {
    private static final int LONGEST_NAME = 40;
    private static final String CSV = "text/csv; charset=utf-8";
    private static final String JSON = "application/json; charset=utf-8";

    private final WeekRoutes weeks;

    GiveRoutes(WeekRoutes weeks) {
        this.weeks = weeks;
    }

    void add(RoutesConfig routes) {
        routes.get(
                "/w/{folder}/give/scenario.json",
                request -> give(request, "scenario.json", JSON, seen -> utf8(Documents.write(seen.scenario()))));
        routes.get(
                "/w/{folder}/give/plan.json",
                request -> give(
                        request,
                        "plan.json",
                        JSON,
                        seen -> utf8(Documents.write(seen.judged().plan()))));
        for (Kind kind : Kind.values()) {
            String name = kind.name().toLowerCase(Locale.ROOT) + ".csv";
            routes.get(
                    "/w/{folder}/give/" + name,
                    request -> give(
                            request, name, CSV, seen -> utf8(Tables.of(kind, seen.scenario(), seen.judged(), false))));
        }
        routes.get(
                "/w/{folder}/give/wall.pdf",
                request -> give(request, "wall.pdf", "application/pdf", seen -> Wall.pdf(wall(request, seen))));
        routes.get(
                "/w/{folder}/give/wall.html",
                request ->
                        give(request, "wall.html", "text/html; charset=utf-8", seen -> Wall.html(wall(request, seen))));
    }

    /** Makes what is given of what is seen. */
    private interface Maker {
        byte[] of(Seen seen);
    }

    private void give(Context request, String what, String type, Maker maker) {
        Seen seen = weeks.place(request).now();
        request.header(
                "Content-Disposition",
                "attachment; filename=\"" + named(seen.scenario().title()) + what + "\"");
        request.contentType(type).result(maker.of(seen));
    }

    /** The beginning of a file's name: of a title only small letters, digits and hyphens, so that no header can be broken. */
    static String named(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceFirst("^-", "");
        String name = plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceFirst("-$", "");
        return name.isEmpty() ? "" : name + "-";
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static WallPage wall(Context request, Seen seen) {
        Scenario scenario = seen.scenario();
        LookAt look = WeekRoutes.look(request, seen);
        List<String> groups = scenario.groups().stream().map(Group::id).toList();
        return WallPages.of(scenario, seen.judged(), Math.max(1, look.week()), groups);
    }
}
