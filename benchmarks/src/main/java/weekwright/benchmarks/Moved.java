package weekwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** A scenario in which a fixture has been put off. */
final class Moved {
    private Moved() {}

    /** The same with its first fixture so many days later, at the same time of day. */
    static Scenario firstFixture(Scenario s, int days) {
        List<Fixture> fixtures = new ArrayList<>(s.fixtures());
        Fixture f = fixtures.get(0);
        Moment later = Moment.of(f.start().local().plusDays(days));
        fixtures.set(0, f.withStart(later));
        return s.withFixtures(fixtures);
    }
}
