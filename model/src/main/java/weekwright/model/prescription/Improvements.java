package weekwright.model.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.Plain;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.Family;
import weekwright.model.load.DoneLoad;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Result;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/**
 * Marks that are bettered by what a log has measured. Nothing is taken by itself: they are found here, shown, and taken by
 * {@link #taken} where a coach asks for it. Runs are held only against marks over the same distance, from the same start and
 * with the same timing; lifts by the maximum that they stand for.
 *
 * @param better the marks, the best of each kind once, in the order of the athletes
 * @param unused what was measured and cannot be used, each with the reason in words
 */
public record Improvements(List<Improvement> better, List<String> unused) {
    /** From this distance on nobody runs from a flying start. */
    private static final double LONG = 100;

    public Improvements {
        better = List.copyOf(better);
        unused = List.copyOf(unused);
    }

    /**
     * What a log betters.
     *
     * @param timing how its runs were timed, or null where nobody says
     */
    public static Improvements of(Scenario scenario, List<LogEntry> entries, @Nullable Timing timing, RepMax formula) {
        Finder finder = new Finder(scenario, timing, formula);
        entries.forEach(finder::entry);
        return finder.found();
    }

    /** The scenario with these marks added to its athletes'. */
    public Scenario taken(Scenario scenario) {
        Map<String, List<Mark>> added = better.stream()
                .collect(Collectors.groupingBy(
                        one -> one.athlete().id(), Collectors.mapping(Improvement::mark, Collectors.toList())));
        List<Athlete> athletes = scenario.athletes().stream()
                .map(athlete -> with(athlete, added.getOrDefault(athlete.id(), List.of())))
                .toList();
        return scenario.withAthletes(athletes);
    }

    private static Athlete with(Athlete athlete, List<Mark> marks) {
        return athlete.withMarks(
                Stream.concat(athlete.marks().stream(), marks.stream()).toList());
    }

    private static final class Finder {
        private final Scenario scenario;
        private final Catalogue catalogue;
        private final @Nullable Timing timing;
        private final RepMax formula;
        private final Map<List<Object>, Improvement> best = new LinkedHashMap<>();
        private final Set<String> unused = new LinkedHashSet<>();

        Finder(Scenario scenario, @Nullable Timing timing, RepMax formula) {
            this.scenario = scenario;
            this.timing = timing;
            this.formula = formula;
            catalogue = Catalogue.builtIn().with(scenario.catalogue());
        }

        void entry(LogEntry entry) {
            for (PersonEntry person : entry.people()) {
                Athlete athlete = athlete(person.athlete());
                if (athlete != null && DoneLoad.took(entry, athlete.id())) {
                    person.results().forEach(result -> result(athlete, entry, result));
                }
            }
        }

        private @Nullable Athlete athlete(String id) {
            return scenario.athletes().stream()
                    .filter(athlete -> athlete.id().equals(id))
                    .findFirst()
                    .orElse(null);
        }

        private void result(Athlete athlete, LogEntry entry, Result result) {
            LocalDate day = entry.start().date();
            Mark mark = result.measure() == Measure.LIFT
                    ? new Mark(
                            Measure.LIFT,
                            null,
                            null,
                            null,
                            null,
                            result.lift(),
                            result.kg(),
                            result.repetitions(),
                            null,
                            day)
                    : sprint(athlete, entry, result, day);
            if (mark == null) {
                return;
            }
            String fault = MarkFaults.of(mark);
            if (fault == null) {
                compare(athlete, mark);
            } else {
                unused.add(athlete.name() + ": " + fault);
            }
        }

        private @Nullable Mark sprint(Athlete athlete, LogEntry entry, Result result, LocalDate day) {
            double metres = Objects.requireNonNull(result.metres());
            double seconds =
                    result.seconds().stream().min(Comparator.naturalOrder()).orElse(0.0);
            SprintStart start = start(athlete, catalogue.family(entry.family()), metres);
            String run = athlete.name() + ": " + Plain.number(metres) + " m in " + Plain.number(seconds) + " s";
            if (start == null) {
                unused.add(run + " is not used: how the run began is not known; write it as a mark by hand");
                return null;
            }
            if (timing == null) {
                unused.add(run + " is not used: say how runs were timed with --timing");
                return null;
            }
            return new Mark(Measure.SPRINT, metres, seconds, start, timing, null, null, null, null, day);
        }

        /** As the family's runs begin; where it has none, as the athlete's only mark over the distance did. */
        private static @Nullable SprintStart start(Athlete athlete, Family family, double metres) {
            if (metres > LONG) {
                return SprintStart.STANDING;
            }
            Set<SprintStart> starts = new HashSet<>();
            family.content().stream()
                    .map(Content::start)
                    .filter(Objects::nonNull)
                    .forEach(starts::add);
            if (starts.isEmpty()) {
                athlete.marks().stream()
                        .filter(mark -> Objects.equals(mark.metres(), metres) && mark.start() != null)
                        .map(mark -> Objects.requireNonNull(mark.start()))
                        .forEach(starts::add);
            }
            return starts.size() == 1 ? starts.iterator().next() : null;
        }

        private void compare(Athlete athlete, Mark mark) {
            Mark before = athlete.marks().stream()
                    .filter(other -> isAlike(mark, other) && MarkFaults.of(other) == null)
                    .filter(other -> !other.date().isBefore(mark.date().minusDays(Marks.TOO_OLD_AFTER)))
                    .max(Comparator.comparingDouble(this::worth))
                    .orElse(null);
            if (before != null && worth(mark) <= worth(before)) {
                return;
            }
            Improvement now = new Improvement(
                    athlete,
                    mark,
                    before,
                    Math.abs(worth(mark)),
                    before == null ? null : Double.valueOf(Math.abs(worth(before))));
            List<Object> kind = Stream.<@Nullable Object>of(athlete.id(), mark.metres(), mark.start(), mark.lift())
                    .map(part -> part == null ? "" : part)
                    .toList();
            best.merge(kind, now, (one, other) -> worth(other.mark()) > worth(one.mark()) ? other : one);
        }

        private static boolean isAlike(Mark one, Mark other) {
            return one.measure() == other.measure()
                    && Objects.equals(one.metres(), other.metres())
                    && one.start() == other.start()
                    && one.timing() == other.timing()
                    && Objects.equals(one.lift(), other.lift());
        }

        /** More is better: seconds taken off nothing, kilograms of the maximum. */
        private double worth(Mark mark) {
            return mark.measure() == Measure.LIFT
                    ? formula.maximum(Objects.requireNonNull(mark.kg()), Objects.requireNonNull(mark.repetitions()))
                    : -Objects.requireNonNull(mark.seconds());
        }

        Improvements found() {
            List<String> order = scenario.athletes().stream().map(Athlete::id).toList();
            List<Improvement> sorted = new ArrayList<>(best.values());
            sorted.sort(
                    Comparator.comparingInt(one -> order.indexOf(one.athlete().id())));
            return new Improvements(sorted, List.copyOf(unused));
        }
    }
}
