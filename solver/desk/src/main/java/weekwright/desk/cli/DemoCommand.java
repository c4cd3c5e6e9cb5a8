package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Target;
import weekwright.desk.view.terminal.DemosText;
import weekwright.desk.view.terminal.Plain;
import weekwright.scenarios.Scenarios;

/** Lists the demo scenarios or gives one out. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Lists the demo scenarios; with a NAME prints that one, or writes it with -o, to start from.")
final class DemoCommand implements Runnable {
    private final Surroundings around;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Which one, e.g. one-match.")
    private @Nullable String name;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "File to write it into.")
    private @Nullable String output;

    DemoCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        if (name == null) {
            list();
        } else {
            give(Inputs.demo(name));
        }
    }

    private void list() {
        if (output != null) {
            throw new InputFault("-o needs the NAME of a demo scenario");
        }
        new Output(around.out()).text(DemosText.of(Scenarios.all(), around.ink()));
    }

    private void give(byte[] demo) {
        if (output == null) {
            new Output(around.out()).bytes(demo);
        } else {
            Target file = Target.at(Inputs.path(output), around.clock());
            String written = file.write(demo, "Demo " + name);
            around.tell(file.news());
            around.err().println(Plain.text(written));
        }
    }
}
