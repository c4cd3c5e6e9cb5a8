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
        fixtures.set(
                0,
                new Fixture(
                        f.id(),
                        f.label(),
                        f.groups(),
                        f.family(),
                        later,
                        f.minutes(),
                        f.playMinutes(),
                        f.weight(),
                        f.travel(),
                        f.taperDays(),
                        f.expected(),
                        f.played()));
        return new Scenario(
                s.weekwright(),
                s.id(),
                s.title(),
                s.zone(),
                s.firstDay(),
                s.days(),
                s.gridMinutes(),
                s.groups(),
                s.athletes(),
                fixtures,
                s.commitments(),
                s.facilities(),
                s.transfers(),
                s.staff(),
                s.history(),
                s.catalogue(),
                s.rules(),
                s.packs());
    }
}
