package weekwright.model.change;

import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * A fixture is played at another time; all else of it stays.
 *
 * @param fixture its id
 * @param to its new start
 */
public record FixtureMoved(String fixture, Moment to) implements Event {
    @Override
    public Scenario after(Scenario scenario) {
        Draft draft = new Draft(scenario);
        Draft.change(draft.fixtures, one -> one.id().equals(fixture), one -> one.withStart(to), "fixture", fixture);
        return draft.scenario();
    }
}
