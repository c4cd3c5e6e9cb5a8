package weekwright.engine.problem;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Scenario;

/** Sorts the people of a scenario into cohorts, and tells who takes part in what. */
final class People {
    /** Minutes of somebody who plays to the end: the fixture's own. */
    private static final int ALL_OF_IT = -1;
    /** Share of best speed from which a measured run is an exposure to maximal velocity (Malone et al. 2017). */
    private static final double EXPOSURE = 0.95;

    final List<Cohort> cohorts;
    private final Scenario scenario;
    private final Calendar calendar;
    private final int[][] ofGroup;

    People(Scenario scenario, Calendar calendar) {
        this.scenario = scenario;
        this.calendar = calendar;
        Map<String, List<Athlete>> named = new LinkedHashMap<>();
        for (Athlete athlete : scenario.athletes()) {
            named.computeIfAbsent(signature(athlete), key -> new ArrayList<>()).add(athlete);
        }
        cohorts = new ArrayList<>();
        named.values().forEach(this::addNamed);
        for (int group = 0; group < scenario.groups().size(); group++) {
            addUnnamed(group);
        }
        ofGroup = new int[scenario.groups().size()][];
        for (int group = 0; group < ofGroup.length; group++) {
            int wanted = group;
            ofGroup[group] = cohorts.stream()
                    .filter(cohort -> cohort.groups().contains(wanted))
                    .mapToInt(Cohort::index)
                    .toArray();
        }
    }

    /** People in a group. */
    static int heads(Scenario scenario, Group group) {
        int listed = (int) scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(group.id()))
                .count();
        return group.headcount() == null ? Math.max(1, listed) : Math.max(group.headcount(), listed);
    }

    /** Birth date of the youngest athlete listed in a group; null where none is known. */
    static @Nullable LocalDate youngest(Scenario scenario, Group group) {
        return scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(group.id()))
                .map(Athlete::born)
                .filter(Objects::nonNull)
                .max(LocalDate::compareTo)
                .orElse(null);
    }

    /** All cohorts of groups, in order. */
    int[] of(List<Integer> groups) {
        return groups.stream()
                .flatMapToInt(group -> Arrays.stream(ofGroup[group]))
                .distinct()
                .sorted()
                .toArray();
    }

    /** The cohorts of some athletes, in order. */
    int[] ofAthletes(List<String> athletes) {
        return cohorts.stream()
                .filter(cohort -> cohort.athletes().stream().anyMatch(athletes::contains))
                .mapToInt(Cohort::index)
                .toArray();
    }

    /** Those of some cohorts whom no clinician's restriction keeps out of a session. */
    int[] allowed(int[] some, FamilyInfo family, Dose dose, LocalDate day) {
        int count = 0;
        int[] allowed = new int[some.length];
        for (int cohort : some) {
            if (!barred(cohorts.get(cohort), family, dose, day)) {
                allowed[count++] = cohort;
            }
        }
        return count == some.length ? some : Arrays.copyOf(allowed, count);
    }

    private static boolean barred(Cohort cohort, FamilyInfo family, Dose dose, LocalDate day) {
        for (Restriction restriction : cohort.restrictions()) {
            if (bars(restriction, family, dose, day)) {
                return true;
            }
        }
        return false;
    }

    private static boolean bars(Restriction restriction, FamilyInfo family, Dose dose, LocalDate day) {
        if (!restriction.holdsOn(day) || (restriction.upTo() == RestrictionLimit.MICRO && dose == Dose.MICRO)) {
            return false;
        }
        int touched = restriction.upTo() == RestrictionLimit.NONE ? family.any : family.high;
        for (Pathway pathway : restriction.pathways()) {
            if ((touched & 1 << pathway.ordinal()) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Minutes that each cohort plays of a coming fixture of some groups; none where it is in none of them. */
    int[] played(Fixture fixture, int playMinutes, List<Integer> groups) {
        return played(playMinutes, groups, athlete -> played(fixture, athlete));
    }

    /** Minutes that each cohort played of a fixture in the history. */
    int[] played(LogEntry entry, int playMinutes, List<Integer> groups) {
        return played(playMinutes, groups, athlete -> played(entry, athlete));
    }

    /** Whether a cohort's own run in a past fixture was measured near its best speed. */
    boolean exposedIn(LogEntry entry, Cohort cohort) {
        return cohort.athletes().stream().anyMatch(athlete -> exposed(entry, athlete));
    }

    private int[] played(int playMinutes, List<Integer> groups, java.util.function.ToIntFunction<String> minutesOf) {
        int[] minutes = new int[cohorts.size()];
        for (int index : of(groups)) {
            Cohort cohort = cohorts.get(index);
            int given = cohort.athletes().isEmpty() ? ALL_OF_IT : minutesOf.applyAsInt(cohort.representative());
            minutes[index] = given == ALL_OF_IT ? playMinutes : Math.min(given, playMinutes);
        }
        return minutes;
    }

    private static int played(Fixture fixture, String athlete) {
        for (List<Appearance> list : List.of(fixture.played(), fixture.expected())) {
            for (Appearance appearance : list) {
                if (appearance.athlete().equals(athlete)) {
                    return appearance.minutes();
                }
            }
        }
        return ALL_OF_IT;
    }

    private static int played(LogEntry entry, String athlete) {
        if (entry.except().contains(athlete)) {
            return 0;
        }
        for (PersonEntry person : entry.people()) {
            if (person.athlete().equals(athlete) && person.minutes() != null) {
                return person.minutes();
            }
        }
        return ALL_OF_IT;
    }

    private static boolean exposed(LogEntry entry, String athlete) {
        return entry.people().stream()
                .anyMatch(person -> person.athlete().equals(athlete)
                        && person.topSpeedShare() != null
                        && person.topSpeedShare() >= EXPOSURE);
    }

    /** All that can make two athletes' weeks differ, as text. */
    private String signature(Athlete athlete) {
        StringBuilder text = new StringBuilder();
        text.append(athlete.groups())
                .append(athlete.restrictions())
                .append(athlete.windows())
                .append(athlete.away());
        scenario.fixtures().forEach(fixture -> text.append('|').append(played(fixture, athlete.id())));
        for (Commitment commitment : scenario.commitments()) {
            text.append('|').append(commitment.athletes().contains(athlete.id()));
        }
        for (LogEntry entry : scenario.history()) {
            text.append('|').append(played(entry, athlete.id())).append(exposed(entry, athlete.id()));
        }
        return text.toString();
    }

    private void addNamed(List<Athlete> alike) {
        Athlete first = alike.get(0);
        List<Integer> groups = first.groups().stream().map(this::groupIndex).toList();
        List<String> ids = alike.stream().map(Athlete::id).toList();
        boolean always = first.windows().isEmpty() && first.away().isEmpty();
        FreeTime own = always ? null : new FreeTime(calendar, first.windows(), first.away());
        cohorts.add(new Cohort(cohorts.size(), groups, ids.size(), ids, first.id(), first.restrictions(), own));
    }

    private void addUnnamed(int group) {
        Group of = scenario.groups().get(group);
        int listed = (int) scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(of.id()))
                .count();
        int unnamed = heads(scenario, of) - listed;
        if (unnamed > 0) {
            cohorts.add(new Cohort(cohorts.size(), List.of(group), unnamed, List.of(), "", List.of(), null));
        }
    }

    private int groupIndex(String id) {
        for (int group = 0; group < scenario.groups().size(); group++) {
            if (scenario.groups().get(group).id().equals(id)) {
                return group;
            }
        }
        throw new IllegalArgumentException("no group is called \"" + id + "\"");
    }
}
