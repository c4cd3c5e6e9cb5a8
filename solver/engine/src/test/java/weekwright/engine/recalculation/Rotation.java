package weekwright.engine.recalculation;

import java.util.stream.Stream;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;

/** Lifts stay long enough to be learnt and not so long that they go stale. */
final class Rotation extends Judge {
    Rotation(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Group group : the.scenario().groups()) {
            if (group.level() != Level.NOVICE) {
                Stream<String> aimed = group.aims().stream().map(Aim::family);
                Stream<String> placed = the.placements().stream()
                        .filter(thing -> thing.group().equals(group.id()))
                        .map(thing -> thing.trains().id());
                Stream.concat(aimed, placed)
                        .distinct()
                        .map(the.catalogue()::family)
                        .filter(family -> !family.variants().isEmpty())
                        .forEach(family -> rotate(group, family));
            }
        }
    }

    private void rotate(Group group, Family family) {
        new LiftLine(the, group, family)
                .breaches()
                .forEach(breach -> want(breach.rule(), breach.subjects(), group.id(), breach.points(), Fraction.ONE));
    }
}
