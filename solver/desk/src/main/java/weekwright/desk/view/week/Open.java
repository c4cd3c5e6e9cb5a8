package weekwright.desk.view.week;

import java.util.List;
import java.util.function.Supplier;
import weekwright.desk.store.Revision;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.scenario.Scenario;

/**
 * The revision of a folder that is shown; what there is to say of it is worked out when it is asked for.
 *
 * @param planned whether it holds a plan; else an empty one is judged and drawn
 * @param judging judges the plan
 * @param drawing draws the plan, which takes less
 * @param people what each athlete does; asked for only where athletes are the lanes
 */
public record Open(
        Scenario scenario,
        Revision revision,
        boolean planned,
        Supplier<Judged> judging,
        Supplier<Judged> drawing,
        Supplier<List<PersonPicture>> people) {
    Judged judged() {
        return judging.get();
    }

    Judged drawn() {
        return drawing.get();
    }
}
