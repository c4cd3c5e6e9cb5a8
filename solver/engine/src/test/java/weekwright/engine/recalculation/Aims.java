package weekwright.engine.recalculation;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Share;

/** What a group is to train each week. */
final class Aims extends Judge {
    /** One aim in one week, and what there is of it. */
    private record AimWeek(Group group, Aim aim, String name, PerWeek asked, List<Thing> placed, int commitments) {
        int all() {
            return placed.size() + commitments;
        }

        /** Sessions that count for the least: a micro dose only where the aim says so. */
        int counted() {
            return commitments
                    + (int) placed.stream()
                            .filter(thing -> thing.dose() != Dose.MICRO || aim.microCounts())
                            .count();
        }

        int missingLeast() {
            return Math.max(0, asked.least() - counted());
        }

        int missingTarget() {
            return Math.max(0, asked.target() - Math.max(all(), asked.least()));
        }
    }

    Aims(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Group group : the.scenario().groups()) {
            for (Aim aim : group.aims()) {
                for (int week : the.weeks().numbers()) {
                    AimWeek aimWeek = aimWeek(group, aim, week);
                    aimMost(aimWeek);
                    aimLeast(aimWeek);
                    aimTarget(aimWeek);
                }
            }
        }
        the.placements().forEach(this::doseKept);
    }

    private AimWeek aimWeek(Group group, Aim aim, int week) {
        List<Thing> placed = the.placements().stream()
                .filter(thing -> thing.group().equals(group.id()) && aim.equals(thing.aim()))
                .filter(thing -> the.weeks().datesOf(week).contains(thing.date()))
                .toList();
        long commitments = the.things().stream()
                .filter(thing -> thing.kind() == Thing.Kind.COMMITMENT && thing.family() != null)
                .filter(thing -> thing.groups().contains(group.id())
                        && thing.trains().id().equals(aim.family()))
                .filter(thing -> the.weeks().datesOf(week).contains(thing.date()))
                .count();
        return new AimWeek(
                group,
                aim,
                names(group.id(), aim.key(), week),
                the.weeks().share(aim.perWeek(), week),
                placed,
                commitmentsCountFor(group, aim) ? (int) commitments : 0);
    }

    /** Of several aims of one family only the one for all counts the commitments. */
    static boolean commitmentsCountFor(Group group, Aim aim) {
        long ofTheFamily = group.aims().stream()
                .filter(other -> other.family().equals(aim.family()))
                .count();
        return ofTheFamily == 1 || aim.whom() == Share.ALL;
    }

    /** What we place never passes the most. */
    private void aimMost(AimWeek week) {
        if (!week.placed().isEmpty() && week.all() > week.asked().most()) {
            must("aim-most", week.name(), week.group().id(), Fraction.ONE);
        }
    }

    /** Each key or main aim reaches its least. */
    private void aimLeast(AimWeek week) {
        Priority priority = week.aim().priority();
        if (priority != Priority.SPARE && week.missingLeast() > 0) {
            String group = week.group().id();
            Fraction each = isWant("aim-least", group) ? number("aim-least", "points", group) : Fraction.ONE;
            RuleLevel owed = priority == Priority.KEY ? RuleLevel.KEY : RuleLevel.MAIN;
            ledger().add("aim-least", week.name(), group, owed, each.times(week.missingLeast()));
        }
    }

    /** And better its target; of a spare aim the least as well is only wanted. */
    private void aimTarget(AimWeek week) {
        boolean spare = week.aim().priority() == Priority.SPARE;
        int missing = week.missingTarget() + (spare ? week.missingLeast() : 0);
        Fraction points = pointsOf(week.aim(), week.group().id()).times(missing);
        want("aim-target", week.name(), week.group().id(), points, Fraction.ONE);
    }

    private Fraction pointsOf(Aim aim, String group) {
        return number(
                "aim-target",
                switch (aim.priority()) {
                    case KEY -> "keyPoints";
                    case MAIN -> "mainPoints";
                    case SPARE -> "sparePoints";
                },
                group);
    }

    /** A smaller dose than the aim's fullest costs a share of the aim's points, save between two close fixtures. */
    private void doseKept(Thing placement) {
        Aim aim = placement.aim();
        if (aim == null || liesBetweenCloseFixtures(placement)) {
            return;
        }
        String group = placement.group();
        Dose fullest = aim.doses().stream().min(Comparator.naturalOrder()).orElse(Dose.FULL);
        Fraction share = doseShare(placement.dose(), group).minus(doseShare(fullest, group));
        want("dose-kept", placement.key(), group, pointsOf(aim, group).times(share), Fraction.ONE);
    }

    private Fraction doseShare(Dose dose, String group) {
        return switch (dose) {
            case FULL -> Fraction.ZERO;
            case REDUCED -> number("dose-kept", "reducedShare", group);
            case MICRO -> number("dose-kept", "microShare", group);
        };
    }

    private boolean liesBetweenCloseFixtures(Thing placement) {
        List<Thing> fixtures = the.fixturesOf(placement.group());
        Optional<Thing> before = fixtures.stream()
                .filter(fixture -> !fixture.start().isAfter(placement.start()))
                .max(Comparator.comparing(Thing::start));
        Optional<Thing> after = fixtures.stream()
                .filter(fixture -> fixture.start().isAfter(placement.start()))
                .min(Comparator.comparing(Thing::start));
        return before.isPresent()
                && after.isPresent()
                && Fraction.of(ChronoUnit.DAYS.between(
                                before.get().date(), after.get().date()))
                        .below(number("dose-kept", "waivedDays", placement.group()));
    }
}
