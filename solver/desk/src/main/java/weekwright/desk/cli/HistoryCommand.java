package weekwright.desk.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Inputs;
import weekwright.desk.store.Revision;
import weekwright.desk.store.Store;
import weekwright.desk.store.Version;
import weekwright.desk.view.terminal.HistoryText;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** Lists the revisions of a folder. */
@Command(
        name = "history",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Lists the changes that a folder keeps, the newest first.",
            "A folder with a scenario.json that keeps none yet begins to."
        })
final class HistoryCommand implements Runnable {
    private final Surroundings around;

    @Parameters(paramLabel = "FOLDER", description = "The folder of the scenario and its plan.")
    private String folder = "";

    @Option(names = "--json", description = "Print the list as JSON.")
    private boolean json;

    HistoryCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Store store = Folders.open(Inputs.path(folder), around.clock());
        Version head = store.head();
        List<Revision> revisions = store.history();
        around.tell(store.news());
        new Output(around.out()).text(json ? json(head, revisions) : text(head, revisions));
    }

    private String text(Version head, List<Revision> revisions) {
        return HistoryText.of(
                revisions, head.number(), head.contents().scenario().zone(), around.ink());
    }

    private static String json(Version head, List<Revision> revisions) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("weekwright", Scenario.VERSION);
        document.put("head", head.number());
        document.put("revisions", revisions.stream().map(HistoryCommand::entry).toList());
        return Documents.writeAny(document);
    }

    private static Map<String, Object> entry(Revision revision) {
        Map<String, Object> entry = revision.fields();
        entry.put("beside", revision.beside());
        return entry;
    }
}
