package weekwright.desk.cli;

import picocli.CommandLine.Command;
import weekwright.desk.app.InputFault;

/** The program without a command. */
@Command(
        name = "weekwright",
        description = "Plans the weeks of a squad: which session when and where, and what stands in the way.",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "SCENARIO is a file, - for standard input, or a demo such as demo:one-match.",
            "Exit codes: 0 done; 1 a fault of the program; 2 bad usage or input, nothing written; 3 done, but the",
            "plan breaks what must hold; 4 a file could not be read or written; 130 interrupted twice."
        })
final class WeekwrightCommand implements Runnable {
    @Override
    public void run() {
        throw new InputFault("a command is missing: weekwright --help lists them");
    }
}
