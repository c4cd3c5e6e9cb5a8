package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Target;
import weekwright.desk.app.Work;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Intake;
import weekwright.desk.intake.Preview;
import weekwright.desk.intake.PreviewText;
import weekwright.desk.intake.Wanted;
import weekwright.desk.intake.What;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** Takes fixtures, hours and people from a calendar or a table into a scenario. */
@Command(
        name = "fixtures",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        sortOptions = false,
        description = {
            "Shows row by row what a calendar (.ics) or a table (.csv, .tsv) would change in a scenario, and asks what it"
                    + " leaves open; with -o or --take it is taken.",
            "Nothing is guessed: dates that can be read in two ways, times and ends that are missing, zones that nobody"
                    + " knows, rows that look like a slip are asked about. Taking a file again adds nothing; what has moved"
                    + " moves."
        })
final class FixturesCommand implements Runnable {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Option(names = "--from", required = true, paramLabel = "FILE", description = "The calendar or table; - reads it.")
    private String from = "";

    @Option(
            names = "--as",
            paramLabel = "WHAT",
            description =
                    "What it holds: fixtures (usual), windows, closures, away, athletes, marks, minutes or expected.")
    private String what = "fixtures";

    @Option(names = "--group", paramLabel = "ID", description = "For this group; the only one need not be named.")
    private @Nullable String group;

    @Option(names = "--athlete", paramLabel = "ID", description = "For this athlete (windows, away).")
    private @Nullable String athlete;

    @Option(names = "--facility", paramLabel = "ID", description = "For this facility (windows, closures).")
    private @Nullable String facility;

    @Option(names = "--fixture", paramLabel = "ID", description = "Of this fixture (minutes, expected).")
    private @Nullable String fixture;

    @Option(names = "--family", paramLabel = "ID", description = "Family of the fixtures, such as court-fixture.")
    private @Nullable String family;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Take it and write the scenario into this file.")
    private @Nullable String output;

    @Option(names = "--take", description = "Take it and write the scenario back to where it was read.")
    private boolean take;

    @Option(names = "--all", description = "Show all rows, also the many that come to nothing.")
    private boolean all;

    @Mixin
    private AnswerOptions answers = new AnswerOptions();

    FixturesCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        if (take && output != null) {
            throw new InputFault("give --take or -o, not both");
        }
        if (from.equals(Inputs.STANDARD_INPUT) && scenario.equals(Inputs.STANDARD_INPUT)) {
            throw new InputFault("only one of SCENARIO and --from can come from standard input");
        }
        Inputs inputs = new Inputs(around.in());
        Work work = take
                ? Work.toRewrite(inputs, scenario, around.clock())
                : Work.scenarioInto(inputs, scenario, output, around.clock());
        around.tell(work.news());
        Wanted wanted = new Wanted(What.named(what), group, athlete, facility, fixture, family);
        Preview preview = Intake.preview(inputs.file(from), work.scenario(), wanted, answers.answers());
        new Output(around.out()).text(PreviewText.of(preview, all, around.ink()));
        Target target = work.target();
        if (target == null) {
            around.err().println("Nothing is taken yet: give -o FILE, or --take to write it back.");
        } else {
            take(preview, target);
        }
    }

    private void take(Preview preview, Target target) {
        Scenario taken = taken(preview);
        String written = target.write(
                Documents.write(taken).getBytes(StandardCharsets.UTF_8), what + " taken in: " + preview.counts());
        around.tell(target.news());
        around.err().println(Plain.text(written));
    }

    private Scenario taken(Preview preview) {
        if (!answers.rest() && !preview.open().isEmpty()) {
            List<String> problems = new ArrayList<>();
            problems.add("Nothing is taken, because something is still to be answered:");
            problems.addAll(preview.open());
            throw new InputFault(problems);
        }
        return preview.take(answers.rest());
    }

    /** What a coach can answer. */
    static final class AnswerOptions {
        @Option(names = "--day-first", description = "03/04 is the third of April.")
        private boolean dayFirst;

        @Option(names = "--month-first", description = "03/04 is the fourth of March.")
        private boolean monthFirst;

        @Option(names = "--zone", paramLabel = "ZONE", description = "Zone of times that name none.")
        private @Nullable String zone;

        @Option(names = "--zone-of", paramLabel = "NAME=ZONE", description = "What a zone of the file is.")
        private List<String> zoneOf = List.of();

        @Option(
                names = "--time",
                paramLabel = "[ROW=]T",
                description = "Start of rows that have only a date, or of one row.")
        private List<String> time = List.of();

        @Option(names = "--minutes", paramLabel = "N", description = "How long rows last that have no end.")
        private @Nullable String minutes;

        @Option(names = "--decimal-comma", description = "1,234 is a little more than one.")
        private boolean decimalComma;

        @Option(names = "--decimal-point", description = "1,234 is more than a thousand.")
        private boolean decimalPoint;

        @Option(names = "--encoding", paramLabel = "NAME", description = "How the file's letters are written.")
        private @Nullable String encoding;

        @Option(names = "--column", paramLabel = "WHAT=HEADING", description = "What a column holds.")
        private List<String> column = List.of();

        @Option(names = "--only", paramLabel = "TEXT", description = "Only rows whose name holds this text.")
        private @Nullable String only;

        @Option(names = "--accept", paramLabel = "ROWS", description = "Rows that are right as they stand, e.g. 3,5-9.")
        private List<String> accept = List.of();

        @Option(names = "--leave-out", paramLabel = "ROWS", description = "Rows that are not wanted.")
        private List<String> leaveOut = List.of();

        @Option(names = "--same", paramLabel = "ROW=ID", description = "What a row is in the scenario.")
        private List<String> same = List.of();

        @Option(names = "--past", description = "Take fixtures of the four weeks before the plan as played.")
        private boolean past;

        @Option(names = "--replace", description = "Of closures and absences, take out what the file does not have.")
        private boolean replace;

        @Option(names = "--rest", description = "Leave out what is still open and take the rest.")
        private boolean rest;

        boolean rest() {
            return rest;
        }

        Answers answers() {
            Map<String, List<String>> given = new LinkedHashMap<>();
            flag(given, Answers.DAY_FIRST, dayFirst);
            flag(given, Answers.MONTH_FIRST, monthFirst);
            one(given, Answers.ZONE, zone);
            given.put(Answers.ZONE_OF, zoneOf);
            given.put(Answers.TIME, time);
            one(given, Answers.MINUTES, minutes);
            flag(given, Answers.DECIMAL_COMMA, decimalComma);
            flag(given, Answers.DECIMAL_POINT, decimalPoint);
            one(given, Answers.ENCODING, encoding);
            given.put(Answers.COLUMN, column);
            one(given, Answers.ONLY, only);
            given.put(Answers.ACCEPT, accept);
            given.put(Answers.LEAVE_OUT, leaveOut);
            given.put(Answers.SAME, same);
            flag(given, Answers.PAST, past);
            flag(given, Answers.REPLACE, replace);
            Answers answers = Answers.NONE;
            for (Map.Entry<String, List<String>> entry : given.entrySet()) {
                for (String value : entry.getValue()) {
                    answers = answers.with(entry.getKey(), value);
                }
            }
            return answers;
        }

        private static void flag(Map<String, List<String>> given, String name, boolean said) {
            given.put(name, said ? List.of("yes") : List.of());
        }

        private static void one(Map<String, List<String>> given, String name, @Nullable String value) {
            given.put(name, value == null ? List.of() : List.of(value));
        }
    }
}
