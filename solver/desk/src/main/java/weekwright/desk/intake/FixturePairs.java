package weekwright.desk.intake;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Named;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/**
 * Which entries of a file are which fixtures of a scenario: by what the coach says; by the key of their source; by name and
 * start; by name alone where that is clear.
 */
final class FixturePairs {
    private final Scenario scenario;
    private final List<Fixture> known;
    private final Map<Integer, Fixture> pairs = new HashMap<>();
    private final Set<String> taken = new HashSet<>();
    /** Names by which two writings of the same can be told: of entries by row, of fixtures by id. */
    private final Map<Object, String> names = new HashMap<>();

    /**
     * Pairs entries with fixtures.
     *
     * @param entries entries that are wanted
     * @param known fixtures of the group concerned
     */
    FixturePairs(Scenario scenario, List<Found> entries, List<Fixture> known, Answers answers, Wanted wanted) {
        this.scenario = scenario;
        this.known = known;
        entries.forEach(entry -> names.put(entry.row(), Labels.plain(entry.label())));
        known.forEach(fixture -> names.put(fixture.id(), Labels.plain(fixture.label())));
        for (Found entry : entries) {
            answers.same(entry.row()).ifPresent(id -> pair(entry, Named.fixture(scenario, id)));
        }
        entries.forEach(entry -> byKey(entry).ifPresent(fixture -> pair(entry, fixture)));
        entries.forEach(entry -> free(entry)
                .filter(fixture -> sameName(entry, fixture) && startsWith(entry, fixture))
                .forEach(fixture -> pair(entry, fixture)));
        byName(entries);
    }

    private void pair(Found entry, Fixture fixture) {
        if (!pairs.containsKey(entry.row()) && taken.add(fixture.id())) {
            pairs.put(entry.row(), fixture);
        }
    }

    private Optional<Fixture> byKey(Found entry) {
        String key = entry.key();
        if (key == null) {
            return Optional.empty();
        }
        String suffix = Labels.suffix(key);
        return known.stream()
                .filter(fixture -> fixture.id().equals(key) || fixture.id().endsWith(suffix))
                .findFirst();
    }

    private Stream<Fixture> free(Found entry) {
        return pairs.containsKey(entry.row())
                ? Stream.empty()
                : known.stream().filter(fixture -> !taken.contains(fixture.id()));
    }

    private boolean sameName(Found entry, Fixture fixture) {
        return Objects.equals(names.get(entry.row()), names.get(fixture.id()));
    }

    private boolean startsWith(Found entry, Fixture fixture) {
        When start = entry.start();
        if (start == null) {
            return false;
        }
        return start.instant() == null
                ? start.date().equals(fixture.start().date())
                : start.instant().equals(fixture.start().instant(scenario.zone()));
    }

    /** Where a name stands once in the file and once among the fixtures that are left, they are the same. */
    private void byName(List<Found> entries) {
        Map<String, Long> inFile =
                entries.stream().collect(Collectors.groupingBy(entry -> name(entry.row()), Collectors.counting()));
        Map<String, List<Fixture>> left =
                unmatched().stream().collect(Collectors.groupingBy(fixture -> name(fixture.id())));
        for (Found entry : entries) {
            String name = name(entry.row());
            List<Fixture> fixtures = left.getOrDefault(name, List.of());
            if (entry.key() == null && inFile.getOrDefault(name, 0L) == 1 && fixtures.size() == 1) {
                pair(entry, fixtures.get(0));
            }
        }
    }

    private String name(Object of) {
        return names.getOrDefault(of, "");
    }

    /** The fixture that an entry is, or null. */
    @Nullable
    Fixture of(Found entry) {
        return pairs.get(entry.row());
    }

    /** Fixtures that no entry is. */
    List<Fixture> unmatched() {
        return known.stream().filter(fixture -> !taken.contains(fixture.id())).toList();
    }

    /** A fixture that is no entry's, has the same name, or is on at the same time. */
    Optional<Fixture> rival(Found entry, Instant start, Instant end) {
        return unmatched().stream()
                .filter(fixture -> sameName(entry, fixture) || overlaps(fixture, start, end))
                .findFirst();
    }

    private boolean overlaps(Fixture fixture, Instant start, Instant end) {
        Instant from = fixture.start().instant(scenario.zone());
        Instant to = from.plusSeconds(60L * fixture.minutes());
        return from.isBefore(end) && start.isBefore(to);
    }
}
