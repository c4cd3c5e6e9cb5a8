package weekwright.desk.view.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.LoadReport.Person;
import weekwright.model.load.LoadRatio;
import weekwright.model.load.Spread;
import weekwright.model.load.Spread.Divisor;
import weekwright.model.plan.Log;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Puts load planned and load reported side by side. */
public final class LoadReports {
    /**
     * What the figures are made from.
     *
     * @param judged the plan, or null where there is none
     * @param people what the plan means for each athlete
     * @param log what was reported since the plan began, or null where nothing was
     */
    public record Sources(
            Scenario scenario,
            @Nullable Judged judged,
            List<PersonPicture> people,
            @Nullable Log log) {
        /** All that was reported, history first. */
        List<LogEntry> entries() {
            return Stream.concat(scenario.history().stream(), log == null ? Stream.empty() : log.entries().stream())
                    .toList();
        }

        /** The last day of which anything was reported; days without an entry up to it count 0. */
        @Nullable
        LocalDate doneUntil() {
            LocalDate before =
                    scenario.history().isEmpty() ? null : scenario.firstDay().minusDays(1);
            return Stream.concat(
                            Stream.ofNullable(before),
                            Stream.ofNullable(log)
                                    .flatMap(one -> one.entries().stream())
                                    .map(entry -> entry.start().date()))
                    .max(Comparator.naturalOrder())
                    .orElse(null);
        }
    }

    private final Sources sources;
    private final Units units;

    private LoadReports(Sources sources, Units units) {
        this.sources = sources;
        this.units = units;
    }

    /**
     * The report.
     *
     * @param athlete id of the only athlete wanted, or null for all groups and athletes
     */
    public static LoadReport of(Sources sources, @Nullable String athlete, Divisor divisor, Units units) {
        return new LoadReports(sources, units).report(athlete, divisor);
    }

    private LoadReport report(@Nullable String athlete, Divisor divisor) {
        Scenario scenario = sources.scenario();
        List<Person> people = new ArrayList<>();
        if (athlete == null) {
            scenario.groups().forEach(group -> people.add(of(Who.of(group), divisor)));
        }
        scenario.athletes().stream()
                .filter(one -> athlete == null || one.id().equals(athlete))
                .forEach(one -> people.add(of(Who.of(one, mainGroup(one)), divisor)));
        return new LoadReport(
                scenario.id(),
                scenario.title(),
                divisor.sign(),
                units.length(),
                sources.doneUntil(),
                people,
                LogAgainstPlan.of(sources),
                Stream.of(LoadRatio.values()).map(LoadRatio::meaning).toList(),
                LoadRatio.CAVEAT,
                LoadRatio.CRITIQUES);
    }

    private Group mainGroup(Athlete athlete) {
        return sources.scenario().groups().stream()
                .filter(group -> group.id().equals(athlete.groups().get(0)))
                .findFirst()
                .orElseThrow();
    }

    private Person of(Who who, Divisor divisor) {
        PersonLoad load = new PersonLoad(sources, who);
        PersonWork work = new PersonWork(sources, who, units);
        return new Person(
                who.id(),
                who.label(),
                who.athlete() == null,
                new LoadWeeks(sources, load, work, new Spreads(divisor)).weeks(),
                load.ratios(),
                work.exposures());
    }

    /** Monotony and strain by one divisor. */
    record Spreads(Divisor divisor) {
        @Nullable
        Double monotony(List<Double> days) {
            return whole(days) ? orNull(spread(days).monotony(divisor)) : null;
        }

        @Nullable
        Double strain(List<Double> days) {
            return whole(days) ? orNull(spread(days).strain(divisor)) : null;
        }

        static boolean whole(List<Double> days) {
            return days.size() == 7;
        }

        private static Spread spread(List<Double> days) {
            return Spread.of(days.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    static @Nullable Double orNull(java.util.OptionalDouble value) {
        return value.isEmpty() ? null : Double.valueOf(value.getAsDouble());
    }
}
