package weekwright.model.change;

import java.time.LocalDate;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Scenario;

/**
 * A place is shut for a whole day.
 *
 * @param facility its id
 * @param day local date
 */
public record FacilityClosed(String facility, LocalDate day) implements Event {
    @Override
    public Scenario after(Scenario scenario) {
        Draft draft = new Draft(scenario);
        Draft.change(draft.facilities, one -> one.id().equals(facility), one -> shut(one, draft), "facility", facility);
        return draft.scenario();
    }

    private Facility shut(Facility one, Draft draft) {
        return one.withClosed(Draft.with(one.closed(), draft.wholeDay(day)));
    }
}
