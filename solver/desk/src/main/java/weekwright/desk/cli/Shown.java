package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Target;
import weekwright.desk.view.plan.PlanPages;
import weekwright.desk.view.terminal.Plain;
import weekwright.desk.view.terminal.TextPage;
import weekwright.engine.explain.Judged;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** A judged plan on its way out. */
final class Shown {
    private final Surroundings around;
    private final Scenario scenario;
    private final Judged judged;

    Shown(Surroundings around, Scenario scenario, Judged judged) {
        this.around = around;
        this.scenario = scenario;
        this.judged = judged;
    }

    /** The plan as a document. */
    byte[] planJson() {
        return Documents.write(judged.plan()).getBytes(StandardCharsets.UTF_8);
    }

    /** The plan with the rules that it keeps, as a document. */
    byte[] checkJson() {
        return Documents.writeCheck(judged.plan(), judged.kept()).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes the plan where it is to go, if anywhere, and says so.
     *
     * @param label what was done, in a few words
     */
    void save(@Nullable Target target, String label) {
        if (target != null) {
            String written = target.write(planJson(), label.replaceFirst("\\.$", ""));
            around.tell(target.news());
            around.err().println(Plain.text(written));
        }
    }

    /** Prints the document given, or where there is none the week to read. */
    void print(byte @Nullable [] document) {
        Output out = new Output(around.out());
        if (document == null) {
            out.text(TextPage.of(PlanPages.of(scenario, judged), around.ink()));
        } else {
            out.bytes(document);
        }
    }

    /** What the program's end says of the plan. */
    int exit() {
        return Exit.of(judged.plan().totals());
    }
}
