package weekwright.desk.view.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.Entries.Laid;
import weekwright.desk.view.plan.WallPage.Cell;
import weekwright.desk.view.plan.WallPage.Item;
import weekwright.desk.view.plan.WallPage.Lane;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.Ids;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Lays a week out for the wall. */
public final class WallPages {
    private final Scenario scenario;
    private final Judged judged;
    private final Names names;
    private final Entries entries;
    private final List<LocalDate> days;

    private WallPages(Scenario scenario, Judged judged, int week) {
        this.scenario = scenario;
        this.judged = judged;
        names = new Names(scenario);
        entries = new Entries(scenario, names, judged.plan());
        LocalDate first = scenario.firstDay().plusDays(7L * (week - 1));
        days = first.datesUntil(first.plusDays(7))
                .filter(day -> !day.isAfter(scenario.lastDay()))
                .toList();
    }

    /**
     * A week of a judged plan.
     *
     * @param week its number, from 1
     * @param groups ids of the groups to show
     */
    public static WallPage of(Scenario scenario, Judged judged, int week, List<String> groups) {
        return new WallPages(scenario, judged, week).page(groups);
    }

    private WallPage page(List<String> groups) {
        return new WallPage(
                scenario.title(),
                Dates.span(days.get(0), days.get(days.size() - 1)),
                scenario.zone().getId(),
                days.stream().map(Dates::day).toList(),
                scenario.groups().stream()
                        .filter(group -> groups.contains(group.id()))
                        .map(this::lane)
                        .toList(),
                Words.CAUTION);
    }

    private Lane lane(Group group) {
        return new Lane(
                group.label(), days.stream().map(day -> cell(group.id(), day)).toList());
    }

    private Cell cell(String group, LocalDate day) {
        DayPicture picture = judged.days().stream()
                .filter(one -> one.group().equals(group) && one.date().equals(day))
                .findFirst()
                .orElseThrow();
        String head = Stream.of(
                        Dates.matchDay(picture.matchDay()), picture.dayClass().id())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" · "));
        return new Cell(
                head,
                picture.dayClass().id(),
                entries.all().stream()
                        .filter(laid ->
                                laid.groups().contains(group) && laid.date().equals(day))
                        .sorted(Comparator.comparing(
                                laid -> laid.entry().start().instant(scenario.zone())))
                        .map(this::item)
                        .toList());
    }

    private Item item(Laid laid) {
        PlanPage.Entry entry = laid.entry();
        String end = entry.end() == null ? "" : "–" + Dates.clock(entry.end());
        return new Item(
                Ids.of(entry.kind()),
                Dates.clock(entry.start()) + end,
                entry.label(),
                entry.place(),
                more(laid.placement()));
    }

    private String more(@Nullable Placement placement) {
        return placement == null
                ? ""
                : Stream.of(
                                Words.dose(placement.dose()),
                                names.variant(placement.family(), placement.variant()),
                                Words.whom(placement),
                                names.staff(placement.lead()))
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(" · "));
    }
}
