package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.NewFolder;
import weekwright.desk.app.WhatIfs;
import weekwright.desk.app.WhatIfs.Answer;
import weekwright.desk.app.Work;
import weekwright.desk.store.Contents;
import weekwright.desk.view.EventText;
import weekwright.desk.view.terminal.CompareText;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.change.Event;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Says what would come of a change of the scenario. */
@Command(
        name = "whatif",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Says what would come of a fixture that moves, a place that is closed, a day or an athlete lost: what it breaks"
                    + " by itself, and how the plan looks after planning again from the one there is, its pins held.",
            "Several may happen at once. Nothing is kept unless --keep or -o says so."
        })
final class WhatIfCommand implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    private List<Move> moves = new ArrayList<>();

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    private List<Closing> closings = new ArrayList<>();

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    private List<Loss> losses = new ArrayList<>();

    @Option(names = "--lose", paramLabel = "ATHLETE", description = "An athlete who is not there.")
    private List<String> athletes = new ArrayList<>();

    @Mixin
    private final SearchOptions options = new SearchOptions();

    @Option(names = "--keep", description = "Save the changed scenario and its plan as a change of the folder.")
    private boolean keep;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "New folder to write the changed scenario and its plan into.")
    private @Nullable String output;

    @Option(names = "--json", description = "Print what differs as JSON, as compare does.")
    private boolean json;

    /** A fixture that moves. */
    private static final class Move {
        @Option(names = "--fixture", required = true, paramLabel = "ID", description = "A fixture that moves.")
        private String fixture = "";

        @Option(
                names = "--to",
                required = true,
                paramLabel = "TIME",
                description = "When it starts then, e.g. 2027-02-14T15:00.")
        private Moment to = Moment.parse("2000-01-01T00:00");
    }

    /** A place that is closed. */
    private static final class Closing {
        @Option(names = "--close", required = true, paramLabel = "FACILITY", description = "A place that is closed.")
        private String facility = "";

        @Option(names = "--day", required = true, paramLabel = "DATE", description = "On which day.")
        private LocalDate day = LocalDate.EPOCH;
    }

    /** A day that is lost. */
    private static final class Loss {
        @Option(
                names = "--lose-day",
                required = true,
                paramLabel = "DATE",
                description = "A day on which nobody trains; practices of that day fall away.")
        private LocalDate day = LocalDate.EPOCH;

        @Option(names = "--group", paramLabel = "ID", description = "Only this group loses the day.")
        private @Nullable String group;
    }

    WhatIfCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        options.check();
        NewFolder folder = output == null ? null : NewFolder.at(Inputs.path(output), around.clock());
        Inputs inputs = new Inputs(around.in());
        Work work = keep
                ? Work.toChange(inputs, given.scenario, given.plan, null, around.clock())
                : Work.toRead(inputs, given.scenario, given.plan);
        if (keep) {
            work.checkKeeps();
        }
        around.tell(work.news());
        List<Event> events = events(work.scenario());
        String question = EventText.question(work.scenario(), events);
        Answer answer = new WhatIfs(around.planner())
                .of(
                        options.proposal(around, work.scenario(), work.planned()),
                        work.planned(),
                        events,
                        proposal -> Searching.run(around, proposal));
        try {
            save(work, folder, answer, question);
        } finally {
            print(answer, question, EventText.besides(work.scenario(), events));
        }
        return Exit.of(answer.comparison().after());
    }

    private List<Event> events(Scenario read) {
        List<Event> events = new ArrayList<>();
        moves.forEach(move -> events.add(WhatIfs.moved(read, move.fixture, move.to)));
        closings.forEach(closing -> events.add(WhatIfs.closed(read, closing.facility, closing.day)));
        losses.forEach(loss -> events.add(WhatIfs.lost(read, loss.day, loss.group)));
        athletes.forEach(athlete -> events.add(WhatIfs.without(read, athlete)));
        if (events.isEmpty()) {
            throw new InputFault(
                    "nothing is said of what happens: give --fixture ID --to TIME, --close FACILITY --day DATE,"
                            + " --lose-day DATE or --lose ATHLETE");
        }
        return events;
    }

    private void save(Work work, @Nullable NewFolder folder, Answer answer, String question) {
        String label = question.replaceFirst("\\?$", "");
        if (folder != null) {
            around.err()
                    .println(Plain.text(folder.begin(
                            label,
                            new Contents(answer.scenario(), answer.judged().plan(), null))));
        }
        if (keep) {
            around.err()
                    .println(Plain.text(
                            work.keep(label, answer.scenario(), answer.judged().plan())));
            around.tell(work.news());
        }
        if (folder == null && !keep && !json) {
            around.err().println("Nothing is kept: give --keep or -o FOLDER to keep it.");
        }
    }

    private void print(Answer answer, String question, List<String> besides) {
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(answer.comparison()).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(CompareText.whatIf(question, besides, answer.comparison(), around.ink()));
        }
    }
}
