package weekwright.model.document;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import weekwright.model.scenario.Scenario;

/** All that a schema cannot say of a plan or a log, held against its scenario. */
final class PlanChecks {
    private final Known known;
    private final Horizon horizon;
    private final ZoneId zone;
    private final Faults faults;

    PlanChecks(Scenario scenario, Faults faults) {
        this.known = Known.of(scenario);
        this.horizon = new Horizon(scenario.firstDay(), scenario.lastDay());
        this.zone = scenario.zone();
        this.faults = faults;
    }

    /**
     * Refuses a plan or a log of another scenario.
     *
     * @throws DocumentException with this one fault
     */
    static void sameScenario(Node document, Scenario scenario, Faults faults) throws DocumentException {
        Node id = document.field("scenario");
        if (id.id().isPresent() && !id.written().equals(scenario.id())) {
            throw faults.only(
                    id,
                    "it was made for the scenario " + Shown.value(id) + ", and this one is "
                            + Shown.quoted(scenario.id()),
                    "Give it together with its own scenario.");
        }
    }

    /** Reports what cannot be in a plan. */
    void plan(Node plan, List<Node> moments) {
        new TimeChecks(faults, zone).exist(moments);
        List<Node> placements = plan.list("placements");
        List<Node> leftOut = plan.list("leftOut");
        List<Node> all = new ArrayList<>(placements);
        all.addAll(leftOut);
        ScenarioChecks.uniqueIds(all, faults);
        placements.forEach(this::placement);
        leftOut.forEach(this::leftOut);
    }

    /** Reports what cannot be in a log. */
    void log(Node log, List<Node> moments) {
        new TimeChecks(faults, zone).exist(moments);
        List<Node> entries = log.list("entries");
        ScenarioChecks.uniqueIds(entries, faults);
        new EntryChecks(known, faults).check(entries);
        for (Node entry : entries) {
            known.fixture(entry.field("fixture"), faults);
            sameSession(entry.field("placement"), entry);
        }
    }

    private void placement(Node placement) {
        Node family = placement.field("family");
        known.group(placement.field("group"), faults);
        known.session(family, faults);
        known.facility(placement.field("facility"), faults);
        known.lead(placement.field("lead"), faults);
        known.variant(placement.field("variant"), family, faults);
        horizon.inside(placement.field("start"), faults);
        sameSession(placement.field("id"), placement);
        pin(placement.field("pin"), placement);
    }

    /** A session's id begins with its group and family. */
    private void sameSession(Node id, Node session) {
        Node group = session.field("group");
        Node family = session.field("family");
        if (id.text().isEmpty() || !known.knows(group, family)) {
            return;
        }
        String[] parts = id.written().split("[/+]", -1);
        if (parts.length > 1 && !(parts[0].equals(group.written()) && parts[1].equals(family.written()))) {
            faults.add(
                    id,
                    Shown.value(id) + " does not fit " + group.written() + " and " + family.written(),
                    "Begin it with " + Shown.quoted(group.written() + "/" + family.written() + "/")
                            + ", or leave it out.");
        }
    }

    private void pin(Node pin, Node placement) {
        for (String held : List.of("facility", "lead", "variant")) {
            if (pin.field(held).isTrue() && !placement.field(held).present()) {
                faults.add(
                        pin.field(held),
                        "the pin holds a " + held + ", and the session has none",
                        "Give the session a " + held + ", or take the pin off.");
            }
        }
    }

    private void leftOut(Node leftOut) {
        leftOut.field("pin").fields().forEach((name, held) -> {
            if (held.isTrue() && !name.equals("out")) {
                faults.add(
                        held, "a session left out has no " + name + " to hold", "Keep only \"out\" and \"notDays\".");
            }
        });
    }
}
