package weekwright.desk.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Logs;
import weekwright.desk.app.Named;
import weekwright.desk.app.Sheeting;
import weekwright.desk.app.Work;
import weekwright.desk.view.load.LoadReports;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.desk.view.terminal.LoadText;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.LoadReport;
import weekwright.model.document.Documents;
import weekwright.model.load.Spread.Divisor;
import weekwright.model.plan.Log;
import weekwright.model.scenario.Scenario;

/** Load planned and load reported. */
@Command(
        name = "load",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Shows load planned and load reported by day and week, with monotony, strain, changes and ratios.",
            "It describes; it does not predict injury."
        })
final class LoadCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan; a folder brings its own. Without one, only what was done is shown.")
    private @Nullable String plan;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "What was done, or - for standard input; a folder brings its log.json.")
    private @Nullable String log;

    @Option(names = "--athlete", paramLabel = "ID", description = "Only this athlete, in full.")
    private @Nullable String athlete;

    @Option(
            names = "--divisor",
            paramLabel = "NAME",
            description = "Of the standard deviation: sample (n - 1), as usual and in spreadsheets, or population (n).")
    private String divisor = "sample";

    @Option(names = "--units", paramLabel = "NAME", description = "metric (m), as usual, or imperial (yd).")
    private String units = "metric";

    @Option(names = "--json", description = "Print all figures as JSON.")
    private boolean json;

    LoadCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Inputs inputs = new Inputs(around.in());
        Work work = Work.toRead(inputs, scenario, plan);
        Scenario read = work.scenario();
        Log done = Logs.of(inputs, scenario, log, read);
        Judged judged = work.plan() == null ? null : around.planner().judgeWithoutRemedies(read, work.plan());
        Sources sources =
                new Sources(read, judged, judged == null ? List.of() : Engine.people(read, judged.plan()), done);
        LoadReport report = LoadReports.of(
                sources,
                athlete == null ? null : Named.athlete(read, athlete).id(),
                Sheeting.named("--divisor", divisor, Divisor.values(), Divisor::id),
                Sheeting.units(units));
        new Output(around.out()).text(json ? Documents.write(report) : LoadText.of(report, around.ink()));
        return Exit.DONE;
    }
}
