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
import weekwright.model.plan.Log;
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

    /** A revision with what there is to say of it, worked out when it is first asked for. */
    public static final class Seen {
        private final Version version;
        private final Planner planner;
        private @Nullable Judged judged;
        private @Nullable List<PersonPicture> people;
        private @Nullable Questions questions;

        Seen(Version version, Planner planner, @Nullable Judged judged) {
            this.version = version;
            this.planner = planner;
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

        /** What was really done, or null while nothing was written down. */
        public @Nullable Log log() {
            return version.contents().log();
        }

        /** The plan, or an empty one while there is none; judged. */
        public synchronized Judged judged() {
            if (judged == null) {
                judged = planner.judge(scenario(), plan());
            }
            return judged;
        }

        /** The plan as a picture, without waiting for all that is found of it. */
        public Judged drawn() {
            return Engine.drawn(scenario(), plan());
        }

        private Plan plan() {
            Plan plan = version.contents().plan();
            return plan == null ? nothing(scenario()) : plan;
        }

        private synchronized void helped(Judged with) {
            judged = with;
        }

        /** Whether there is a plan. */
        public boolean planned() {
            return version.contents().plan() != null;
        }

        /** The plan, ready for questions about its sessions. */
        public synchronized Questions questions() {
            if (questions == null) {
                questions = Questions.of(scenario(), judged().plan());
            }
            return questions;
        }

        /** What the plan means for each athlete. */
        public synchronized List<PersonPicture> people() {
            if (people == null) {
                people = Engine.people(scenario(), judged().plan());
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
            latest = head.number();
            last = new Seen(head, quick, null);
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
            if (!seen.judged().helpSought()) {
                seen.helped(planner.judge(seen.scenario(), seen.judged().plan()));
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

    /** The plan as it was given out, or null where it never was. */
    public Briefing.@Nullable GivenOut givenOut() {
        Plan plan = now().judged().plan();
        return guarded(() -> Optional.ofNullable(Briefing.in(store, plan))).orElse(null);
    }

    /**
     * Saves a judged plan as a change.
     *
     * @param expected the revision that it was made from
     * @param label what was done, in a few words
     */
    public synchronized Outcome save(int expected, String label, Judged judged) {
        Outcome outcome = guarded(() -> commit(expected, label, judged.plan()));
        if (outcome instanceof Outcome.Saved) {
            latest = outcome.head().number();
            last = new Seen(outcome.head(), quick, judged);
        }
        return outcome;
    }

    /**
     * Saves a changed scenario as a change; of the plan stays what fits it.
     *
     * @param expected the revision that it was made from
     * @param label what was done, in a few words
     * @throws InputFault when plan or log cannot go with it
     */
    public synchronized Outcome change(int expected, String label, Scenario scenario) {
        Contents made = guarded(() -> number(expected)).contents();
        Plan plan = made.plan();
        if (plan == null) {
            return guarded(() -> commit(expected, label, new Contents(scenario, null, made.log())));
        }
        Refit refit = Refit.of(plan, scenario);
        String whole = refit.lost() == 0 ? label : label + "; " + lost(refit.lost());
        return change(expected, whole, scenario, quick.judge(scenario, refit.plan()));
    }

    /**
     * Saves a changed scenario and its judged plan as one change.
     *
     * @param expected the revision that they were made from
     * @param label what was done, in a few words
     */
    public synchronized Outcome change(int expected, String label, Scenario scenario, Judged judged) {
        Contents made = guarded(() -> number(expected)).contents();
        Outcome outcome = guarded(() -> commit(expected, label, new Contents(scenario, judged.plan(), made.log())));
        if (outcome instanceof Outcome.Saved) {
            latest = outcome.head().number();
            last = new Seen(outcome.head(), quick, judged);
        }
        return outcome;
    }

    /**
     * Saves what was done as a change.
     *
     * @param expected the revision that it was written down under
     * @param label what was done, in a few words
     */
    public Outcome log(int expected, String label, Log log) {
        Contents made = guarded(() -> number(expected)).contents();
        return guarded(() -> commit(expected, label, new Contents(made.scenario(), made.plan(), log)));
    }

    private static String lost(int sessions) {
        return sessions == 1 ? "one session no longer fits" : sessions + " sessions no longer fit";
    }

    private Outcome commit(int expected, String label, Contents contents) {
        try {
            return store.commit(expected, label, contents);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    private Outcome commit(int expected, String label, Plan plan) {
        try {
            Contents made = number(expected).contents();
            return store.commit(expected, label, made.with(plan));
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
