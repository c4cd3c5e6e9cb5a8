package weekwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import weekwright.model.change.AthleteLost;
import weekwright.model.change.DayLost;
import weekwright.model.change.Event;
import weekwright.model.change.FacilityClosed;
import weekwright.model.change.FixtureMoved;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What may happen to a scenario, in words. */
public final class EventText {
    private final Scenario scenario;
    private final Names names;

    private EventText(Scenario scenario) {
        this.scenario = scenario;
        names = new Names(scenario);
    }

    /** The question: {@code What if Town track is closed on Wed 10 Feb and …?}. */
    public static String question(Scenario scenario, List<Event> events) {
        EventText text = new EventText(scenario);
        return "What if " + String.join(" and ", events.stream().map(text::said).toList()) + "?";
    }

    /** What the events bring with them, one sentence each. */
    public static List<String> besides(Scenario scenario, List<Event> events) {
        EventText text = new EventText(scenario);
        List<String> all = new ArrayList<>();
        events.forEach(event -> text.note(event, all));
        return all;
    }

    private String said(Event event) {
        if (event instanceof FixtureMoved moved) {
            return fixture(moved) + " moves to " + when(moved.to());
        }
        if (event instanceof FacilityClosed closed) {
            return names.facility(closed.facility()) + " is closed on " + Dates.day(closed.day());
        }
        if (event instanceof DayLost lost) {
            String who = lost.group() == null ? "nobody" : names.group(lost.group()) + " does not";
            return who + (lost.group() == null ? " trains on " : " train on ") + Dates.day(lost.day());
        }
        return name(((AthleteLost) event).athlete()) + " is not there";
    }

    private void note(Event event, List<String> all) {
        if (event instanceof DayLost lost) {
            lost.fallingAway(scenario)
                    .forEach(one -> all.add(one.label() + " (" + when(one.start()) + ") falls away."));
            scenario.fixtures().stream()
                    .filter(one -> one.start().date().equals(lost.day()))
                    .filter(one -> lost.group() == null || one.groups().contains(lost.group()))
                    .forEach(one -> all.add(one.label() + " stays where it is."));
        }
    }

    private String fixture(FixtureMoved moved) {
        return scenario.fixtures().stream()
                .filter(one -> one.id().equals(moved.fixture()))
                .map(Fixture::label)
                .findFirst()
                .orElse(moved.fixture());
    }

    private String name(String id) {
        return scenario.athletes().stream()
                .filter(one -> one.id().equals(id))
                .map(Athlete::name)
                .findFirst()
                .orElse(id);
    }

    private static String when(Moment moment) {
        return Dates.day(moment.date()) + " " + Dates.clock(moment);
    }
}
