package weekwright.desk.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.InputFault;
import weekwright.desk.store.StoreFault;
import weekwright.desk.view.terminal.Ink;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.scenario.Moment;

/** Runs one command and says how it ended. */
final class Cli {
    private static final int COLUMNS = 100;
    /** All commands, as help lists them. */
    static final List<String> NAMES = List.of(
            "propose",
            "check",
            "whynot",
            "tradeoffs",
            "compare",
            "whatif",
            "pin",
            "fixtures",
            "brief",
            "sheet",
            "load",
            "marks",
            "calendar",
            "table",
            "wall",
            "history",
            "undo",
            "redo",
            "forget",
            "rules",
            "catalogue",
            "schema",
            "new",
            "next",
            "demo",
            "desk");

    private final Surroundings around;

    Cli(Surroundings around) {
        this.around = around;
    }

    /** Runs a command; gives the exit code. */
    int run(String... arguments) {
        try {
            return commandLine(arguments.length == 0 ? "" : arguments[0]).execute(arguments);
        } catch (Throwable fault) {
            return ourFault(fault);
        }
    }

    private CommandLine commandLine(String asked) {
        CommandLine line = new CommandLine(new WeekwrightCommand());
        commands(asked).forEach(line::addSubcommand);
        line.registerConverter(Moment.class, Misuse::moment);
        line.registerConverter(LocalDate.class, Misuse::date);
        line.setOut(new PrintWriter(new OutputStreamWriter(around.out(), StandardCharsets.UTF_8), true));
        line.setErr(new PrintWriter(new OutputStreamWriter(around.err(), StandardCharsets.UTF_8), true));
        line.setUsageHelpWidth(COLUMNS);
        boolean plain = around.ink() == Ink.PLAIN;
        line.setColorScheme(Help.defaultColorScheme(plain ? Help.Ansi.OFF : Help.Ansi.ON));
        line.setParameterExceptionHandler((fault, rest) -> badUsage(fault));
        line.setExecutionExceptionHandler((fault, command, result) -> failed(fault));
        return line;
    }

    /** The command that is asked for, or all of them where it is none of them: reading each takes its time. */
    private List<Object> commands(String asked) {
        return switch (asked) {
            case "propose" -> List.of(new ProposeCommand(around));
            case "check" -> List.of(new CheckCommand(around));
            case "whynot" -> List.of(new WhyNotCommand(around));
            case "tradeoffs" -> List.of(new TradeOffsCommand(around));
            case "compare" -> List.of(new CompareCommand(around));
            case "whatif" -> List.of(new WhatIfCommand(around));
            case "pin" -> List.of(new PinCommand(around));
            case "fixtures" -> List.of(new FixturesCommand(around));
            case "brief" -> List.of(new BriefCommand(around));
            case "sheet" -> List.of(new SheetCommand(around));
            case "table" -> List.of(new TableCommand(around));
            case "wall" -> List.of(new WallCommand(around));
            case "new" -> List.of(new NewCommand(around));
            case "next" -> List.of(new NextCommand(around));
            case "load" -> List.of(new LoadCommand(around));
            case "marks" -> List.of(new MarksCommand(around));
            case "calendar" -> List.of(new CalendarCommand(around));
            case "rules" -> List.of(new RulesCommand(around));
            case "catalogue" -> List.of(new CatalogueCommand(around));
            case "schema" -> List.of(new SchemaCommand(around));
            case "demo" -> List.of(new DemoCommand(around));
            case "desk" -> List.of(new DeskCommand(around));
            case "history" -> List.of(new HistoryCommand(around));
            case "undo" -> List.of(new UndoCommand(around));
            case "redo" -> List.of(new RedoCommand(around));
            case "forget" -> List.of(new ForgetCommand(around));
            default -> NAMES.stream().flatMap(name -> commands(name).stream()).toList();
        };
    }

    private int badUsage(ParameterException fault) {
        around.err().println(safe(Misuse.said(fault)) + "." + meant(fault));
        around.err()
                .println("How to use it: "
                        + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return Exit.BAD_INPUT;
    }

    private static String meant(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched
                && !unmatched.getSuggestions().isEmpty()) {
            return " Did you mean " + String.join(" or ", unmatched.getSuggestions()) + "?";
        }
        return "";
    }

    private int failed(Exception fault) {
        if (fault instanceof InputFault input) {
            return badInput(input.problems());
        }
        if (fault instanceof FileFault || fault instanceof StoreFault) {
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

    private static String safe(Throwable fault) {
        String message = fault.getMessage();
        return safe(message == null || message.isBlank() ? fault.getClass().getSimpleName() : message);
    }

    /** A message in one line that can be printed. */
    private static String safe(String text) {
        return Plain.text(text.lines().findFirst().orElse("")).replaceFirst("\\.$", "");
    }
}
