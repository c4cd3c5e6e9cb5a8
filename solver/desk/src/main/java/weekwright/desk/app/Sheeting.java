package weekwright.desk.app;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.sheet.DaySheets.Wish;
import weekwright.model.Nearest;
import weekwright.model.prescription.RepMax;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Scenario;

/** Checks what somebody wants of a day sheet. */
public final class Sheeting {
    private Sheeting() {}

    /**
     * What is wanted, as it was given.
     *
     * @param athlete the only athlete wanted, or null for all
     * @throws InputFault when a day, an athlete, a unit or a formula is none
     */
    public static Wish wish(Scenario scenario, String day, @Nullable String athlete, String units, String formula) {
        return new Wish(
                day(scenario, day),
                athlete == null ? null : Named.athlete(scenario, athlete).id(),
                units(units),
                named("--formula", formula, RepMax.values(), RepMax::id));
    }

    private static LocalDate day(Scenario scenario, String given) {
        LocalDate day = Sessions.date("--day", given, scenario.firstDay());
        if (day.isBefore(scenario.firstDay()) || day.isAfter(scenario.lastDay())) {
            throw new InputFault(day + " is no day of this plan: give one from " + scenario.firstDay() + " to "
                    + scenario.lastDay());
        }
        return day;
    }

    /**
     * Units by their name.
     *
     * @throws InputFault when there are none of it
     */
    public static Units units(String given) {
        return named("--units", given, Units.values(), Units::id);
    }

    /**
     * One of some values, by its id.
     *
     * @throws InputFault when none has it; the message names the nearest
     */
    public static <T> T named(String option, String given, T[] values, Function<T, String> id) {
        List<String> known = Stream.of(values).map(id).toList();
        return Stream.of(values)
                .filter(value -> id.apply(value).equals(given))
                .findFirst()
                .orElseThrow(() -> new InputFault(option + " is \"" + given + "\": " + Nearest.hint(given, known)));
    }
}
