package weekwright.engine.recalculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;

/** People of whom all the same is known are judged alike; how many they are decides whether a session waits for them. */
final class Cohorts {
    private Cohorts() {}

    static List<List<Person>> of(Scenario scenario, Roster roster, List<Thing> things) {
        Map<List<Object>, List<Person>> alike = new LinkedHashMap<>();
        for (Person person : roster.people()) {
            alike.computeIfAbsent(whatIsKnown(scenario, things, person), key -> new ArrayList<>())
                    .add(person);
        }
        return List.copyOf(alike.values());
    }

    private static List<Object> whatIsKnown(Scenario scenario, List<Thing> things, Person person) {
        List<Object> known = new ArrayList<>();
        known.add(person.groups());
        Athlete athlete = person.athlete();
        known.add(athlete == null ? List.of() : athlete.restrictions());
        known.add(athlete == null ? List.of() : athlete.windows());
        known.add(athlete == null ? List.of() : athlete.away());
        things.stream().filter(Thing::isFixture).forEach(fixture -> known.add(fixture.minutesPlayed(person)));
        scenario.commitments()
                .forEach(commitment -> known.add(commitment.athletes().contains(person.name())));
        scenario.history().forEach(entry -> {
            known.add(entry.except().contains(person.name()));
            known.add(String.valueOf(report(entry, person)));
        });
        return known;
    }

    private static @Nullable PersonEntry report(LogEntry entry, Person person) {
        return entry.people().stream()
                .filter(one -> one.athlete().equals(person.name()))
                .findFirst()
                .map(one -> new PersonEntry(
                        "", one.rpe(), one.minutes(), one.results(), one.topSpeedShare(), one.soreness(), one.note()))
                .orElse(null);
    }
}
