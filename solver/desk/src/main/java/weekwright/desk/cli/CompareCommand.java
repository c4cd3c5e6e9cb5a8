package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Comparing;
import weekwright.desk.app.Comparing.Sides;
import weekwright.desk.app.Inputs;
import weekwright.desk.view.terminal.CompareText;
import weekwright.model.answer.Comparison;
import weekwright.model.document.Documents;

/** Holds two plans side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Holds two plans side by side: what moved, was added, was dropped, and which rules are kept better or worse.",
            "Of a folder, revisions are named by their numbers, and the second is the plan in force unless it is named."
        })
final class CompareCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            paramLabel = "PLAN_A",
            description = "The plan before; of a folder, the number of a revision too.")
    private String first = "";

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "PLAN_B",
            description = "The plan after; a folder brings its own.")
    private @Nullable String second;

    @Option(
            names = "--before",
            paramLabel = "SCENARIO",
            description = "The scenario for which PLAN_A was made, where it has changed since: what the change broke by"
                    + " itself is said too.")
    private @Nullable String before;

    @Option(names = "--json", description = "Print the comparison as JSON.")
    private boolean json;

    CompareCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Sides sides = Comparing.sides(new Inputs(around.in()), scenario, first, second, before, around.clock());
        Comparison comparison = new Comparing(around.planner()).of(sides);
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(comparison).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(CompareText.of(comparison, around.ink()));
        }
        return Exit.of(comparison.after());
    }
}
