package weekwright.desk.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.Briefing;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Logs;
import weekwright.desk.app.NewFolder;
import weekwright.desk.app.NextWeeks;
import weekwright.desk.app.NextWeeks.Before;
import weekwright.desk.app.Work;
import weekwright.desk.intake.NewWeek;
import weekwright.desk.store.Contents;
import weekwright.desk.view.page.StartPages;
import weekwright.model.change.NextWeek;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Begins the next week from one that is there. */
@Command(
        name = "next",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Begins the next week from one that is there, in a new folder: groups, athletes, places, staff and rules are"
                    + " carried over, fixed things move to the same times. Absences, closures and restrictions stay on their"
                    + " dates and end with them.",
            "What was done becomes history: what the log says, and the rest as planned."
        })
final class NextCommand implements Runnable {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "FOLDER",
            description = "New folder to write the next week into.")
    private String output = "";

    @Option(names = "--title", paramLabel = "TEXT", description = "What it is called; without it, as the week before.")
    private @Nullable String title;

    @Option(
            names = "--first-day",
            paramLabel = "DATE",
            description = "Its first day, whole weeks later; without it, the day after the last week.")
    private @Nullable LocalDate firstDay;

    @Option(
            names = "--week",
            paramLabel = "N",
            description = "Which week of the plan is carried over, from 1; without it, the latest with one game.")
    private @Nullable Integer week;

    @Option(
            names = "--fixture",
            paramLabel = "TEXT",
            description =
                    "A fixture, such as \"2027-03-13 14:30 League round 19\"; several may be given. Each is of the"
                            + " groups and length of the one of the week before that it comes in place of.")
    private List<String> fixtures = new ArrayList<>();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "What was done, or - for standard input; a folder brings its log.json.")
    private @Nullable String log;

    @Option(names = "--log-only", description = "Count nothing as done but what the log says.")
    private boolean logOnly;

    @Option(names = "--pins", description = "Hold what is pinned at the same times again.")
    private boolean pins;

    NextCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        NewFolder folder = NewFolder.at(Inputs.path(output), around.clock());
        Inputs inputs = new Inputs(around.in());
        Work work = Work.toRead(inputs, given.scenario, given.plan);
        Scenario read = work.scenario();
        Plan plan = work.plan();
        Before before = new Before(
                read,
                plan == null
                        ? null
                        : around.planner().judgeWithoutRemedies(read, plan).plan(),
                Logs.of(inputs, given.scenario, log, read));
        NextWeek next = next(read);
        Contents first = NextWeeks.contents(before, next, !logOnly, pins, around.planner());
        String written = folder.begin("Begun from " + read.title(), first);
        around.tell(List.of(
                written,
                "Carried over from " + StartPages.week(read, next.week()) + ": "
                        + String.join("; ", StartPages.carried(read)) + ".",
                "Fixtures: " + known(first.scenario()) + ".",
                "To plan it: propose " + Given.typed(output)));
    }

    private NextWeek next(Scenario before) {
        int carried = week == null ? NextWeek.latestWithOneGame(before) : Briefing.week(before, week);
        LocalDate first = firstDay == null ? NextWeek.firstDay(before, before.weeks()) : firstDay;
        NextWeeks weeks = new NextWeeks(before, carried);
        List<Fixture> added = new ArrayList<>();
        for (String text : fixtures) {
            Fixture said = NewWeek.fixture(text, added.size() + 1);
            added.add(weeks.fixture(added.size(), said.label(), said.start(), added));
        }
        List<String> outside = added.stream()
                .flatMap(one -> NextWeeks.outside(one, first).stream())
                .toList();
        if (!outside.isEmpty()) {
            throw new InputFault(outside);
        }
        return new NextWeek("week-" + first, title == null ? before.title() : title, first, carried, added);
    }

    private static String known(Scenario week) {
        return week.fixtures().isEmpty()
                ? "none"
                : String.join(
                        "; ", week.fixtures().stream().map(StartPages::fixture).toList());
    }
}
