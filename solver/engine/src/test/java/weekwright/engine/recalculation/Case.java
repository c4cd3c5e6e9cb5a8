package weekwright.engine.recalculation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/**
 * All that the rules look at.
 *
 * @param cohorts people of whom all the same is known
 * @param things everything that takes time, in order
 * @param settings the rules as they hold for each group
 */
record Case(
        Scenario scenario,
        Catalogue catalogue,
        Roster roster,
        Weeks weeks,
        List<List<Person>> cohorts,
        List<Thing> things,
        Map<String, RuleSettings> settings) {
    static Case of(Scenario scenario, Catalogue catalogue, Rulebook rulebook, Plan plan) {
        Roster roster = Roster.of(scenario);
        Catalogue inForce = catalogue.with(scenario.catalogue());
        Map<String, RuleSettings> settings = new LinkedHashMap<>();
        for (Group group : scenario.groups()) {
            settings.put(group.id(), Packs.settings(rulebook, scenario, group));
        }
        List<Thing> asMeant = Things.of(scenario, inForce, roster, plan);
        Case everybody = new Case(
                scenario,
                inForce,
                roster,
                Weeks.of(scenario),
                Cohorts.of(scenario, roster, asMeant),
                asMeant,
                settings);
        return everybody.with(new Attendance(everybody).things());
    }

    private Case with(List<Thing> others) {
        return new Case(scenario, catalogue, roster, weeks, cohorts, others, settings);
    }

    /** The same for one person and some things only. */
    Case only(Person person, List<Thing> some) {
        List<Person> alone = List.of(person);
        return new Case(scenario, catalogue, new Roster(scenario, alone), weeks, List.of(alone), some, settings);
    }

    /** Whether an entry of the history is a fixture, which says nothing of the training between fixtures. */
    boolean isFixture(LogEntry entry) {
        return catalogue.family(entry.family()).role() == Role.FIXTURE;
    }

    List<Person> people() {
        return roster.people();
    }

    Group group(String id) {
        return roster.group(id);
    }

    Group mainGroup(Person person) {
        return roster.group(person.mainGroup());
    }

    List<Thing> placements() {
        return things.stream().filter(Thing::placed).toList();
    }

    List<Thing> fixtures() {
        return things.stream().filter(Thing::isFixture).toList();
    }

    List<Thing> fixturesOf(String group) {
        return fixtures().stream().filter(f -> f.groups().contains(group)).toList();
    }

    /** Whatever takes the person's time, in order. */
    List<Thing> line(Person person) {
        return things.stream().filter(thing -> thing.holds(person)).toList();
    }

    /** The sessions of a person's timeline, done, fixed and placed, in order; no fixtures. */
    List<Thing> sessions(Person person) {
        return line(person).stream().filter(Thing::isSession).toList();
    }

    /** Session demand s: the hardest of neural, tissue and metabolic less 2, by dose; a fixture by minutes played. */
    Fraction demand(Person person, Thing thing) {
        if (thing.isFixture()) {
            return Fraction.of(9).times(MinutesPlayed.of(thing, person).demandShare());
        }
        if (thing.trains().role() == Role.PRIMER) {
            return Fraction.of(4).times(demandShare(thing));
        }
        Fraction metabolic = Fraction.of(thing.trains().demand().metabolic()).minus(Fraction.of(2));
        Fraction hardest = thing.toll().neural().max(thing.toll().tissue()).max(metabolic);
        return hardest.times(demandShare(thing)).times(upperShare(thing, kindFor(person, thing)));
    }

    private static Fraction demandShare(Thing thing) {
        return switch (thing.dose()) {
            case FULL -> Fraction.ONE;
            case REDUCED -> Fraction.of(95, 100);
            case MICRO -> Fraction.of(50, 100);
        };
    }

    /** Upper-body work weighs six tenths, save in groups of lifters. */
    private static Fraction upperShare(Thing thing, GroupKind kind) {
        return Upper.only(thing.trains()) && kind != GroupKind.STRENGTH ? Fraction.of(6, 10) : Fraction.ONE;
    }

    private GroupKind kindFor(Person person, Thing thing) {
        return group(thing.groups().isEmpty() ? person.mainGroup() : thing.group())
                .kind();
    }

    /** Demand of a placement's family as such, at full dose. */
    Fraction familyDemand(Thing placement) {
        Family family = placement.trains();
        if (family.role() == Role.PRIMER) {
            return Fraction.of(4);
        }
        return Fraction.of(family.demand().neural())
                .max(Fraction.of(family.demand().tissue()))
                .max(Fraction.of(family.demand().metabolic()).minus(Fraction.of(2)))
                .times(upperShare(placement, group(placement.group()).kind()));
    }

    /** Whether the family alone, at full dose and with its usual minutes, makes a low day. */
    boolean isLowFamily(Thing placement) {
        Family family = placement.trains();
        Fraction load = Fraction.of(family.rpe())
                .times(family.minutes() + (long) family.warmUpMinutes())
                .dividedBy(Fraction.of(110));
        return !familyDemand(placement).max(load).above(Fraction.of(55, 10));
    }
}
