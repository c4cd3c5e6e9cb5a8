package weekwright.engine.recalculation;

import java.util.ArrayList;
import java.util.List;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Pathway;

/** Marks that a session needs and that are missing or old. */
final class MarkFacts extends Judge {
    MarkFacts(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        the.placements().forEach(this::marksOld);
    }

    private void marksOld(Thing placement) {
        long days = number("marks-old", "days", placement.group()).roundedDown();
        long lacking = the.people().stream()
                .filter(placement::holds)
                .filter(person -> person.athlete() != null)
                .filter(person -> needed(placement).stream()
                        .anyMatch(measure -> !hasFresh(person.athlete(), measure, placement, days)))
                .count();
        String group = placement.group();
        want(
                "marks-old",
                placement.key(),
                group,
                number("marks-old", "points", group),
                share(group).times(lacking));
    }

    private static List<Measure> needed(Thing placement) {
        List<Measure> needed = new ArrayList<>();
        if (placement.highOn(Pathway.MAX_VELOCITY_SPRINT) || placement.highOn(Pathway.ACCELERATION)) {
            needed.add(Measure.SPRINT);
        }
        if (Spreading.lifts(placement)) {
            needed.add(Measure.LIFT);
        }
        if (placement.highOn(Pathway.AEROBIC)) {
            needed.add(Measure.AEROBIC_SPEED);
        }
        return needed;
    }

    private static boolean hasFresh(Athlete athlete, Measure measure, Thing placement, long days) {
        return athlete.marks().stream()
                .filter(mark -> mark.measure() == measure)
                .anyMatch(mark -> !mark.date().isBefore(placement.date().minusDays(days)));
    }
}
