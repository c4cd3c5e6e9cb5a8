package weekwright.desk.cli;

import java.util.Objects;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.model.document.Documents;

/** Prints the schema of a document. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Prints the JSON Schema of a document: scenario, plan, log, catalogue, rules, check, whynot,"
                + " tradeoffs, compare, sheet, load or history.")
final class SchemaCommand implements Runnable {
    private final Surroundings around;

    @Parameters(paramLabel = "NAME", description = "Which document.")
    private String name = "";

    SchemaCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        try {
            new Output(around.out()).text(Documents.schema(name));
        } catch (IllegalArgumentException e) {
            throw new InputFault(Objects.requireNonNullElse(e.getMessage(), name));
        }
    }
}
