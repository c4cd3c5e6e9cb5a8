package weekwright.model.change;

import weekwright.model.scenario.Scenario;

/** Something that may happen to a scenario after its plan was made. */
public sealed interface Event permits FixtureMoved, FacilityClosed, DayLost, AthleteLost {
    /**
     * The scenario after it has happened; what it holds of times and dates has to be checked as of any document.
     *
     * @throws IllegalArgumentException when it concerns what the scenario does not have
     */
    Scenario after(Scenario scenario);
}
