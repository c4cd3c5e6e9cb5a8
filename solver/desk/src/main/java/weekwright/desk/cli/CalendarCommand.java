package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.export.Calendars;
import weekwright.desk.export.Whose;
import weekwright.desk.view.terminal.Plain;
import weekwright.engine.explain.Judged;

/** Writes the calendar of a group or an athlete. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Writes what lies ahead of a group or an athlete as a calendar (iCalendar, .ics), to import or to subscribe to.",
            "Written over its last writing, it says what has changed: a moved session moves, one that is gone is cancelled."
                    + " Why somebody sits out is not in it."
        })
final class CalendarCommand implements Runnable {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(names = "--group", paramLabel = "ID", description = "For this group; the only one need not be named.")
    private @Nullable String group;

    @Option(names = "--athlete", paramLabel = "ID", description = "For this athlete.")
    private @Nullable String athlete;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "F.ics",
            description =
                    "File to write it into; the last writing of it is taken into account. Without it, it is printed.")
    private @Nullable String output;

    CalendarCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Inputs inputs = new Inputs(around.in());
        AtomicFile file = output == null ? null : AtomicFile.at(Inputs.path(output));
        Work work = Work.toRead(inputs, given.scenario, given.plan);
        Whose whose = Whose.of(work.scenario(), group, athlete);
        Calendars.Before before = output == null ? null : before(inputs, Inputs.path(output));
        Judged judged = around.planner().judgeWithoutRemedies(work.scenario(), work.planned());
        Calendars.Made made =
                Calendars.of(work.scenario(), judged, whose, around.clock().instant(), before);
        if (file == null) {
            new Output(around.out()).text(made.text());
        } else {
            String written = file.write(made.text().getBytes(StandardCharsets.UTF_8), "Calendar");
            around.err().println(Plain.text(written + " " + made.said()));
        }
    }

    private static Calendars.@Nullable Before before(Inputs inputs, Path path) {
        return Files.exists(path)
                ? new Calendars.Before(
                        path.toString(), new String(inputs.file(path.toString()), StandardCharsets.UTF_8))
                : null;
    }
}
