package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/** Hours and days off as colleges and youth sport have them. */
final class Packs extends Judge {
    Packs(Case the, Ledger ledger) {
        super(the, ledger);
    }

    /** The rules of a group; packs that are switched on are wants unless a scenario says more. */
    static RuleSettings settings(Rulebook rulebook, Scenario scenario, Group group) {
        Map<String, RuleSetting> rules = new LinkedHashMap<>(scenario.rules());
        Stream.concat(scenario.packs().stream(), group.packs().stream())
                .forEach(pack -> rules.compute(pack, (id, given) -> switchedOn(given)));
        return RuleSettings.of(rulebook, rules, group.rules());
    }

    private static RuleSetting switchedOn(@Nullable RuleSetting given) {
        return given == null
                ? new RuleSetting(RuleLevel.WANT, null, Map.of())
                : new RuleSetting(
                        given.level() == null ? RuleLevel.WANT : given.level(), given.weight(), given.numbers());
    }

    static boolean isOn(Scenario scenario, Group group, String pack) {
        return settings(Rulebook.builtIn(), scenario, group).level(pack) != RuleLevel.OFF;
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            Group group = the.mainGroup(person);
            Hours inSeason = new Hours(number("college-in-season", "competitionHours", group.id()));
            weeks("college-in-season", person, number("college-in-season", "weekHours", group.id()), inSeason);
            the.weeks().allDays().forEach(date -> hoursOfDay(person, date, inSeason));
            // Out of season a competition counts what it counts in season.
            weeks("college-out-of-season", person, number("college-out-of-season", "weekHours", group.id()), inSeason);
            weeks("youth", person, null, new Hours(null));
        });
    }

    /**
     * What counts how long.
     *
     * @param competition hours that a day's fixtures count, or null for their minutes of play
     */
    private record Hours(@Nullable Fraction competition) {
        Fraction of(Day day, List<Thing> fixtures) {
            long minutes = day.things().stream()
                    .filter(Thing::isPlannedSession)
                    .mapToLong(thing -> Math.max(0, thing.minutes() - day.lentMinutes(thing)))
                    .sum();
            Fraction sessions = Fraction.of(minutes, 60);
            if (competition != null) {
                return fixtures.isEmpty() ? sessions : sessions.plus(competition);
            }
            long played = fixtures.stream().mapToLong(Thing::minutes).sum();
            return sessions.plus(Fraction.of(played, 60));
        }
    }

    private Fraction hours(Day day, Hours hours) {
        return hours.of(
                day,
                the.fixturesOf(day.person().mainGroup()).stream()
                        .filter(fixture -> fixture.date().equals(day.date()))
                        .toList());
    }

    private void weeks(String pack, Person person, @Nullable Fraction weekHours, Hours counting) {
        String group = person.mainGroup();
        for (int week : the.weeks().numbers()) {
            if (!the.weeks().isWhole(week)) {
                continue;
            }
            List<Day> days = the.weeks().datesOf(week).stream()
                    .map(date -> Day.of(the, person, date))
                    .toList();
            Fraction most = weekHours != null
                    ? weekHours
                    : hoursOfTheYoung(group, days.get(0).date());
            if (most != null && days.stream().anyMatch(Day::hasPlacement)) {
                Fraction spent = days.stream().map(day -> hours(day, counting)).reduce(Fraction.ZERO, Fraction::plus);
                cost(pack, person, names(group, week, "hours"), spent.minus(most));
            }
            long missing = number(pack, "daysOff", group).roundedDown()
                    - days.stream().filter(Day::isFree).count();
            boolean ours = days.stream().anyMatch(day -> isOurs(day.whatKeepsItFromBeingFree()));
            if (ours) {
                cost(pack, person, names(group, week, "days off"), Fraction.of(missing));
            }
        }
    }

    /** As many hours as the youngest has years; nothing is asked where no birth date is known. */
    private @Nullable Fraction hoursOfTheYoung(String group, LocalDate on) {
        return the.scenario().athletes().stream()
                .filter(athlete -> athlete.groups().contains(group))
                .map(Athlete::born)
                .filter(Objects::nonNull)
                .max(LocalDate::compareTo)
                .map(born -> number("youth", "hoursAYear", group)
                        .times(Period.between(born, on).getYears()))
                .orElse(null);
    }

    private void hoursOfDay(Person person, LocalDate date, Hours counting) {
        Day day = Day.of(the, person, date);
        if (day.hasPlacement()) {
            Fraction most = number("college-in-season", "dayHours", person.mainGroup());
            cost(
                    "college-in-season",
                    person,
                    names(person.mainGroup(), date, "hours"),
                    hours(day, counting).minus(most));
        }
    }

    private void cost(String pack, Person person, String subjects, Fraction tooMuch) {
        String group = person.mainGroup();
        want(pack, subjects, group, tooMuch.times(number(pack, "points", group)), share(group));
    }
}
