package weekwright.desk.app;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Revision;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.desk.view.brief.BriefPages.Since;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Gives a plan out, and finds it again as it was given out. */
public final class Briefing {
    private Briefing() {}

    /**
     * A plan as it was given out.
     *
     * @param scenario the scenario of that time, or null where it is not known
     * @param plan the plan as it was then
     */
    public record GivenOut(@Nullable Scenario scenario, Plan plan) {}

    /**
     * The plan that was given out in a folder: the first revision that bears the time at which the plan in force was.
     *
     * @param now the plan in force
     * @return null where it was never given out, or where this is no folder that keeps its revisions
     */
    public static @Nullable GivenOut in(String folder, Plan now, Clock clock) {
        Moment at = now.published();
        if (at == null || !Inputs.isFolder(folder) || !Store.isStore(Inputs.path(folder), new RealDisk())) {
            return null;
        }
        try {
            return in(Folders.openSound(Inputs.path(folder), clock), now);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }

    /** The same of a folder that is open. */
    static @Nullable GivenOut in(Store store, Plan now) {
        Moment at = now.published();
        if (at == null) {
            return null;
        }
        GivenOut found = null;
        for (Revision revision : store.history()) {
            if (!revision.beside()) {
                Contents contents = store.read(revision.number()).contents();
                Plan plan = contents.plan();
                if (plan == null || !at.equals(plan.published())) {
                    break;
                }
                found = new GivenOut(contents.scenario(), plan);
            }
        }
        return found;
    }

    /**
     * A plan that was given out, as a plan of the scenario of today.
     *
     * @return null where it cannot be one: then it is a plan of other weeks
     */
    public static @Nullable Plan today(GivenOut given, Scenario scenario) {
        try {
            return Comparing.moved(given.plan(), scenario);
        } catch (InputFault e) {
            return null;
        }
    }

    /**
     * What was given out, judged as a plan of the scenario of today, to say what has changed since.
     *
     * @return null where nothing was given out of these weeks
     */
    public static @Nullable Since since(@Nullable GivenOut given, Scenario scenario, Planner planner) {
        Plan today = given == null ? null : today(given, scenario);
        return given == null || today == null
                ? null
                : new Since(
                        given.scenario(),
                        planner.judgeWithoutRemedies(scenario, today).plan(),
                        given.plan().published());
    }

    /** The plan, given out now. */
    public static Plan givenOut(Plan plan, Scenario scenario, Clock clock) {
        Moment now = Moment.at(clock.instant().truncatedTo(ChronoUnit.MINUTES), scenario.zone());
        return plan.withPublished(now);
    }

    /** The bytes of a plan, to be written. */
    public static byte[] bytes(Plan plan) {
        return Documents.write(plan).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * A week by its number.
     *
     * @param number from 1
     * @return its index, from 0
     * @throws InputFault when there is none
     */
    public static int week(Scenario scenario, int number) {
        if (number < 1 || number > scenario.weeks()) {
            throw new InputFault("there is no week " + number + ": "
                    + (scenario.weeks() == 1 ? "the plan has one week, 1" : "give 1 to " + scenario.weeks()));
        }
        return number - 1;
    }

    /**
     * A group by its id or its name, or null where none is named.
     *
     * @return its id
     * @throws InputFault when there is none
     */
    public static @Nullable String group(Scenario scenario, @Nullable String said) {
        return said == null ? null : Named.group(scenario, said).id();
    }
}
