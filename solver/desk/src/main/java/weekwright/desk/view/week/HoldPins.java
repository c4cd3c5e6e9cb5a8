package weekwright.desk.view.week;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.week.HoldPage.ChangeField;
import weekwright.desk.view.week.HoldPage.Other;
import weekwright.desk.view.week.HoldPage.PinField;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Scenario;

/** What of a session in the hand is pinned, what can be, and what else it can have and keep. */
final class HoldPins {
    private final Scenario scenario;
    private final Names names;
    private final Pin pin;
    private final @Nullable Placement placed;

    HoldPins(Scenario scenario, Names names, Pin pin, @Nullable Placement placed) {
        this.scenario = scenario;
        this.names = names;
        this.pin = pin;
        this.placed = placed;
    }

    /** What is pinned or can be, as it is. */
    List<PinField> held() {
        List<PinField> pins = new ArrayList<>();
        if (placed != null) {
            pins.add(new PinField("start", "this time, " + Dates.clock(placed.start()), pin.start()));
            pins.add(new PinField("day", "this day, " + Dates.day(placed.start().date()), pin.day()));
            add(pins, "facility", "this place, ", names.facility(placed.facility()), pin.facility());
            add(pins, "lead", "this lead, ", names.staff(placed.lead()), pin.lead());
            String dose = Words.dose(placed.dose());
            add(pins, "dose", "", dose == null ? "the full dose" : "the " + dose, pin.dose());
            add(pins, "variant", "this lift, ", names.variant(placed.family(), placed.variant()), pin.variant());
        }
        pins.add(new PinField("out", "out of the plan", pin.out()));
        if (!pin.notDays().isEmpty()) {
            String days =
                    String.join(", ", pin.notDays().stream().map(Dates::day).toList());
            pins.add(new PinField("not-day", "off " + days, true));
        }
        return pins;
    }

    private static void add(List<PinField> pins, String kind, String word, @Nullable String value, boolean held) {
        if (value != null) {
            pins.add(new PinField(kind, word + value, held));
        }
    }

    /** What a placed session can change to by being pinned: another lead, another lift, any day but this. */
    List<ChangeField> changes() {
        if (placed == null) {
            return List.of();
        }
        return Stream.of(
                        new ChangeField("lead", "Another lead", "Change the lead", leads(placed)),
                        new ChangeField("variant", "Another lift", "Change the lift", lifts(placed)),
                        new ChangeField("not-day", "A day without it", "Bar the day", days(placed)))
                .filter(change -> !change.others().isEmpty())
                .toList();
    }

    private List<Other> leads(Placement placed) {
        return scenario.staff().stream()
                .filter(member -> member.leads(placed.family()))
                .filter(member -> !member.id().equals(placed.lead()))
                .map(member -> new Other(member.id(), member.name()))
                .toList();
    }

    private List<Other> lifts(Placement placed) {
        return Catalogue.builtIn().with(scenario.catalogue()).find(placed.family()).stream()
                .flatMap(family -> family.variants().stream())
                .filter(variant -> !variant.id().equals(placed.variant()))
                .map(variant -> new Other(variant.id(), variant.label()))
                .toList();
    }

    private List<Other> days(Placement placed) {
        LocalDate first = scenario.firstDay();
        LocalDate begin =
                first.plusWeeks(ChronoUnit.WEEKS.between(first, placed.start().date()));
        return begin.datesUntil(begin.plusWeeks(1))
                .filter(day -> !day.isAfter(scenario.lastDay()))
                .filter(day -> !pin.notDays().contains(day))
                .map(day -> new Other(day.toString(), Dates.day(day)))
                .toList();
    }
}
