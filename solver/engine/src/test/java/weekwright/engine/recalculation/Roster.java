package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.Scenario;

/** Everybody, one by one, those who are only counted included. */
record Roster(Scenario scenario, List<Person> people) {
    static Roster of(Scenario scenario) {
        List<Person> people = new ArrayList<>();
        for (Athlete athlete : scenario.athletes()) {
            people.add(new Person(athlete.id(), athlete.groups(), athlete));
        }
        for (Group group : scenario.groups()) {
            long named = named(scenario, group);
            for (long n = named + 1; n <= heads(scenario, group); n++) {
                people.add(new Person(group.id() + "#" + n, List.of(group.id()), null));
            }
        }
        return new Roster(scenario, List.copyOf(people));
    }

    private static long named(Scenario scenario, Group group) {
        return scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(group.id()))
                .count();
    }

    private static long heads(Scenario scenario, Group group) {
        return group.headcount() != null ? group.headcount() : Math.max(1, named(scenario, group));
    }

    long heads(String group) {
        return heads(scenario, group(group));
    }

    Group group(String id) {
        return scenario.groups().stream()
                .filter(group -> group.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    List<Person> members(List<String> groups) {
        return people.stream().filter(person -> person.in(groups)).toList();
    }

    /** Whether a clinician's limit keeps the person out of a session on that day. */
    boolean sitsOut(Person person, Family family, Dose dose, LocalDate day) {
        return person.athlete() != null
                && person.athlete().restrictions().stream()
                        .filter(restriction -> restriction.holdsOn(day))
                        .anyMatch(restriction -> forbids(restriction, family, dose));
    }

    private static boolean forbids(Restriction restriction, Family family, Dose dose) {
        boolean any = restriction.pathways().stream().anyMatch(family.pathways()::containsKey);
        boolean high = restriction.pathways().stream()
                .anyMatch(pathway -> family.pathways().get(pathway) == Intensity.HIGH);
        return switch (restriction.upTo()) {
            case NONE -> any;
            case MICRO -> high && dose != Dose.MICRO;
            case LIGHT -> high;
        };
    }

    /** Whether any limit holds for the person on one of the days. */
    boolean isRestrictedOn(Person person, List<LocalDate> days) {
        return person.athlete() != null
                && person.athlete().restrictions().stream()
                        .anyMatch(restriction -> days.stream().anyMatch(restriction::holdsOn));
    }
}
