package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.form.LogForm;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.FormField;
import weekwright.desk.view.FormPage;
import weekwright.desk.view.LogFormPage;
import weekwright.desk.view.LogPage;
import weekwright.desk.view.Names;
import weekwright.model.change.AsPlanned;
import weekwright.model.plan.Log;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** What was done, day by day. */
final class LogRoutes {
    private static final int UNUSABLE = 422;
    private static final String ADD = "add:";
    private static final String REMOVE = "remove:";

    private final WeekRoutes weeks;
    private final Templates templates;
    private final Clock clock;

    LogRoutes(WeekRoutes weeks, Templates templates, Clock clock) {
        this.weeks = weeks;
        this.templates = templates;
        this.clock = clock;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/log", this::day);
        routes.get("/w/{folder}/log/entry", this::show);
        routes.post("/w/{folder}/log/entry", this::done);
        routes.post("/w/{folder}/log/entry/check", this::check);
    }

    private static List<AsPlanned> planned(Seen seen) {
        return AsPlanned.of(seen.scenario(), seen.judged().plan().placements());
    }

    private static String label(Scenario scenario, AsPlanned one) {
        Names names = new Names(scenario);
        String what = one.label() == null ? names.family(one.entry().family()) : one.label();
        return what + ", " + names.group(one.entry().group());
    }

    private void day(Context request) {
        Seen seen = weeks.place(request).now();
        Scenario scenario = seen.scenario();
        LocalDate day = chosen(request, scenario);
        String base = WeekRoutes.base(request);
        templates.page(
                request,
                "log.jte",
                new LogPage(
                        base,
                        scenario.title(),
                        weeks.saved(seen),
                        Dates.day(day),
                        scenario.firstDay()
                                .datesUntil(scenario.lastDay().plusDays(1))
                                .map(one -> new LogPage.Day(Dates.day(one), base + "/log?day=" + one, one.equals(day)))
                                .toList(),
                        planned(seen).stream()
                                .filter(one -> one.entry().start().date().equals(day))
                                .map(one -> thing(base, seen, one))
                                .toList()));
    }

    /** The day that is asked for; else today, or the day of the plan that is nearest to it. */
    private LocalDate chosen(Context request, Scenario scenario) {
        String asked = request.queryParam("day");
        LocalDate today = LocalDate.ofInstant(clock.instant(), scenario.zone());
        LocalDate day = today;
        try {
            day = asked == null ? today : LocalDate.parse(asked);
        } catch (DateTimeParseException e) {
            throw Refusal.nothingThere();
        }
        if (day.isBefore(scenario.firstDay())) {
            return scenario.firstDay();
        }
        return day.isAfter(scenario.lastDay()) ? scenario.lastDay() : day;
    }

    private static LogPage.Thing thing(String base, Seen seen, AsPlanned one) {
        Log log = seen.log();
        List<LogEntry> known = log == null ? List.of() : log.entries();
        String state = known.stream()
                .filter(one::isOf)
                .map(LogRoutes::state)
                .findFirst()
                .orElse("not written down yet");
        String note = Dates.clock(one.entry().start()) + ", " + one.entry().minutes() + " min";
        String key = URLEncoder.encode(one.key(), StandardCharsets.UTF_8);
        return new LogPage.Thing(label(seen.scenario(), one), note, state, base + "/log/entry?of=" + key);
    }

    private static String state(LogEntry entry) {
        if (!entry.done()) {
            return "missed";
        }
        return "done, " + entry.minutes() + " min" + (entry.rpe() == null ? "" : ", RPE " + plain(entry.rpe()));
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static AsPlanned asked(Context request, Seen seen) {
        String key = Guards.field(request.queryParam("of"));
        return planned(seen).stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(Refusal::nothingThere);
    }

    private static LogFormPage page(Context request, Seen seen, AsPlanned planned, LogForm form) {
        String base = WeekRoutes.base(request);
        FormField shown = form.shown();
        LocalDate day = planned.entry().start().date();
        FormPage page = new FormPage(
                base,
                base + "/log/entry",
                label(seen.scenario(), planned) + ", " + Dates.day(day),
                base + "/log?day=" + day,
                seen.revision().number(),
                false,
                form.isThere() ? "Take it out of the log" : "",
                List.of(
                        "What somebody reports of pain or soreness is for you and those who treat, and stands on no sheet."
                                + " Pain is a matter for a clinician."),
                form.elsewhere(),
                shown);
        boolean unread = !form.elsewhere().isEmpty();
        return new LogFormPage(
                page,
                unread ? Guards.field(request.formParam("quick")) : "",
                Guards.field(request.formParam("metres-of-quick")));
    }

    private void show(Context request) {
        Seen seen = weeks.place(request).now();
        AsPlanned planned = asked(request, seen);
        templates.page(
                request,
                "log-entry.jte",
                shown(request, seen, planned, LogForm.of(seen.scenario(), seen.log(), planned)));
    }

    private static LogFormPage shown(Context request, Seen seen, AsPlanned planned, LogForm form) {
        LogFormPage page = page(request, seen, planned, form);
        String address = page.form().address() + "?of=" + URLEncoder.encode(planned.key(), StandardCharsets.UTF_8);
        return new LogFormPage(page.form().at(address), page.quick(), page.metres());
    }

    private static LogForm filled(Context request, Seen seen, AsPlanned planned) {
        Map<String, List<String>> sent = new LinkedHashMap<>(request.formParamMap());
        return LogForm.of(seen.scenario(), seen.log(), planned)
                .filled(
                        sent,
                        Guards.field(request.formParam("quick")),
                        Guards.field(request.formParam("metres-of-quick")));
    }

    private void check(Context request) {
        Seen seen = weeks.seen(request, weeks.place(request));
        AsPlanned planned = asked(request, seen);
        LogForm form = filled(request, seen, planned);
        form.read(true);
        templates.part(
                request,
                "faults.jte",
                "page",
                page(request, seen, planned, form).form());
    }

    private void done(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        AsPlanned planned = asked(request, seen);
        String wish = Guards.field(request.formParam("do"));
        LogForm form = wish.equals("delete")
                ? LogForm.of(seen.scenario(), seen.log(), planned)
                : filled(request, seen, planned);
        if (wish.startsWith(ADD)) {
            again(request, seen, planned, form.grown(wish.substring(ADD.length())));
        } else if (wish.startsWith(REMOVE)) {
            again(request, seen, planned, form.shrunk(wish.substring(REMOVE.length())));
        } else {
            save(request, place, seen, planned, form, wish.equals("delete"));
        }
    }

    private void again(Context request, Seen seen, AsPlanned planned, LogForm form) {
        LogFormPage page = shown(request, seen, planned, form);
        if (Templates.isPart(request)) {
            templates.part(request, "form.jte", "page", page.form());
        } else {
            templates.page(request, "log-entry.jte", page);
        }
    }

    private void save(Context request, Workplace place, Seen seen, AsPlanned planned, LogForm form, boolean out) {
        if (!(out ? form.without() : form.read(false))) {
            request.status(UNUSABLE);
            again(request, seen, planned, form);
            return;
        }
        String label = label(seen.scenario(), planned) + (out ? " taken out of the log" : " written down");
        Outcome outcome = place.log(seen.revision().number(), label, form.changed());
        weeks.done(
                request,
                place,
                seen,
                outcome,
                "/log?day=" + planned.entry().start().date());
    }
}
