package weekwright.desk.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Briefing;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Named;
import weekwright.desk.app.Work;
import weekwright.desk.export.Wall;
import weekwright.desk.view.plan.WallPage;
import weekwright.desk.view.plan.WallPages;
import weekwright.desk.view.terminal.Plain;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Writes a week for the wall. */
@Command(
        name = "wall",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Writes a week for the wall: days beside each other, groups below each other, on one sheet lying on its side.",
            "No athlete is named on it, nor why anybody sits out."
        })
final class WallCommand implements Runnable {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(names = "--week", paramLabel = "N", description = "Which week of the plan, from 1.")
    private int week = 1;

    @Option(names = "--group", paramLabel = "ID", description = "Only this group.")
    private @Nullable String group;

    @ArgGroup(multiplicity = "1")
    private Form form = new Form();

    /** How it is given out. */
    private static final class Form {
        @Option(names = "--html", paramLabel = "FILE", description = "Write a page.")
        private @Nullable String html;

        @Option(names = "--pdf", paramLabel = "FILE", description = "Write a sheet for paper.")
        private @Nullable String pdf;
    }

    WallCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        String output = form.html == null ? form.pdf : form.html;
        AtomicFile file = AtomicFile.at(Inputs.path(output == null ? "" : output));
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        Scenario read = work.scenario();
        Briefing.week(read, week);
        List<String> groups = group == null
                ? read.groups().stream().map(Group::id).toList()
                : List.of(Named.group(read, group).id());
        WallPage page = WallPages.of(read, around.planner().judgeWithoutRemedies(read, work.planned()), week, groups);
        around.err().println(Plain.text(file.write(form.pdf == null ? Wall.html(page) : pdf(page), "Wall page")));
    }

    private byte[] pdf(WallPage page) {
        around.tellLacking(Wall.lacking(page));
        return Wall.pdf(page);
    }
}
