package weekwright.engine.recalculation;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Whether enough of a group come, and who does not. */
final class Turnout extends Judge {
    Turnout(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Thing placement : the.placements()) {
            quorum(placement);
            attendance(placement);
            sitsOut(placement);
        }
    }

    /** A session is held where enough come of those whom no clinician keeps away, and never for nobody. */
    private void quorum(Thing placement) {
        Fraction asked = Fraction.of(the.group(placement.group()).quorum())
                .times(placement.who().allowed().size());
        int come = placement.present().size();
        if (come == 0 || Fraction.of(come).below(asked)) {
            must("quorum", placement.key(), placement.group(), Fraction.ONE);
        }
    }

    /** Better all of the group come. */
    private void attendance(Thing placement) {
        String group = placement.group();
        want(
                "attendance",
                placement.key(),
                group,
                number("attendance", "points", group),
                share(group).times(placement.who().missing().size()));
    }

    /** Who sits out, by the clinician's word or because of something else. */
    private void sitsOut(Thing placement) {
        Set<String> meant = placement.who().meant();
        List<String> restricted = meant.stream()
                .filter(name -> !placement.who().allowed().contains(name))
                .toList();
        Stream.of(restricted, List.copyOf(placement.who().missing()))
                .forEach(names -> want(
                        "sits-out",
                        names(placement.key(), names == restricted),
                        placement.group(),
                        number("sits-out", "points", placement.group()),
                        share(placement.group()).times(names.size())));
    }
}
