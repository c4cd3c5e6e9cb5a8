package weekwright.desk.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * What a command works on: documents named one by one, or a folder that stands for its scenario, its plan and the place where
 * changes are saved.
 *
 * @param plan the plan, or null where none is given and the folder has none
 * @param target where what comes of it goes, or null where it is only shown
 */
public record Work(
        Scenario scenario, @Nullable Plan plan, @Nullable Target target) {
    /**
     * Documents to look at. Of a folder the files are read as they lie; nothing is written and nothing mended.
     *
     * @param scenario a folder, a file, standard input or a demo
     * @param plan the plan; null where none is named
     * @throws InputFault when they cannot be used
     * @throws FileFault when they cannot be read
     */
    public static Work toRead(Inputs inputs, String scenario, @Nullable String plan) {
        return read(inputs, scenario, plan, null);
    }

    /**
     * Documents to make another plan from. Where it cannot be written is found out at once. Of a folder the revision in force
     * is read, and what comes of it goes into the folder unless an output is named.
     *
     * @param output the file to write, or null where none is named
     * @throws InputFault when they cannot be used, or do not belong where they are to go
     * @throws FileFault when they cannot be read, or nothing can be written
     */
    public static Work toChange(
            Inputs inputs, String scenario, @Nullable String plan, @Nullable String output, Clock clock) {
        if (output == null && Inputs.isFolder(scenario)) {
            StoredFile file = StoredFile.in(Inputs.path(scenario), Folders.PLAN, clock);
            Scenario read = file.seen().scenario();
            return new Work(read, plan == null ? file.seen().plan() : inputs.plan(plan, read), file);
        }
        Target target = output == null ? null : Target.at(Inputs.path(output), clock);
        Work work = read(inputs, scenario, plan, target);
        if (target != null) {
            target.suits(work.scenario());
        }
        return work;
    }

    /**
     * A scenario to change and write back to where it was read: its file, or the folder that holds it.
     *
     * @throws InputFault when it cannot be used, or was read from where nothing can be written
     * @throws FileFault when it cannot be read, or nothing can be written
     */
    public static Work toRewrite(Inputs inputs, String scenario, Clock clock) {
        if (scenario.equals(Inputs.STANDARD_INPUT) || scenario.startsWith(Inputs.DEMO)) {
            throw new InputFault("--take needs a scenario that lies in a file: give -o FILE");
        }
        if (Inputs.isFolder(scenario)) {
            StoredFile file = StoredFile.in(Inputs.path(scenario), Folders.SCENARIO, clock);
            return new Work(file.seen().scenario(), file.seen().plan(), file);
        }
        Target target = Target.at(Inputs.path(scenario), clock);
        return new Work(inputs.scenario(scenario), null, target);
    }

    /**
     * A scenario to change and write somewhere, if anywhere.
     *
     * @param output the file to write, or null where none is named
     * @throws InputFault when it cannot be used
     * @throws FileFault when it cannot be read, or nothing can be written
     */
    public static Work scenarioInto(Inputs inputs, String scenario, @Nullable String output, Clock clock) {
        Target target = output == null ? null : Target.at(Inputs.path(output), clock);
        Work work = read(inputs, scenario, null, target);
        if (target != null) {
            target.suits(work.scenario());
        }
        return work;
    }

    private static Work read(Inputs inputs, String scenario, @Nullable String plan, @Nullable Target target) {
        if (scenario.equals(Inputs.STANDARD_INPUT) && scenario.equals(plan)) {
            throw new InputFault("only one of SCENARIO and PLAN can come from standard input");
        }
        boolean folder = Inputs.isFolder(scenario);
        Scenario read = inputs.scenario(folder ? file(scenario, Folders.SCENARIO) : scenario);
        String beside = folder && Files.exists(Path.of(scenario, Folders.PLAN)) ? file(scenario, Folders.PLAN) : null;
        String from = plan == null ? beside : plan;
        return new Work(read, from == null ? null : inputs.plan(from, read), target);
    }

    private static String file(String folder, String name) {
        return Inputs.path(folder).resolve(name).toString();
    }

    /**
     * The plan.
     *
     * @throws InputFault when there is none
     */
    public Plan planned() {
        if (plan == null) {
            throw new InputFault("PLAN is missing: name one after the scenario, or a folder that has one"
                    + " (propose FOLDER makes it)");
        }
        return plan;
    }

    /**
     * Says whether {@link #keep} can be.
     *
     * @throws InputFault when this is no folder
     */
    public void checkKeeps() {
        folder();
    }

    /**
     * Saves a changed scenario and its plan as one change of the folder.
     *
     * @param label what was done, in a few words
     * @return where they are now, as a sentence
     * @throws InputFault when this is no folder
     * @throws FileFault when they cannot be written; all is then as it was before
     */
    public String keep(String label, Scenario changed, Plan planned) {
        return folder().write(
                        Map.of(
                                Folders.SCENARIO,
                                Documents.write(changed).getBytes(StandardCharsets.UTF_8),
                                Folders.PLAN,
                                Documents.write(planned).getBytes(StandardCharsets.UTF_8)),
                        label);
    }

    private StoredFile folder() {
        if (target instanceof StoredFile file) {
            return file;
        }
        throw new InputFault("--keep needs a folder in place of SCENARIO: give -o FOLDER to write into a new one");
    }

    /** What the coach should be told of the place since the last time. */
    public List<String> news() {
        return target == null ? List.of() : target.news();
    }
}
