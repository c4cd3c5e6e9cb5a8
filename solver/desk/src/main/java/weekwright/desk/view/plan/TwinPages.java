package weekwright.desk.view.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.TwinPage.Day;
import weekwright.desk.view.plan.TwinPage.Item;
import weekwright.desk.view.plan.TwinPage.Lane;
import weekwright.desk.view.plan.TwinPage.Listed;
import weekwright.desk.view.plan.TwinPage.Twins;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Change;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.Shift;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Puts two plans of the same days side by side, differences marked in words. */
public final class TwinPages {
    private TwinPages() {}

    /** A plan with the scenario that it is for. */
    public record Side(Scenario scenario, Judged judged) {}

    /** Two plans side by side. */
    public static Twins of(String question, List<String> besides, Side before, Side after, Comparison comparison) {
        List<Lane> lanes = new ArrayList<>();
        List<String> groups = after.scenario().groups().stream().map(Group::id).toList();
        for (int week = 1; week <= after.scenario().weeks(); week++) {
            WallPage first = WallPages.of(before.scenario(), before.judged(), week, groups);
            WallPage second = WallPages.of(after.scenario(), after.judged(), week, groups);
            for (int lane = 0; lane < second.lanes().size(); lane++) {
                lanes.add(lane(
                        first.days(), first.lanes().get(lane), second.lanes().get(lane)));
            }
        }
        return new Twins(
                question,
                besides,
                comparison.text(),
                Words.verdict(comparison.before()),
                Words.verdict(comparison.after()),
                lanes,
                lists(comparison));
    }

    private static Lane lane(List<String> days, WallPage.Lane before, WallPage.Lane after) {
        List<Day> all = new ArrayList<>();
        for (int day = 0; day < days.size(); day++) {
            WallPage.Cell first = before.cells().get(day);
            WallPage.Cell second = after.cells().get(day);
            all.add(new Day(
                    days.get(day),
                    !first.items().equals(second.items()),
                    first.head(),
                    second.head(),
                    items(first, second, "goes"),
                    items(second, first, "new here")));
        }
        return new Lane(after.group(), all);
    }

    private static List<Item> items(WallPage.Cell cell, WallPage.Cell other, String mark) {
        List<Item> items = new ArrayList<>();
        for (WallPage.Item item : cell.items()) {
            boolean same = other.items().contains(item);
            boolean alike = other.items().stream().anyMatch(one -> one.label().equals(item.label()));
            items.add(new Item(item.time(), item.label(), where(item), same ? "" : alike ? "differs" : mark));
        }
        return items;
    }

    private static String where(WallPage.Item item) {
        return List.of(Objects.requireNonNullElse(item.where(), ""), item.more()).stream()
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private static List<Listed> lists(Comparison comparison) {
        List<Listed> lists = new ArrayList<>();
        add(lists, "What the change breaks by itself", comparison.broke());
        add(
                lists,
                "Sessions that differ",
                comparison.sessions().stream().map(Change::text).toList());
        add(lists, "Kept better", comparison.better().stream().map(Shift::text).toList());
        add(
                lists,
                "Kept worse than before the change",
                comparison.worse().stream().map(Shift::text).toList());
        return lists;
    }

    private static void add(List<Listed> lists, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            lists.add(new Listed(heading, lines));
        }
    }
}
