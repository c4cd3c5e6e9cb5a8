package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.export.Tables;
import weekwright.desk.view.Plain;

/** Writes a plan as a table for a spreadsheet. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Writes a plan as a table for a spreadsheet (CSV): all that lies in it, what it breaks, the loads of its days or"
                    + " what each place is used for.",
            "No cell can be taken for a formula: an apostrophe stands before text that begins with = + - or @."
        })
final class TableCommand implements Runnable {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan, or - for standard input; a folder brings its own.")
    private @Nullable String plan;

    @Option(names = "--what", paramLabel = "NAME", description = "plan (usual), findings, loads or bookings.")
    private String what = "plan";

    @Option(
            names = "--semicolons",
            description =
                    "Part columns by semicolons and decimals by a comma, as spreadsheets of many countries expect.")
    private boolean semicolons;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "F.csv",
            description = "File to write it into; without it, it is printed.")
    private @Nullable String output;

    TableCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        AtomicFile file = output == null ? null : AtomicFile.at(Inputs.path(output));
        Tables.Kind kind = Tables.Kind.named(what);
        Work work = Work.toRead(new Inputs(around.in()), scenario, plan);
        String table =
                Tables.of(kind, work.scenario(), around.planner().judge(work.scenario(), work.planned()), semicolons);
        if (file == null) {
            new Output(around.out()).text(table);
        } else {
            around.err().println(Plain.text(file.write(table.getBytes(StandardCharsets.UTF_8), "Table")));
        }
    }
}
