package weekwright.desk.view.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.desk.view.brief.BriefPage.Day;
import weekwright.desk.view.brief.BriefPage.Item;
import weekwright.desk.view.brief.BriefPage.Sheet;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.plan.PlanPage.Entry;
import weekwright.desk.view.plan.PlanPage.Kind;
import weekwright.desk.view.plan.PlanPage.Lane;
import weekwright.desk.view.plan.PlanPages;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Lays out a week of a judged plan for those who lead the team. */
public final class BriefPages {
    private final Scenario scenario;
    private final Judged judged;
    private final Wish wish;

    private BriefPages(Scenario scenario, Judged judged, Wish wish) {
        this.scenario = scenario;
        this.judged = judged;
        this.wish = wish;
    }

    /**
     * What is wanted of it.
     *
     * @param week which week, from 0
     * @param group id of the only group, or null for all
     * @param since the plan as it was given out, or null
     */
    public record Wish(
            int week, @Nullable String group, @Nullable Since since) {}

    /**
     * A plan as it was given out.
     *
     * @param scenario the scenario of that time, or null where it is not known
     * @param plan the plan, judged under the scenario of today
     * @param at when it was given out, or null where nobody wrote it down
     */
    public record Since(
            @Nullable Scenario scenario,
            Plan plan,
            @Nullable Moment at) {}

    /** The page. */
    public static BriefPage of(Scenario scenario, Judged judged, Wish wish) {
        return new BriefPages(scenario, judged, wish).page();
    }

    private BriefPage page() {
        List<Lane> lanes =
                PlanPages.of(scenario, judged).weeks().get(wish.week()).lanes();
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < lanes.size(); i++) {
            Group group = scenario.groups().get(i);
            if (wish.group() == null || wish.group().equals(group.id())) {
                sheets.add(sheet(group, lanes.get(i)));
            }
        }
        return new BriefPage(scenario.title(), sheets);
    }

    private Sheet sheet(Group group, Lane lane) {
        LocalDate first = lane.days().get(0).date();
        LocalDate last = lane.days().get(lane.days().size() - 1).date();
        Since since = wish.since();
        return new Sheet(
                group.label(),
                Dates.span(first, last),
                scenario.zone().getId(),
                lane.days().stream().map(BriefPages::day).toList(),
                new WeekReasons(scenario, judged.plan(), group, lane).sentences(),
                new GivenUp(scenario, judged.plan(), group, first, last).lines(),
                since == null ? null : new PlanNews(scenario, group, first, last).since(since, judged.plan()));
    }

    private static Day day(PlanPage.Day day) {
        return new Day(
                Dates.day(day.date()),
                Dates.matchDay(day.matchDay()),
                day.dayClass().id(),
                day.demand(),
                day.entries().stream().map(BriefPages::item).toList());
    }

    private static Item item(Entry entry) {
        String dose = entry.dose() == null ? "" : ", " + entry.dose();
        return new Item(
                Dates.clock(entry.start()),
                Words.brief(entry.label()) + dose,
                Objects.requireNonNullElse(entry.place(), ""),
                entry.kind() == Kind.FIXTURE);
    }
}
