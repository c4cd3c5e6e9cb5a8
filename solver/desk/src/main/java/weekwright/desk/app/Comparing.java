package weekwright.desk.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Clock;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.engine.explain.Comparisons;
import weekwright.model.answer.Comparison;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Holds two plans side by side, whoever made them, and the scenarios that they were made for. */
public final class Comparing {
    private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,8}");

    private final Planner planner;

    /** Comparisons of plans that a planner judges. */
    public Comparing(Planner planner) {
        this.planner = planner;
    }

    /** A plan with the scenario that it belongs to. */
    public record Side(Scenario scenario, Plan plan) {}

    /** What is held side by side. */
    public record Sides(Side before, Side after) {}

    /**
     * Two plans, the second in the scenario as it is now.
     *
     * @throws InputFault when the first plan cannot belong to the scenario of the second
     */
    public Comparison of(Sides sides) {
        Side before = sides.before();
        Side after = sides.after();
        Plan second =
                planner.judgeWithoutRemedies(after.scenario(), after.plan()).plan();
        Plan first =
                planner.judgeWithoutRemedies(before.scenario(), before.plan()).plan();
        if (same(before.scenario(), after.scenario())) {
            return Comparisons.of(after.scenario(), first, second);
        }
        Plan changed = planner.judgeWithoutRemedies(after.scenario(), moved(first, after.scenario()))
                .plan();
        return Comparisons.underChange(after.scenario(), first, changed, second);
    }

    private static boolean same(Scenario one, Scenario other) {
        return Documents.digest(one).equals(Documents.digest(other));
    }

    /**
     * A plan as a plan of a scenario that has changed since.
     *
     * @throws InputFault when it names what the scenario no longer knows
     */
    static Plan moved(Plan plan, Scenario scenario) {
        try {
            return Documents.readPlan(
                    "the plan before", Documents.write(plan).getBytes(StandardCharsets.UTF_8), scenario);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    /**
     * Reads both sides: plans of a scenario, or revisions of a folder, each of which brings its own scenario.
     *
     * @param scenario a folder, a file, standard input or a demo
     * @param first a plan, or the number of a revision
     * @param second the same; null for the plan that is in force in a folder
     * @param old the scenario that the first plan was made for, or null where it is the same
     * @throws InputFault when they cannot be used
     * @throws FileFault when they cannot be read
     */
    public static Sides sides(
            Inputs inputs, String scenario, String first, @Nullable String second, @Nullable String old, Clock clock) {
        oneFromStandardInput(scenario, first, second, old);
        Side after = second == null || !isRevision(scenario, second)
                ? now(inputs, scenario, second)
                : revision(scenario, second, clock);
        if (isRevision(scenario, first)) {
            if (old != null) {
                throw new InputFault("--before is not needed: revision " + first + " brings its own scenario");
            }
            return new Sides(revision(scenario, first, clock), after);
        }
        Scenario made = old == null ? after.scenario() : inputs.scenario(old);
        return new Sides(new Side(made, inputs.plan(first, made)), after);
    }

    private static void oneFromStandardInput(@Nullable String... given) {
        int from = 0;
        for (String one : given) {
            from += Inputs.STANDARD_INPUT.equals(one) ? 1 : 0;
        }
        if (from > 1) {
            throw new InputFault("only one document can come from standard input");
        }
    }

    private static Side now(Inputs inputs, String scenario, @Nullable String plan) {
        Work work = Work.toRead(inputs, scenario, plan);
        return new Side(work.scenario(), work.planned());
    }

    private static boolean isRevision(String scenario, String given) {
        return NUMBER.matcher(given).matches() && Inputs.isFolder(scenario) && !Files.exists(Inputs.path(given));
    }

    private static Side revision(String folder, String number, Clock clock) {
        Store store = Folders.openSound(Inputs.path(folder), clock);
        try {
            Contents contents = store.read(Integer.parseInt(number)).contents();
            Plan plan = contents.plan();
            if (plan == null) {
                throw new InputFault("revision " + number + " has no plan: name another of those that history lists");
            }
            return new Side(contents.scenario(), plan);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }
}
