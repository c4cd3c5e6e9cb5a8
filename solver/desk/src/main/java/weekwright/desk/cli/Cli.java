package weekwright.desk.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.InputFault;
import weekwright.desk.view.Ink;
import weekwright.desk.view.Plain;
import weekwright.model.scenario.Moment;

/** Runs one command and says how it ended. */
final class Cli {
    private static final Map<String, Function<Surroundings, Object>> COMMANDS = commands();

    private final Surroundings around;

    Cli(Surroundings around) {
        this.around = around;
    }

    private static Map<String, Function<Surroundings, Object>> commands() {
        Map<String, Function<Surroundings, Object>> commands = new java.util.LinkedHashMap<>();
        commands.put("propose", ProposeCommand::new);
        commands.put("check", CheckCommand::new);
        commands.put("rules", RulesCommand::new);
        commands.put("catalogue", CatalogueCommand::new);
        commands.put("schema", SchemaCommand::new);
        commands.put("demo", DemoCommand::new);
        return commands;
    }

    /** Runs a command; gives the exit code. */
    int run(String... arguments) {
        try {
            return commandLine().execute(arguments);
        } catch (Throwable fault) {
            return ourFault(fault);
        }
    }

    private CommandLine commandLine() {
        CommandLine line = new CommandLine(new WeekwrightCommand());
        COMMANDS.forEach((name, command) -> line.addSubcommand(name, command.apply(around)));
        line.registerConverter(Moment.class, Moment::parse);
        line.setOut(new PrintWriter(new OutputStreamWriter(around.out(), StandardCharsets.UTF_8), true));
        line.setErr(new PrintWriter(around.err(), true));
        boolean plain = around.ink() == Ink.PLAIN;
        line.setColorScheme(Help.defaultColorScheme(plain ? Help.Ansi.OFF : Help.Ansi.ON));
        line.setParameterExceptionHandler((fault, rest) -> badUsage(fault));
        line.setExecutionExceptionHandler((fault, command, result) -> failed(fault));
        return line;
    }

    private int badUsage(ParameterException fault) {
        around.err().println(safe(fault) + ".");
        around.err()
                .println("How to use it: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return Exit.BAD_INPUT;
    }

    private int failed(Exception fault) {
        if (fault instanceof InputFault input) {
            return badInput(input.problems());
        }
        if (fault instanceof FileFault) {
            around.err().println(safe(fault) + ".");
            return Exit.FILE;
        }
        return ourFault(fault);
    }

    private int badInput(List<String> problems) {
        PrintStream err = around.err();
        problems.forEach(problem -> err.println(Plain.text(problem)));
        return Exit.BAD_INPUT;
    }

    private int ourFault(Throwable fault) {
        around.err()
                .println("A fault of the program, not yours: " + safe(fault)
                        + ". Please report it; with WEEKWRIGHT_DEBUG set it shows where it happened.");
        if (around.debug()) {
            fault.printStackTrace(around.err());
        }
        return Exit.OUR_FAULT;
    }

    /** The message in one line that can be printed. */
    private static String safe(Throwable fault) {
        String message = fault.getMessage();
        String text = message == null || message.isBlank() ? fault.getClass().getSimpleName() : message;
        return Plain.text(text.lines().findFirst().orElse("")).replaceFirst("\\.$", "");
    }
}
