package weekwright.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** A folder of a week that has been planned, as somebody would find it who opens it for the first time. */
public final class Planned {
    private Planned() {}

    /** Makes it in a place, with a plan of so many moves; gives the plan. */
    public static Plan week(Path place, String folder, Scenario scenario, long moves) {
        Plan plan = Engine.propose(new Proposal(scenario, null, Budget.moves(moves), 1, 1, null), Progress.SILENT)
                .plan();
        try {
            Path made = Files.createDirectory(place.resolve(folder));
            Files.writeString(made.resolve("scenario.json"), Documents.write(scenario));
            Files.writeString(made.resolve("plan.json"), Documents.write(plan));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return plan;
    }
}
