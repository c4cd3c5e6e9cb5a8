package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.export.Tables;
import weekwright.desk.view.terminal.Plain;
import weekwright.engine.explain.Judged;

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

    @Mixin
    private final Given given = new Given();

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
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        Judged judged = kind == Tables.Kind.FINDINGS
                ? around.planner().judge(work.scenario(), work.planned())
                : around.planner().judgeWithoutRemedies(work.scenario(), work.planned());
        String table = Tables.of(kind, work.scenario(), judged, semicolons);
        if (file == null) {
            new Output(around.out()).text(table);
        } else {
            around.err().println(Plain.text(file.write(table.getBytes(StandardCharsets.UTF_8), "Table")));
        }
    }
}
