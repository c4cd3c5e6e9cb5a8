package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Things of a person's day with little time between them: whoever comes, comes once for all of them. */
record Visit(List<Thing> things) {
    /** The visits of a day, in order. */
    static List<Visit> of(Day day) {
        return of(
                day,
                day.things().stream()
                        .filter(Visit::counts)
                        .sorted(Comparator.comparing(Thing::occupiedFrom))
                        .toList());
    }

    static boolean counts(Thing thing) {
        return thing.family() != null && !thing.past();
    }

    private static List<Visit> of(Day day, List<Thing> things) {
        double joined = day.the().settings().get(day.person().mainGroup()).number("visits-per-day", "joinedMinutes");
        List<Visit> visits = new ArrayList<>();
        for (Thing thing : things) {
            Visit last = visits.isEmpty() ? null : visits.get(visits.size() - 1);
            if (last != null
                    && Duration.between(last.end(), thing.occupiedFrom()).toMinutes() <= joined) {
                last.things.add(thing);
            } else {
                visits.add(new Visit(new ArrayList<>(List.of(thing))));
            }
        }
        return visits;
    }

    Instant start() {
        return things.get(0).occupiedFrom();
    }

    Instant end() {
        return things.stream()
                .map(Thing::occupiedTo)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    boolean hasFixture() {
        return things.stream().anyMatch(Thing::isFixture);
    }

    boolean hasPlacement() {
        return things.stream().anyMatch(Thing::placed);
    }
}
