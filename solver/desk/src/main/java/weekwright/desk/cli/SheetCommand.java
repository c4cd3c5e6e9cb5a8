package weekwright.desk.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.AtomicFile;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Named;
import weekwright.desk.app.Sheeting;
import weekwright.desk.app.Target;
import weekwright.desk.app.Work;
import weekwright.desk.export.SheetHtml;
import weekwright.desk.export.SheetPdf;
import weekwright.desk.view.sheet.DaySheets;
import weekwright.desk.view.sheet.DaySheets.Wish;
import weekwright.desk.view.sheet.SheetPage;
import weekwright.desk.view.sheet.SheetPages;
import weekwright.desk.view.terminal.Plain;
import weekwright.desk.view.terminal.SheetText;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.DaySheet;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** What each group and athlete does on a day. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Says what each group and each athlete does on a day: sets, distances, rests, times and weights.",
            "Numbers come from the athletes' marks; where a mark is missing or too old, words say how it should feel."
        })
final class SheetCommand implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(names = "--day", required = true, paramLabel = "DATE", description = "The day, e.g. 2027-02-09.")
    private String day = "";

    @Option(names = "--athlete", paramLabel = "ID", description = "Only this athlete.")
    private @Nullable String athlete;

    @Option(names = "--units", paramLabel = "NAME", description = "metric (kg, m), as usual, or imperial (lb, yd).")
    private String units = "metric";

    @Option(
            names = "--formula",
            paramLabel = "NAME",
            description =
                    "How a maximum is estimated from a set: epley, as usual, brzycki, lombardi, mayhew, oconner or"
                            + " wathan.")
    private String formula = "epley";

    @ArgGroup(exclusive = true)
    private @Nullable Form form;

    /** How the sheet is given out. */
    private static final class Form {
        @Option(names = "--html", paramLabel = "FILE", description = "Write a page that a phone can show.")
        private @Nullable String html;

        @Option(names = "--pdf", paramLabel = "FILE", description = "Write it for paper, a group a page.")
        private @Nullable String pdf;

        @Option(names = "--json", description = "Print the numbers as JSON.")
        private boolean json;
    }

    SheetCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Form asked = form == null ? new Form() : form;
        String file = asked.html == null ? asked.pdf : asked.html;
        Target target = file == null ? null : AtomicFile.at(Inputs.path(file));
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        Scenario read = work.scenario();
        Wish wish = Sheeting.wish(read, day, athlete, units, formula);
        Judged judged = around.planner().judgeWithoutRemedies(read, work.planned());
        DaySheet sheet = DaySheets.of(read, judged, Engine.people(read, judged.plan()), wish);
        String who = athlete == null ? null : Named.athlete(read, athlete).name();
        SheetPage page = SheetPages.of(sheet, who, read.zone());
        if (target != null) {
            around.err().println(Plain.text(target.write(asked.pdf == null ? SheetHtml.of(page) : pdf(page), "Sheet")));
        } else if (asked.json) {
            new Output(around.out()).text(Documents.write(sheet));
        } else {
            new Output(around.out()).text(SheetText.of(page, around.ink()));
        }
        return new Shown(around, read, judged).exit();
    }

    private byte[] pdf(SheetPage page) {
        around.tellLacking(SheetPdf.lacking(page));
        return SheetPdf.of(page);
    }
}
