package weekwright.desk.view.week;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Revision;
import weekwright.desk.view.ChangedRules;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.plan.Standings;
import weekwright.desk.view.search.Bargained;
import weekwright.desk.view.search.CouldGo;
import weekwright.desk.view.search.CouldGoes;
import weekwright.desk.view.search.Course;
import weekwright.desk.view.search.SearchStrips;
import weekwright.desk.view.search.Underway;
import weekwright.desk.view.week.WeekPage.Best;
import weekwright.desk.view.week.WeekPage.Choice;
import weekwright.desk.view.week.WeekPage.Level;
import weekwright.desk.view.week.WeekPage.Missing;
import weekwright.desk.view.week.WeekPage.Panel;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.Prices;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Solver;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Fills the page of a plan. */
public final class WeekPages {
    private static final Totals CLEAN = new Totals(0, 0, 0, 0);

    private WeekPages() {}

    /**
     * What is shown of a folder.
     *
     * @param base address of the folder
     * @param underway what is worked out; while a search for a plan is on, its best one is drawn in place of the week
     */
    public static WeekPage of(String base, Open open, Underway underway, LookAt look, List<String> news) {
        Course search = underway.search();
        Scenario scenario = open.scenario();
        Judged drawn = search != null && search.on() ? search.drawn() : null;
        boolean first = search != null && search.on() && !open.planned();
        return new WeekPage(
                base,
                look.query(),
                scenario.title(),
                Dates.span(scenario.firstDay(), scenario.lastDay()),
                scenario.zone().getId(),
                open.revision().number(),
                saved(open.revision(), scenario),
                open.planned(),
                weeks(scenario, look),
                lanes(scenario, look),
                drawn == null
                        ? Landscapes.of(scenario, first ? open.drawn() : open.judged(), open.people(), look)
                        : Landscapes.of(scenario, drawn, () -> Engine.people(scenario, drawn.plan()), look),
                first ? null : panel(scenario, open.judged()),
                couldGo(base, open, underway.couldGo(), look),
                SearchStrips.of(base, look.query(), open.revision().number(), open.planned(), search),
                news);
    }

    /** What could go, and how the search for it stands. */
    public static CouldGo couldGo(String base, Open open, @Nullable Bargained now, LookAt look) {
        Totals totals = open.planned() ? open.judged().plan().totals() : null;
        return CouldGoes.of(base, look.query(), open.revision().number(), totals, now);
    }

    /** A revision in words, e.g. {@code Revision 3, Mon 8 Feb 12:00: Planned}. */
    public static String saved(Revision revision, Scenario scenario) {
        Moment at = Moment.at(revision.at().truncatedTo(ChronoUnit.MINUTES), scenario.zone());
        return "Revision " + revision.number() + ", " + Dates.day(at.date()) + " " + Dates.clock(at) + ": "
                + revision.label();
    }

    private static List<Choice> weeks(Scenario scenario, LookAt look) {
        List<Choice> weeks = new ArrayList<>();
        for (int week = 1; week <= scenario.weeks(); week++) {
            weeks.add(choice("Week " + week, new LookAt(week, look.by()), look));
        }
        weeks.add(choice(
                scenario.weeks() == 1 ? "From afar" : "All weeks from afar", new LookAt(LookAt.ALL, look.by()), look));
        return weeks;
    }

    private static List<Choice> lanes(Scenario scenario, LookAt look) {
        return Arrays.stream(LookAt.By.values())
                .filter(by -> by != LookAt.By.ATHLETE || !scenario.athletes().isEmpty())
                .filter(by -> by != LookAt.By.PLACE || !scenario.facilities().isEmpty())
                .map(by -> choice("By " + by.word(), new LookAt(look.week(), by), look))
                .toList();
    }

    private static Choice choice(String label, LookAt to, LookAt now) {
        return new Choice(label, to.query(), to.equals(now));
    }

    /** How a plan stands. */
    public static Panel panel(Scenario scenario, Judged judged) {
        PlanPage.Standing standing = Standings.of(scenario, judged);
        Plan plan = judged.plan();
        Solver solver = plan.solver();
        return new Panel(
                standing.verdict(),
                totals(plan.totals()),
                judged.helpSought(),
                standing.breaches().stream()
                        .map(breaches ->
                                new Level(breaches.level().id(), Words.heading(breaches.level()), breaches.lines()))
                        .toList(),
                missing(new Names(scenario), plan, standing.leftOut()),
                standing.told(),
                softened(scenario, plan),
                standing.kept(),
                solver == null ? null : Words.made(solver),
                Words.CAUTION);
    }

    private static List<WeekPage.Softened> softened(Scenario scenario, Plan plan) {
        ChangedRules changed = new ChangedRules(scenario);
        return plan.softened().stream().map(id -> softened(changed, id)).toList();
    }

    private static WeekPage.Softened softened(ChangedRules changed, String id) {
        List<Group> groups = changed.groups(id);
        Group first = groups.isEmpty() ? null : groups.get(0);
        String of = first == null ? "" : "?of=" + first.id();
        return new WeekPage.Softened(
                changed.title(id), changed.how(first, Rulebook.builtIn().rule(id)), of + "#rule-" + id);
    }

    private static List<Missing> missing(Names names, Plan plan, List<PlanPage.Line> lines) {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> {
                    LeftOut left = plan.leftOut().get(i);
                    return new Missing(lines.get(i), left.id(), best(names, left.cheapest()));
                })
                .toList();
    }

    /** Where a session left out would cost least; what would break more that must hold is not offered by a button. */
    private static @Nullable Best best(Names names, @Nullable CheapestOption option) {
        if (option == null || option.change().must() > 0) {
            return null;
        }
        String place = names.facility(option.facility());
        String label = Dates.day(option.start().date()) + " at " + Dates.clock(option.start())
                + (place == null ? "" : ", " + place) + ": " + Prices.said(option.change());
        return new Best(
                option.start().toString(),
                Objects.requireNonNullElse(option.facility(), ""),
                option.dose().id(),
                label);
    }

    private static List<WeekPage.Totals> totals(@Nullable Totals given) {
        Totals totals = given == null ? CLEAN : given;
        return List.of(
                total("must", totals.must()),
                total("key", totals.key()),
                total("main", totals.main()),
                total("wishes", totals.want()));
    }

    private static WeekPage.Totals total(String level, double amount) {
        return new WeekPage.Totals(level, Dates.number(amount), amount == 0);
    }
}
