package weekwright.desk.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.export.Calendars.Edition;
import weekwright.desk.export.Whose;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Revision;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * All that the plan of a folder was, for the calendar of one reader.
 *
 * @param reader {@code group:} or {@code athlete:} and an id
 */
record Editions(String reader) {
    private Whose whose(Scenario scenario) {
        String id = reader.substring(reader.indexOf(':') + 1);
        return reader.startsWith("group:") ? Whose.of(scenario, id, null) : Whose.of(scenario, null, id);
    }

    /**
     * The plans in order, the one in force last.
     *
     * @throws InputFault when the scenario in force has no such group or athlete
     */
    List<Edition> of(Workplace place, Seen seen) {
        Scenario now = seen.scenario();
        Edition last = new Edition(
                seen.revision().number(),
                seen.revision().at(),
                now,
                seen.judged().plan(),
                whose(now));
        List<Edition> all = new ArrayList<>();
        place.history().stream()
                .filter(one -> !one.beside() && one.number() < seen.revision().number())
                .sorted(Comparator.comparingInt(Revision::number))
                .forEach(one -> add(all, place, one, now));
        all.add(last);
        return all;
    }

    /** What can no longer be read, was of other clocks, or knew nothing of this reader, was no calendar of theirs. */
    private void add(List<Edition> all, Workplace place, Revision revision, Scenario now) {
        try {
            Contents contents = place.contents(revision.number());
            Scenario scenario = contents.scenario();
            Plan plan = contents.plan();
            boolean judged = plan != null
                    && plan.placements().stream().allMatch(one -> one.id() != null && one.minutes() != null);
            if (plan != null
                    && judged
                    && scenario.zone().equals(now.zone())
                    && scenario.id().equals(now.id())) {
                all.add(new Edition(revision.number(), revision.at(), scenario, plan, whose(scenario)));
            }
        } catch (FileFault | InputFault e) {
            // Nothing to add: the calendar is made of the plans that are there.
        }
    }
}
