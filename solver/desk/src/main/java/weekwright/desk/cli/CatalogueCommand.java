package weekwright.desk.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import weekwright.desk.view.terminal.CatalogueText;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.document.Documents;

/** Prints the session families. */
@Command(
        name = "catalogue",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Prints every session family with its time, demand, qualities, hours and source.")
final class CatalogueCommand implements Runnable {
    private final Surroundings around;

    @Option(names = "--json", description = "Print them as JSON.")
    private boolean json;

    CatalogueCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Output out = new Output(around.out());
        if (json) {
            out.text(Documents.writeCatalogue(Catalogue.builtIn().families()));
        } else {
            out.text(CatalogueText.of(Catalogue.builtIn(), around.ink()));
        }
    }
}
