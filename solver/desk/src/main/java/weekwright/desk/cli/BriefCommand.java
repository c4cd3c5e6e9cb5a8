package weekwright.desk.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Briefing;
import weekwright.desk.app.Briefing.GivenOut;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Target;
import weekwright.desk.app.Work;
import weekwright.desk.export.BriefHtml;
import weekwright.desk.view.brief.BriefPage;
import weekwright.desk.view.brief.BriefPages;
import weekwright.desk.view.brief.BriefPages.Since;
import weekwright.desk.view.brief.BriefPages.Wish;
import weekwright.desk.view.terminal.BriefText;
import weekwright.desk.view.terminal.Plain;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Tells the week to those who lead the team, and to those who train. */
@Command(
        name = "brief",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Tells a week to the head coach: what lies when, counted from the matches, why so, and what was given up;"
                    + " or with --text to those who train.",
            "Where the plan was given out before, it says what has changed since. No athlete is named."
        })
final class BriefCommand implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(names = "--group", paramLabel = "ID", description = "Only this group.")
    private @Nullable String group;

    @Option(names = "--week", paramLabel = "N", defaultValue = "1", description = "Which week of the plan; usually 1.")
    private int week;

    @Option(
            names = "--since",
            paramLabel = "PLAN",
            description = "The plan as it was given out, to say what has changed; a folder finds its own.")
    private @Nullable String since;

    @Option(
            names = "--publish",
            description = "Note in the folder that the plan is given out now: planning again keeps closer to it.")
    private boolean publish;

    @ArgGroup(exclusive = true)
    private @Nullable Form form;

    /** How the brief is given out. */
    private static final class Form {
        @Option(names = "--html", paramLabel = "FILE", description = "Write a page of A4 for each group.")
        private @Nullable String html;

        @Option(names = "--text", description = "Print the week as plain text for a group chat.")
        private boolean text;
    }

    BriefCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Form asked = form == null ? new Form() : form;
        Target target = asked.html == null ? null : AtomicFile.at(Inputs.path(asked.html));
        Inputs inputs = new Inputs(around.in());
        Work work = publish
                ? Work.toChange(inputs, given.scenario, given.plan, null, around.clock())
                : Work.toRead(inputs, given.scenario, given.plan);
        if (publish && work.target() == null) {
            throw new InputFault(
                    "--publish needs a folder in place of SCENARIO: without one there is nowhere to note it");
        }
        around.tell(work.news());
        Scenario read = work.scenario();
        Wish wish =
                new Wish(Briefing.week(read, week), Briefing.group(read, group), since(inputs, read, work.planned()));
        // A plan that is kept keeps what would help.
        Judged judged = publish
                ? around.planner().judge(read, work.planned())
                : around.planner().judgeWithoutRemedies(read, work.planned());
        BriefPage page = BriefPages.of(read, judged, wish);
        if (target != null) {
            around.err().println(Plain.text(target.write(BriefHtml.of(page), "Brief")));
        } else {
            new Output(around.out()).text(asked.text ? BriefText.chat(page) : BriefText.of(page, around.ink()));
        }
        publish(work, judged.plan());
        return Exit.of(judged.plan().totals());
    }

    private @Nullable Since since(Inputs inputs, Scenario read, Plan now) {
        GivenOut before = since == null
                ? Briefing.in(given.scenario, now, around.clock())
                : new GivenOut(null, inputs.plan(since, read));
        return Briefing.since(before, read, around.planner());
    }

    private void publish(Work work, Plan judged) {
        Target folder = publish ? work.target() : null;
        if (folder != null) {
            Plan out = Briefing.givenOut(judged, work.scenario(), around.clock());
            around.err().println(Plain.text(folder.write(Briefing.bytes(out), "Given out")));
            around.tell(folder.news());
        }
    }
}
