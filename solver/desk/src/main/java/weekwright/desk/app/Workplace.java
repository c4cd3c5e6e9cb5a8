package weekwright.desk.app;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.Revision;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.desk.store.Version;
import weekwright.engine.Engine;
import weekwright.engine.Questions;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.document.DocumentException;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** A folder that is open on the page. What was judged of the revision in force is kept, so that looking again is quick. */
public final class Workplace {
    private final Store store;
    private final Planner planner;
    private final Planner quick;
    private final Object helping = new Object();
    private @Nullable Seen last;
    private volatile int latest;

    Workplace(Store store, Planner planner) {
        this.store = store;
        this.planner = planner;
        quick = planner.quick();
    }

    /** A revision with what there is to say of it. */
    public static final class Seen {
        private final Version version;
        private volatile Judged judged;
        private @Nullable List<PersonPicture> people;
        private @Nullable Questions questions;

        Seen(Version version, Judged judged) {
            this.version = version;
            this.judged = judged;
        }

        /** The revision. */
        public Revision revision() {
            return version.revision();
        }

        /** What the coach knows and wants. */
        public Scenario scenario() {
            return version.contents().scenario();
        }

        /** The plan, or an empty one while there is none; judged. */
        public Judged judged() {
            return judged;
        }

        /** Whether there is a plan. */
        public boolean planned() {
            return version.contents().plan() != null;
        }

        /** The plan, ready for questions about its sessions. */
        public synchronized Questions questions() {
            if (questions == null) {
                questions = Questions.of(scenario(), judged.plan());
            }
            return questions;
        }

        /** What the plan means for each athlete. */
        public synchronized List<PersonPicture> people() {
            if (people == null) {
                people = Engine.people(scenario(), judged.plan());
            }
            return people;
        }
    }

    /**
     * The revision in force; what was changed in the files meanwhile is in it.
     *
     * @throws FileFault when the folder cannot be read or written
     */
    public synchronized Seen now() {
        return seen(guarded(store::head));
    }

    private Seen seen(Version head) {
        if (last == null || last.version.number() != head.number()) {
            Contents contents = head.contents();
            Plan plan = contents.plan();
            latest = head.number();
            last = new Seen(head, quick.judge(contents.scenario(), plan == null ? nothing(contents.scenario()) : plan));
        }
        return last;
    }

    /** Number of the newest revision that was looked at; 0 before the first look. */
    public int latest() {
        return latest;
    }

    /** A plan in which nothing is placed. */
    private static Plan nothing(Scenario scenario) {
        return new Plan(
                Scenario.VERSION, scenario.id(), null, null, null, List.of(), List.of(), List.of(), null, List.of());
    }

    /** Who judges plans here, without looking for what would help. */
    public Planner planner() {
        return quick;
    }

    /**
     * The revision in force with what would help, which may take a while; one is looked at at a time.
     *
     * @param revision the revision that is meant; empty where another is in force meanwhile
     */
    public Optional<Seen> helped(int revision) {
        synchronized (helping) {
            Seen seen = now();
            if (seen.revision().number() != revision) {
                return Optional.empty();
            }
            if (!seen.judged.helpSought()) {
                seen.judged = planner.judge(seen.scenario(), seen.judged.plan());
            }
            return Optional.of(seen);
        }
    }

    /** What the coach should be told of the folder and has not been told yet. */
    public List<String> news() {
        return store.news();
    }

    /** All revisions that are kept, the newest first. */
    public List<Revision> history() {
        return guarded(store::history);
    }

    /**
     * Saves a judged plan as a change.
     *
     * @param expected the revision that it was made from
     * @param label what was done, in a few words
     */
    public Outcome save(int expected, String label, Judged judged) {
        return save(expected, label, null, judged);
    }

    /**
     * Saves a judged plan as a change, with the scenario that it was judged in.
     *
     * @param scenario the changed scenario, or null where it stays as it was
     */
    public synchronized Outcome save(int expected, String label, @Nullable Scenario scenario, Judged judged) {
        Outcome outcome = guarded(() -> commit(expected, label, scenario, judged.plan()));
        if (outcome instanceof Outcome.Saved) {
            latest = outcome.head().number();
            last = new Seen(outcome.head(), judged);
        }
        return outcome;
    }

    private Outcome commit(int expected, String label, @Nullable Scenario scenario, Plan plan) {
        try {
            Contents made = number(expected).contents();
            Contents then = scenario == null ? made.with(plan) : new Contents(scenario, plan, made.log());
            return store.commit(expected, label, then);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    private Version number(int expected) {
        Version head = store.head();
        return head.number() == expected ? head : store.read(expected);
    }

    /**
     * What a revision holds.
     *
     * @throws FileFault when there is none of that number, or it can no longer be read
     */
    public Contents contents(int number) {
        return guarded(() -> store.read(number)).contents();
    }

    /** Goes back one change. */
    public Outcome undo(int expected) {
        return guarded(() -> store.undo(expected));
    }

    /** Takes the last undo back. */
    public Outcome redo(int expected) {
        return guarded(() -> store.redo(expected));
    }

    /** Takes up an older revision, or one kept beside. */
    public Outcome restore(int expected, int number) {
        return guarded(() -> store.restore(expected, number));
    }

    private interface Step<T> {
        T take();
    }

    private static <T> T guarded(Step<T> step) {
        try {
            return step.take();
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }
}
