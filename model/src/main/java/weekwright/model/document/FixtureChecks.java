package weekwright.model.document;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Fixtures and commitments. */
final class FixtureChecks {
    private final Node scenario;
    private final Known known;
    private final Faults faults;

    FixtureChecks(Node scenario, Known known, Faults faults) {
        this.scenario = scenario;
        this.known = known;
        this.faults = faults;
    }

    void check() {
        scenario.list("fixtures").forEach(this::fixture);
        scenario.list("commitments").forEach(this::commitment);
    }

    private void fixture(Node fixture) {
        fixture.list("groups").forEach(id -> known.group(id, faults));
        known.fixtureFamily(fixture.field("family"), faults);
        OptionalInt elapsed = fixture.field("minutes").whole();
        within(fixture.field("playMinutes"), elapsed, "the fixture lasts");
        appearances(fixture.list("expected"), elapsed);
        appearances(fixture.list("played"), elapsed);
    }

    private void appearances(List<Node> appearances, OptionalInt elapsed) {
        Set<String> seen = new HashSet<>();
        for (Node appearance : appearances) {
            Node athlete = appearance.field("athlete");
            known.athlete(athlete, faults);
            within(appearance.field("minutes"), elapsed, "the fixture lasts");
            if (athlete.id().isPresent() && !seen.add(athlete.written())) {
                faults.add(athlete, Shown.value(athlete) + " is there twice", "Give each athlete's minutes once.");
            }
        }
    }

    private void commitment(Node commitment) {
        people(commitment);
        commitment.list("groups").forEach(id -> known.group(id, faults));
        commitment.list("athletes").forEach(id -> known.athlete(id, faults));
        known.family(commitment.field("family"), faults);
        known.facility(commitment.field("facility"), faults);
        within(
                commitment.field("lends").field("minutes"),
                commitment.field("minutes").whole(),
                "the commitment lasts");
    }

    private void people(Node commitment) {
        boolean groups = !commitment.list("groups").isEmpty();
        boolean athletes = !commitment.list("athletes").isEmpty();
        if (groups && athletes) {
            faults.add(
                    commitment.field("athletes"), "groups and athletes are both given", "Keep the one or the other.");
        } else if (!groups
                && !athletes
                && !faults.broken(commitment.field("groups"))
                && !faults.broken(commitment.field("athletes"))) {
            faults.add(
                    commitment,
                    "the commitment says neither groups nor athletes",
                    "Add \"groups\" or \"athletes\", with their ids.");
        }
    }

    private void within(Node minutes, OptionalInt whole, String what) {
        OptionalInt part = minutes.whole();
        if (part.isPresent() && whole.isPresent() && part.getAsInt() > whole.getAsInt()) {
            faults.add(
                    minutes,
                    part.getAsInt() + " minutes are more than " + what + ", " + whole.getAsInt(),
                    "Give " + whole.getAsInt() + " or fewer.");
        }
    }
}
