package weekwright.scenarios;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** Scenarios with a little more room than before: whatever was possible stays possible. */
public final class Grown {
    private static final int LAST_CLOSING = 23 * 60;

    private Grown() {}

    /** The same with one more place, like one that is there already, open at all times. */
    public static Scenario byAFacility(Scenario scenario, Random random) {
        Facility like = any(scenario.facilities(), random);
        List<Facility> facilities = new ArrayList<>(scenario.facilities());
        facilities.add(new Facility(
                "one-more", "One more place", like.offers(), like.straightMetres(), like.room(), List.of(), List.of()));
        return scenario.withFacilities(facilities);
    }

    /** The same with one opening window an hour longer; unchanged where every place is open at all times or till late. */
    public static Scenario byAnHour(Scenario scenario, Random random) {
        List<Facility> closing = scenario.facilities().stream()
                .filter(facility -> facility.open().stream().anyMatch(Grown::mayLast))
                .toList();
        if (closing.isEmpty()) {
            return scenario;
        }
        Facility longer = any(closing, random);
        Window window =
                longer.open().stream().filter(Grown::mayLast).findFirst().orElseThrow();
        List<Window> open = longer.open().stream()
                .map(one -> one.equals(window) ? anHourLonger(one) : one)
                .toList();
        Facility withMore = longer.withOpen(open);
        return scenario.withFacilities(scenario.facilities().stream()
                .map(one -> one.equals(longer) ? withMore : one)
                .toList());
    }

    private static boolean mayLast(Window window) {
        return window.to().minutes() < LAST_CLOSING;
    }

    private static Window anHourLonger(Window window) {
        return new Window(
                window.days(),
                window.date(),
                window.from(),
                new ClockTime(window.to().minutes() + 60),
                window.firstDate(),
                window.lastDate());
    }

    private static Facility any(List<Facility> facilities, Random random) {
        return facilities.get(random.nextInt(facilities.size()));
    }
}
