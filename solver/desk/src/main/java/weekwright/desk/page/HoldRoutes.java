package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Mending;
import weekwright.desk.app.Mending.Mended;
import weekwright.desk.app.Moving;
import weekwright.desk.app.Moving.Move;
import weekwright.desk.app.Pinning;
import weekwright.desk.app.Pinning.Kind;
import weekwright.desk.app.Pinning.Pinned;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.view.plan.Changed;
import weekwright.desk.view.week.HoldPages;
import weekwright.engine.explain.Judged;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/** A session in the hand: what each start would do, where it is put, what is pinned of it; and what would help. */
final class HoldRoutes {
    private static final int GONE = 409;

    private final WeekRoutes weeks;
    private final Templates templates;

    HoldRoutes(WeekRoutes weeks, Templates templates) {
        this.weeks = weeks;
        this.templates = templates;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/hold", this::hold);
        routes.get("/w/{folder}/hold/say", this::say);
        routes.post("/w/{folder}/move", this::move);
        routes.post("/w/{folder}/pin", this::pin);
        routes.post("/w/{folder}/mend", this::mend);
    }

    private void hold(Context request) {
        Seen seen = known(request);
        String session = session(request, seen);
        String layer = Guards.field(request.queryParam("layer"));
        templates.part(
                request,
                "hold.jte",
                "page",
                HoldPages.of(
                        WeekRoutes.base(request),
                        Views.open(seen),
                        session,
                        seen.questions().options(session),
                        new HoldPages.Way(
                                WeekRoutes.look(request, seen),
                                Guards.field(request.queryParam("lane")),
                                layer.matches("[0-9]{1,3}") ? Integer.valueOf(layer) : null)));
    }

    /** What is held belongs to a revision: of another there is nothing to say. */
    private Seen known(Context request) {
        Seen seen = weeks.place(request).now();
        String revision = Guards.field(request.queryParam("revision"));
        if (!revision.equals(Integer.toString(seen.revision().number()))) {
            throw new Refusal(GONE, "The week has changed meanwhile", "It is shown anew; hold the session again.");
        }
        return seen;
    }

    private static String session(Context request, Seen seen) {
        String session = field(request, "session");
        if (!seen.questions().knows(session)) {
            throw Refusal.nothingThere();
        }
        return session;
    }

    private static String field(Context request, String name) {
        String query = request.queryParam(name);
        return Guards.field(query == null ? request.formParam(name) : query);
    }

    private void say(Context request) {
        Seen seen = known(request);
        Move move = asked(request, session(request, seen));
        String said = seen.questions().said(move.session(), move.start(), move.facility(), move.dose());
        request.contentType("text/plain; charset=utf-8").result(said == null ? "It cannot lie there." : said);
    }

    private static Move asked(Context request, String session) {
        String facility = field(request, "facility");
        return new Move(
                session,
                moment(field(request, "start")),
                facility.isEmpty() ? null : facility,
                one(Dose.values(), Dose::id, field(request, "dose")));
    }

    private static Moment moment(String text) {
        try {
            return Moment.parse(text);
        } catch (DateTimeParseException e) {
            throw Refusal.misread();
        }
    }

    private static <T> T one(T[] all, java.util.function.Function<T, String> id, String text) {
        return Arrays.stream(all)
                .filter(known -> id.apply(known).equals(text))
                .findFirst()
                .orElseThrow(Refusal::misread);
    }

    private void move(Context request) {
        weeks.change(request, place -> {
            Seen seen = weeks.seen(request, place);
            Move move = asked(request, session(request, seen));
            Judged judged = Moving.to(place.planner(), seen.scenario(), seen, move);
            String label = Changed.moved(seen.scenario(), move.session(), move.start());
            return place.save(seen.revision().number(), label, judged);
        });
    }

    private void pin(Context request) {
        weeks.change(request, place -> {
            Seen seen = weeks.seen(request, place);
            String session = session(request, seen);
            Pinned pinned =
                    Pinning.pin(place.planner(), seen.scenario(), seen.judged().plan(), session, wish(request));
            String label = Changed.pinned(seen.scenario(), session, pinned.text());
            return place.save(seen.revision().number(), label, pinned.judged());
        });
    }

    private void mend(Context request) {
        weeks.change(request, place -> {
            int revision = WeekRoutes.revision(request);
            Seen seen = place.helped(revision).orElseThrow(() -> weeks.moved(request, place.now(), revision));
            Mended mended = Mending.of(place.planner(), seen, WeekRoutes.number(request, "finding"));
            String label = Changed.mended(mended.text());
            return place.change(seen.revision().number(), label, mended.scenario(), mended.judged());
        });
    }

    private static Pinning.Request wish(Context request) {
        String kind = field(request, "kind");
        boolean clear = field(request, "clear").equals("yes");
        @Nullable Kind known = kind.isEmpty() ? null : one(Kind.values(), Kind::id, kind);
        if (known == null && !clear) {
            throw Refusal.misread();
        }
        String value = field(request, "value");
        return new Pinning.Request(known, value.isEmpty() ? null : value, clear);
    }
}
