package weekwright.desk.app;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Log;
import weekwright.model.scenario.Scenario;

/** Finds the log that belongs to what a command works on. */
public final class Logs {
    static final String LOG = "log.json";

    private Logs() {}

    /**
     * The log that is named, else that of the folder; null where there is neither.
     *
     * @param scenario the scenario as it was given
     * @throws InputFault when it cannot be used
     * @throws FileFault when it cannot be read
     */
    public static @Nullable Log of(Inputs inputs, String scenario, @Nullable String log, Scenario read) {
        if (log != null) {
            if (log.equals(Inputs.STANDARD_INPUT) && scenario.equals(Inputs.STANDARD_INPUT)) {
                throw new InputFault("only one of SCENARIO and --log can come from standard input");
            }
            return inputs.log(log, read);
        }
        if (!Inputs.isFolder(scenario)) {
            return null;
        }
        Path beside = Inputs.path(scenario).resolve(LOG);
        return Files.exists(beside) ? inputs.log(beside.toString(), read) : null;
    }
}
