package weekwright.desk.view;

import java.util.List;
import java.util.function.Supplier;
import weekwright.desk.store.Revision;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.scenario.Scenario;

/**
 * The revision of a folder that is shown.
 *
 * @param planned whether it holds a plan; else {@code judged} is of an empty one
 * @param people what each athlete does; asked for only where athletes are the lanes
 */
public record Open(
        Scenario scenario, Revision revision, boolean planned, Judged judged, Supplier<List<PersonPicture>> people) {}
