package weekwright.desk.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.FirstWeek;
import weekwright.desk.app.Folders;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Target;
import weekwright.desk.intake.NewWeek;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.document.Problem;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** Writes a first week to start from. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Writes a first week to start from: one squad, its free hours, fixtures and places, and the sessions that the"
                    + " places allow.",
            "With --ask it asks for what is not given."
        })
final class NewCommand implements Runnable {
    private static final String USUAL_HOURS = "Mon-Fri 09:00-17:00";
    private static final List<String> USUAL_PLACES = List.of("field=Pitch", "gym=Weights room");

    private final Surroundings around;
    private @Nullable BufferedReader lines;

    @Parameters(index = "0", paramLabel = "FILE", description = "File to write; it must not be there yet.")
    private String output = "";

    @Option(names = "--title", paramLabel = "TEXT", description = "What the week is called.")
    private @Nullable String title;

    @Option(names = "--zone", paramLabel = "ZONE", description = "Zone of all times, such as Europe/Dublin.")
    private @Nullable String zone;

    @Option(names = "--first-day", paramLabel = "DATE", description = "Its first day, such as 2027-03-01.")
    private @Nullable String firstDay;

    @Option(
            names = "--free",
            paramLabel = "HOURS",
            description = "Hours that the squad has, such as \"Mon-Fri 16:00-21:00\"; several may be given.")
    private List<String> free = new ArrayList<>();

    @Option(
            names = "--fixture",
            paramLabel = "TEXT",
            description = "A fixture, such as \"2027-03-06 14:30 League round 18\"; several may be given.")
    private List<String> fixtures = new ArrayList<>();

    @Option(
            names = "--place",
            paramLabel = "KIND[=NAME]",
            description = "A place: track, field, hill, hall, gym or pool, and its name; several may be given.")
    private List<String> places = new ArrayList<>();

    @Option(names = "--ask", description = "Ask for what is not given.")
    private boolean ask;

    NewCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        if (Files.exists(Inputs.path(output))) {
            throw new InputFault(output + " is there already: give the name of a new file");
        }
        Target target = Target.at(Inputs.path(output), around.clock());
        if (ask) {
            lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8));
            askAll();
        }
        Scenario week = sound(week());
        String written = target.write(Documents.write(week).getBytes(StandardCharsets.UTF_8), "A first week");
        around.tell(target.news());
        around.err().println(Plain.text(written));
        around.err()
                .println("What is in it: hours of the squad, its aims, fixtures and places; change them in any editor"
                        + " (schema scenario says what else can stand there), then: propose "
                        + Plain.text(Given.typed(toPlan())));
    }

    /** What to plan: the folder of a file that a folder is read from, so that the plan is kept there, or the file. */
    private String toPlan() {
        Path file = Inputs.path(output);
        Path folder = file.getParent();
        return folder != null && file.endsWith(Folders.SCENARIO) ? folder.toString() : output;
    }

    private FirstWeek week() {
        List<Window> windows = (free.isEmpty() ? List.of(USUAL_HOURS) : free)
                .stream().map(NewWeek::free).toList();
        List<Fixture> known = new ArrayList<>();
        for (String text : fixtures) {
            known.add(NewWeek.fixture(text, known.size() + 1));
        }
        return new FirstWeek(
                title == null || title.isBlank() ? "My week" : title,
                NewWeek.firstDay(given("--first-day", firstDay, "2027-03-01")),
                NewWeek.zone(given("--zone", zone, "Europe/Dublin")),
                windows,
                known,
                NewWeek.places(places.isEmpty() ? USUAL_PLACES : places));
    }

    private static String given(String option, @Nullable String value, String example) {
        if (value == null) {
            throw new InputFault(option + " is missing: give one, such as " + example + ", or --ask to be asked");
        }
        return value;
    }

    /** What is written must be readable; a fixture may lie outside of the plan. */
    private Scenario sound(FirstWeek week) {
        try {
            return Documents.readScenario(
                    output, Documents.write(week.scenario()).getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new InputFault(
                    e.problems().stream().map(problem -> wrong(problem)).toList());
        }
    }

    private static String wrong(Problem problem) {
        return problem.wrong() + ". " + problem.right();
    }

    private void askAll() {
        title = title == null ? asked("What is the week called?", "My week", text -> text) : title;
        zone = zone == null
                ? asked(
                        "Which zone are its times in?",
                        "Europe/Dublin",
                        text -> NewWeek.zone(text).getId())
                : zone;
        firstDay = firstDay == null
                ? asked(
                        "Which is its first day?",
                        null,
                        text -> NewWeek.firstDay(text).toString())
                : firstDay;
        several(free, "Which hours has the squad?", USUAL_HOURS, text -> NewWeek.free(text));
        several(
                fixtures,
                "Which fixtures are known? E.g. 2027-03-06 14:30 League round 18",
                "none",
                text -> NewWeek.fixture(text, 1));
        several(
                places,
                "Which places are there? E.g. gym=Weights room",
                "field and gym",
                text -> NewWeek.places(List.of(text)));
    }

    /** Asks until an answer can be understood; an empty one means what is usual. */
    private String asked(String question, @Nullable String usual, Function<String, String> understood) {
        while (true) {
            around.err().println(question + (usual == null ? "" : " [" + usual + "]"));
            String answer = line();
            if (answer.isEmpty() && usual != null) {
                return usual;
            }
            try {
                return understood.apply(answer);
            } catch (InputFault e) {
                around.err().println(Plain.text(String.valueOf(e.getMessage())));
            }
        }
    }

    /** Asks for one after the other until an empty line. */
    private void several(List<String> into, String question, String usual, Consumer<String> understood) {
        if (!into.isEmpty()) {
            return;
        }
        around.err().println(question + " One a line, an empty line ends. [" + usual + "]");
        for (String answer = line(); !answer.isEmpty(); answer = line()) {
            try {
                understood.accept(answer);
                into.add(answer);
            } catch (InputFault e) {
                around.err().println(Plain.text(String.valueOf(e.getMessage())));
            }
        }
    }

    private String line() {
        BufferedReader open = lines;
        try {
            String line = open == null ? null : open.readLine();
            if (line == null) {
                throw new InputFault("the answers end too early: nothing is written");
            }
            return line.strip();
        } catch (IOException e) {
            throw new FileFault("standard input could not be read", e);
        }
    }
}
