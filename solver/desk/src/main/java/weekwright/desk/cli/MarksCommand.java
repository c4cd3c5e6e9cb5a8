package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Logs;
import weekwright.desk.app.Sheeting;
import weekwright.desk.app.Target;
import weekwright.desk.app.Work;
import weekwright.desk.view.terminal.MarksText;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.document.Documents;
import weekwright.model.plan.Log;
import weekwright.model.prescription.Improvements;
import weekwright.model.prescription.RepMax;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Timing;

/** Marks that a log betters. */
@Command(
        name = "marks",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Shows which marks of the athletes a log betters; only -o takes them into the scenario.",
            "Runs are held against marks over the same distance, from the same start and with the same timing only."
        })
final class MarksCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "What was done, or - for standard input; a folder brings its log.json.")
    private @Nullable String log;

    @Option(
            names = "--timing",
            paramLabel = "NAME",
            description = "How the runs of the log were timed: electronic or hand. Without it no run is used.")
    private @Nullable String timing;

    @Option(
            names = "--formula",
            paramLabel = "NAME",
            description = "How a maximum is estimated from a set; usually epley (see sheet --help).")
    private String formula = "epley";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "SCENARIO",
            description = "File to write the scenario with these marks into.")
    private @Nullable String output;

    MarksCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Inputs inputs = new Inputs(around.in());
        Target target = output == null ? null : Target.at(Inputs.path(output), around.clock());
        Scenario read = Work.toRead(inputs, scenario, null).scenario();
        Log done = Logs.of(inputs, scenario, log, read);
        if (done == null) {
            throw new InputFault("--log is missing: name the log, or a folder that has one");
        }
        Improvements found = Improvements.of(
                read,
                done.entries(),
                timing == null ? null : Sheeting.named("--timing", timing, Timing.values(), Timing::id),
                Sheeting.named("--formula", formula, RepMax.values(), RepMax::id));
        new Output(around.out()).text(MarksText.of(found));
        if (target == null) {
            around.err().println("Nothing is changed; -o FILE writes the scenario with these marks.");
        } else {
            target.suits(read);
            byte[] with = Documents.write(found.taken(read)).getBytes(StandardCharsets.UTF_8);
            String written = target.write(with, "Marks from the log");
            around.tell(target.news());
            around.err().println(Plain.text(written));
        }
        return Exit.DONE;
    }
}
