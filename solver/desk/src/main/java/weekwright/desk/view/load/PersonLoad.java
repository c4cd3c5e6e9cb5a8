package weekwright.desk.view.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.engine.explain.DayPicture;
import weekwright.model.answer.LoadReport.Ratio;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.load.DoneLoad;
import weekwright.model.load.LoadRatio;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Somebody's load day by day: reported and planned, each for itself. */
final class PersonLoad {
    private final Scenario scenario;
    private final Catalogue catalogue;
    private final Who who;
    private final List<LogEntry> entries;
    private final Map<LocalDate, Double> planned = new HashMap<>();
    private final @Nullable LocalDate doneUntil;
    private final boolean hasPlan;

    PersonLoad(Sources sources, Who who) {
        this.scenario = sources.scenario();
        this.who = who;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
        entries = sources.entries().stream()
                .filter(entry -> who.groups().contains(entry.group()))
                .toList();
        doneUntil = sources.doneUntil();
        hasPlan = sources.judged() != null;
        pictures(sources).forEach(day -> planned.put(day.date(), day.load()));
    }

    private Stream<DayPicture> pictures(Sources sources) {
        if (sources.judged() == null) {
            return Stream.empty();
        }
        return who.athlete() == null
                ? sources.judged().days().stream().filter(day -> day.group().equals(who.id()))
                : sources.people().stream()
                        .filter(person -> person.athlete().equals(who.id()))
                        .flatMap(person -> person.days().stream());
    }

    /** The first day of which anything is known, or null. */
    @Nullable
    LocalDate firstKnown() {
        return entries.stream()
                .map(entry -> entry.start().date())
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Load reported on a day, AU. */
    double done(LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.start().date().equals(day))
                .mapToDouble(
                        entry -> DoneLoad.of(entry, catalogue.family(entry.family()), fixture(entry), who.athleteId()))
                .sum();
    }

    private @Nullable Fixture fixture(LogEntry entry) {
        return scenario.fixtures().stream()
                .filter(fixture -> Objects.equals(fixture.id(), entry.fixture()))
                .findFirst()
                .orElse(null);
    }

    /** Load planned on a day, AU. */
    double planned(LocalDate day) {
        return planned.getOrDefault(day, 0.0);
    }

    /** Ratios on the last day reported, and at the end of each plan week after it. */
    List<Ratio> ratios() {
        List<Ratio> ratios = new ArrayList<>();
        LocalDate known = firstKnown();
        if (known != null && doneUntil != null) {
            ratios.add(ratio(doneUntil, known, null));
        }
        if (hasPlan) {
            LocalDate from =
                    doneUntil == null ? scenario.firstDay() : later(doneUntil.plusDays(1), scenario.firstDay());
            for (int week = 0; week < scenario.weeks(); week++) {
                LocalDate end = earlier(scenario.firstDay().plusDays(7L * week + 6), scenario.lastDay());
                if (!end.isBefore(from)) {
                    ratios.add(ratio(end, known == null ? from : known, from));
                }
            }
        }
        return ratios;
    }

    private Ratio ratio(LocalDate day, LocalDate known, @Nullable LocalDate plannedFrom) {
        double[] days = known.datesUntil(day.plusDays(1))
                .mapToDouble(date -> plannedFrom != null && !date.isBefore(plannedFrom) ? planned(date) : done(date))
                .toArray();
        return new Ratio(
                day,
                plannedFrom,
                LoadReports.orNull(LoadRatio.COUPLED.on(days)),
                LoadReports.orNull(LoadRatio.UNCOUPLED.on(days)),
                LoadReports.orNull(LoadRatio.WEIGHTED.on(days)));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
