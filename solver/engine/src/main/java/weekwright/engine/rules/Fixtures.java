package weekwright.engine.rules;

import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.FixtureWeight;

/** What the documents say of a fixture. */
final class Fixtures {
    private Fixtures() {}

    /** Whether another fixture of the group lies before one, fewer than so many days or on the same date. */
    static boolean crowded(GroupView view, Stimulus fixture, int apart) {
        for (Stimulus other : view.group().fixtures()) {
            if (Stimulus.inOrder(other, fixture) < 0 && fixture.day - other.day < apart) {
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

    /** Minutes of play in one to come. */
    static int playMinutes(View view, Stimulus fixture) {
        Integer own = fixture.kind == Stimulus.Kind.FIXTURE
                ? view.problem.scenario.fixtures().get(fixture.index).playMinutes()
                : null;
        return own != null ? own : fixture.family == null ? 0 : fixture.family.family.minutes();
    }

    /** Days of taper that are wanted before it; 0 for none. */
    static int taperDays(Problem problem, Stimulus fixture) {
        Integer days = fixture.kind == Stimulus.Kind.FIXTURE
                ? problem.scenario.fixtures().get(fixture.index).taperDays()
                : null;
        return days == null ? 0 : days;
    }
}
