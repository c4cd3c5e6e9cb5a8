package weekwright.desk.view.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.PlanPage.Day;
import weekwright.desk.view.plan.PlanPage.Lane;
import weekwright.desk.view.plan.PlanPage.Week;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Lays a judged plan out by week, group and day. */
public final class PlanPages {
    private static final Totals CLEAN = new Totals(0, 0, 0, 0);

    private final Scenario scenario;
    private final Judged judged;
    private final Names names;
    private final Entries entries;

    private PlanPages(Scenario scenario, Judged judged) {
        this.scenario = scenario;
        this.judged = judged;
        this.names = new Names(scenario);
        this.entries = new Entries(scenario, names, judged.plan());
    }

    /** The page of a judged plan. */
    public static PlanPage of(Scenario scenario, Judged judged) {
        return new PlanPages(scenario, judged).page();
    }

    /** How a plan stands, in one sentence. */
    public static String verdict(Plan plan) {
        Totals totals = plan.totals();
        return Words.verdict(totals == null ? CLEAN : totals);
    }

    private PlanPage page() {
        List<Week> weeks = new ArrayList<>();
        for (int week = 0; week < scenario.weeks(); week++) {
            weeks.add(week(week));
        }
        Plan plan = judged.plan();
        return new PlanPage(
                scenario.title(),
                Dates.span(scenario.firstDay(), scenario.lastDay()),
                scenario.zone().getId(),
                weeks,
                Standings.of(scenario, judged),
                plan.solver() == null ? null : Words.made(plan.solver()));
    }

    private Week week(int index) {
        LocalDate first = scenario.firstDay().plusDays(7L * index);
        LocalDate sunday = first.plusDays(6);
        LocalDate last = sunday.isAfter(scenario.lastDay()) ? scenario.lastDay() : sunday;
        String heading = scenario.weeks() == 1
                ? null
                : "Week " + (index + 1) + " of " + scenario.weeks() + ", " + Dates.span(first, last);
        return new Week(
                heading,
                scenario.groups().stream()
                        .map(group -> lane(group, first, last))
                        .toList());
    }

    private Lane lane(Group group, LocalDate first, LocalDate last) {
        List<Day> days = judged.days().stream()
                .filter(day -> day.group().equals(group.id()))
                .filter(day -> !day.date().isBefore(first) && !day.date().isAfter(last))
                .sorted(Comparator.comparing(DayPicture::date))
                .map(day -> day(day, group.id()))
                .toList();
        return new Lane(group.label(), days);
    }

    private Day day(DayPicture day, String group) {
        return new Day(
                day.date(), day.matchDay(), day.dayClass(), day.demand(), day.load(), entries.of(group, day.date()));
    }
}
