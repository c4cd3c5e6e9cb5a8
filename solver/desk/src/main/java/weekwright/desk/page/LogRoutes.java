package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.form.LogForm;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormPage;
import weekwright.desk.view.page.LogFormPage;
import weekwright.desk.view.page.LogPage;
import weekwright.model.change.AsPlanned;
import weekwright.model.plan.Log;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** What was done, day by day. */
final class LogRoutes extends FormRoutes<LogForm> {
    private final Clock clock;

    LogRoutes(WeekRoutes weeks, Templates templates, Clock clock) {
        super(weeks, templates);
        this.clock = clock;
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/log", this::day);
        addForm(routes, "/w/{folder}/log/entry");
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
        int reports = entry.people().size();
        return "done, " + entry.minutes() + " min" + (entry.rpe() == null ? "" : ", RPE " + plain(entry.rpe()))
                + (reports == 0 ? "" : reports == 1 ? ", 1 athlete reported" : ", " + reports + " athletes reported");
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

    @Override
    FormPage page(Context request, Seen seen, LogForm form) {
        AsPlanned planned = asked(request, seen);
        String base = WeekRoutes.base(request);
        FormField shown = form.shown();
        LocalDate day = planned.entry().start().date();
        return new FormPage(
                base,
                base + "/log/entry?of=" + URLEncoder.encode(planned.key(), StandardCharsets.UTF_8),
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
    }

    @Override
    void whole(Context request, Seen seen, LogForm form) {
        FormPage page = page(request, seen, form);
        String quick = page.faults().isEmpty() ? "" : Guards.field(request.formParam("quick"));
        templates.page(
                request,
                "log-entry.jte",
                new LogFormPage(page, quick, Guards.field(request.formParam("metres-of-quick"))));
    }

    @Override
    LogForm form(Context request, Seen seen) {
        return LogForm.of(seen.scenario(), seen.log(), asked(request, seen));
    }

    @Override
    LogForm filled(Context request, Seen seen) {
        return form(request, seen)
                .filled(
                        request.formParamMap(),
                        Guards.field(request.formParam("quick")),
                        Guards.field(request.formParam("metres-of-quick")));
    }

    @Override
    Outcome save(Context request, Workplace place, Seen seen, LogForm form, boolean out) {
        String label = label(seen.scenario(), asked(request, seen)) + (out ? " taken out of the log" : " written down");
        return place.log(seen.revision().number(), label, form.changed());
    }

    @Override
    String next(Context request, Seen seen) {
        return "/log?day=" + asked(request, seen).entry().start().date();
    }
}
