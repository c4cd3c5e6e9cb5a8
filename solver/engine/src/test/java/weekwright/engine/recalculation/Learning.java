package weekwright.engine.recalculation;

import java.util.List;
import java.util.Objects;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;

/** A new skill comes some times a week, on days of its own, before anything tiring. */
final class Learning extends Judge {
    private static final String RULE = "learner-frequency";
    private static final Fraction TIRING = Fraction.of(55, 10);

    Learning(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Group group : the.scenario().groups()) {
            for (Aim aim : group.aims()) {
                if (aim.learning()) {
                    the.weeks().numbers().forEach(week -> oftenEnough(group, aim, week));
                    placementsOf(group, aim).forEach(this::freshAndAlone);
                }
            }
        }
    }

    private List<Thing> placementsOf(Group group, Aim aim) {
        return the.placements().stream()
                .filter(thing -> thing.group().equals(group.id()) && aim.equals(thing.aim()))
                .toList();
    }

    private void oftenEnough(Group group, Aim aim, int week) {
        int days = the.weeks().datesOf(week).size();
        long least =
                number(RULE, "least", group.id()).times(Fraction.of(days, 7)).roundedDown();
        long most = number(RULE, "most", group.id()).times(Fraction.of(days, 7)).roundedUp();
        long placed = placementsOf(group, aim).stream()
                .filter(thing -> the.weeks().datesOf(week).contains(thing.date()))
                .count();
        long there = placed + (Aims.commitmentsCountFor(group, aim) ? commitments(group, aim, week) : 0);
        // Too many practices are the coach's own doing, unless we add to them.
        long outside = there < least ? least - there : placed > 0 && there > most ? there - most : 0;
        Fraction points = number(RULE, "points", group.id()).times(outside);
        want(RULE, names(group.id(), aim.key(), week), group.id(), points, Fraction.ONE);
    }

    private long commitments(Group group, Aim aim, int week) {
        return the.things().stream()
                .filter(thing -> thing.kind() == Thing.Kind.COMMITMENT && thing.family() != null)
                .filter(thing -> thing.groups().contains(group.id())
                        && thing.trains().id().equals(aim.family()))
                .filter(thing -> the.weeks().datesOf(week).contains(thing.date()))
                .count();
    }

    private void freshAndAlone(Thing placement) {
        boolean another = placementsOf(the.group(placement.group()), Objects.requireNonNull(placement.aim())).stream()
                .anyMatch(thing -> comesBefore(thing, placement));
        boolean tired = the.cohorts().stream()
                .map(cohort -> cohort.get(0))
                .filter(placement::holds)
                .anyMatch(person -> the.line(person).stream()
                        .filter(thing -> comesBefore(thing, placement))
                        .anyMatch(thing -> isTiring(person, thing)));
        if (another || tired) {
            want(
                    RULE,
                    placement.key(),
                    placement.group(),
                    number(RULE, "freshPoints", placement.group()),
                    Fraction.ONE);
        }
    }

    private static boolean comesBefore(Thing thing, Thing placement) {
        return thing.date().equals(placement.date()) && thing.start().isBefore(placement.start());
    }

    /** Hard work whose place in the day says nothing; what comes late in the order is another rule's affair. */
    private boolean isTiring(Person person, Thing thing) {
        if (!thing.stimulates(person)) {
            return false;
        }
        Integer order = thing.trains().order();
        boolean early = order == null
                || order
                        < number("freshest-first", "tiringFromOrder", person.mainGroup())
                                .roundedDown();
        return early && the.demand(person, thing).above(TIRING);
    }
}
