package weekwright.desk.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import weekwright.desk.view.terminal.RulesText;
import weekwright.model.document.Documents;
import weekwright.model.rulebook.Rulebook;

/** Prints the rules. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Prints every rule with its cost, its numbers and where they come from.")
final class RulesCommand implements Runnable {
    private final Surroundings around;

    @Option(names = "--json", description = "Print them as JSON.")
    private boolean json;

    RulesCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Output out = new Output(around.out());
        if (json) {
            out.text(Documents.writeRules(Rulebook.builtIn().rules()));
        } else {
            out.text(RulesText.of(Rulebook.builtIn(), around.ink()));
        }
    }
}
