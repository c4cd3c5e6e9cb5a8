package weekwright.engine.rules;

import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.FixtureWeight;

/** What the documents say of a fixture. */
final class Fixtures {
    private Fixtures() {}

    /** Whether another fixture of the group lies fewer than so many days before one. */
    static boolean crowded(GroupView view, int fixtureDay, int apart) {
        for (int day = fixtureDay - apart + 1; day < fixtureDay; day++) {
            if (view.group().fixtureOn(day)) {
                return true;
            }
        }
        return false;
    }

    /** How much it matters; one that was played is a regular one. */
    static FixtureWeight weight(View view, Stimulus fixture) {
        return fixture.kind == Stimulus.Kind.FIXTURE
                ? view.problem.scenario.fixtures().get(fixture.index).weight()
                : FixtureWeight.REGULAR;
    }

    /** Days of taper that are wanted before it; 0 for none. */
    static int taperDays(View view, Stimulus fixture) {
        Integer days = fixture.kind == Stimulus.Kind.FIXTURE
                ? view.problem.scenario.fixtures().get(fixture.index).taperDays()
                : null;
        return days == null ? 0 : days;
    }
}
