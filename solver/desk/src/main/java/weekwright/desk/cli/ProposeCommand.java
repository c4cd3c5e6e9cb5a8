package weekwright.desk.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.view.plan.PlanPages;
import weekwright.engine.explain.Comparisons;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Comparison;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Searches for a plan and shows it. */
@Command(
        name = "propose",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Searches for the best plan of a scenario, shows it and writes it. A folder stands for its scenario and for"
                    + " the plan to start from, and keeps the new one as a change.",
            "Interrupt it (Ctrl-C) to take the best plan so far; interrupt again to stop at once."
        })
final class ProposeCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PLAN",
            description = "File to write the plan into; it is replaced whole or not at all.")
    private @Nullable String output;

    @Option(names = "--from", paramLabel = "PLAN", description = "Plan to start from and to stay close to.")
    private @Nullable String from;

    @Mixin
    private final SearchOptions options = new SearchOptions();

    @Option(names = "--json", description = "Print the plan as JSON instead of showing it.")
    private boolean json;

    ProposeCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        options.check();
        Work work = Work.toChange(new Inputs(around.in()), scenario, from, output, around.clock());
        around.tell(work.news());
        Plan start = work.plan();
        Scenario read = work.scenario();
        Judged judged = Searching.run(around, options.proposal(around, read, start));
        if (start != null) {
            tellChanges(read, around.planner().judgeWithoutRemedies(read, start).plan(), judged.plan());
        }
        Shown shown = new Shown(around, read, judged);
        try {
            shown.save(
                    work.target(),
                    (start == null ? "Planned. " : "Planned again. ") + PlanPages.verdict(judged.plan()));
            if (work.target() == null && !json) {
                around.err().println("Nothing is kept: give -o FILE, or name a folder, to keep the plan.");
            }
        } finally {
            shown.print(json ? shown.planJson() : null);
        }
        return shown.exit();
    }

    private void tellChanges(Scenario read, Plan before, Plan after) {
        Comparison comparison = Comparisons.of(read, before, after);
        around.tell(List.of(comparison.sessions().isEmpty() ? "No session changes." : comparison.text()));
    }
}
