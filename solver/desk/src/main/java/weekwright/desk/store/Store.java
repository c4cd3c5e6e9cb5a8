package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;

/**
 * A coach's folder. Its truth is {@code history/}, one numbered revision a confirmed change; the three files beside it
 * follow the version in force, and what was changed in them by hand becomes a revision of its own.
 *
 * <p>A change is confirmed when the call that makes it returns {@link Outcome.Saved}: from then on no crash loses it. Every
 * call takes the folder's lock for itself, so that windows and commands, in this program and in others, take turns; a
 * change that names a revision which is no longer in force is refused, and kept beside. Every call may throw a {@link
 * StoreFault}; then nothing was saved, and all that was saved before is safe.
 */
public final class Store {
    /** The documents that a folder holds, by the names of their files. */
    public static final List<String> DOCUMENTS =
            Arrays.stream(Part.values()).map(Part::file).toList();

    private final Path folder;
    private final Clock clock;
    private final Turns turns;
    private final Upkeep upkeep;
    private final News news = new News();

    Store(Path folder, Disk disk, Clock clock, Retention retention, int patience) {
        this.folder = folder;
        this.clock = clock;
        this.turns = new Turns(folder, disk, patience);
        this.upkeep = new Upkeep(folder, disk, retention, news);
    }

    /** Whether a folder keeps its revisions. */
    public static boolean isStore(Path folder, Disk disk) {
        return List.of(Forgetting.HISTORY, Forgetting.NEXT).stream()
                .anyMatch(name -> disk.isFolder(folder.resolve(name)));
    }

    /**
     * Opens a folder, and mends what a crash or a hand has left: see {@link #news}. A folder that keeps no revisions yet
     * begins with the files that lie in it.
     *
     * @throws DocumentException when it begins with files that cannot be used
     * @throws StoreFault when it cannot be read or written, or holds no scenario
     */
    public static Store open(Path folder, Disk disk, Clock clock) throws DocumentException {
        return open(new Store(folder, disk, clock, Retention.USUAL, Turns.PATIENCE));
    }

    /**
     * Opens a folder, but leaves it alone where a file in it was changed by hand and cannot be used.
     *
     * @throws DocumentException when a file cannot be used
     * @throws StoreFault when it cannot be read or written, or holds no scenario
     */
    public static Store openSound(Path folder, Disk disk, Clock clock) throws DocumentException {
        return openSound(new Store(folder, disk, clock, Retention.USUAL, Turns.PATIENCE));
    }

    static Store openSound(Store store) throws DocumentException {
        store.turns.take(() -> {
            store.upkeep.refuseSlips();
            return store.upkeep.open(store.now());
        });
        return store;
    }

    static Store open(Store store) throws DocumentException {
        store.turns.take(() -> store.upkeep.open(store.now()));
        return store;
    }

    /**
     * Begins a folder with documents of its own.
     *
     * @param folder an empty folder, or one still to be made in a folder that is there
     * @throws DocumentException when they cannot be used
     * @throws StoreFault when it holds a scenario or revisions already
     */
    public static Store begin(Path folder, Disk disk, Clock clock, String label, Contents first)
            throws DocumentException {
        Store store = new Store(folder, disk, clock, Retention.USUAL, Turns.PATIENCE);
        Texts texts = Texts.of(first);
        texts.read();
        store.turns.begin(() -> store.upkeep.begin(label, texts, store.now()));
        return store;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    /** What the coach should be told and has not been told yet: what was mended, set aside or found changed. */
    public List<String> news() {
        return news.taken();
    }

    /** The version in force. What was changed outside the program meanwhile is in it. */
    public Version head() {
        return settled(head -> head);
    }

    /** All revisions that are kept, the newest first. */
    public List<Revision> history() {
        return settled(head -> {
            List<Revision> all = new ArrayList<>(upkeep.history().all());
            Collections.reverse(all);
            return List.copyOf(all);
        });
    }

    /**
     * An older version, or one kept beside.
     *
     * @throws StoreFault when there is none of that number, or it is damaged
     */
    public Version read(int number) {
        return settled(head -> version(number));
    }

    private Version version(int number) throws IOException {
        try {
            return upkeep.history().version(number);
        } catch (DamagedException e) {
            throw new StoreFault("There is no revision " + number + " to read: " + e.getMessage()
                    + ". The list of revisions names those that are kept.");
        }
    }

    /**
     * Saves a change.
     *
     * @param expected the revision that it was made from
     * @param label what was done, in a few words
     * @throws DocumentException when it could not be read again; nothing is saved then
     */
    public Outcome commit(int expected, String label, Contents offered) throws DocumentException {
        Texts texts = Texts.of(offered);
        Contents read = texts.read();
        return settled(head -> commit(head, expected, label, read, texts));
    }

    private Outcome commit(Version head, int expected, String label, Contents offered, Texts texts) throws IOException {
        if (texts.same(upkeep.texts(head))) {
            return new Outcome.Same(head, "Nothing has changed; revision " + head.number() + " shows this already.");
        }
        if (head.number() != expected) {
            Revision kept = upkeep.beside(label, texts, now());
            return new Outcome.Stale(
                    head,
                    offered,
                    kept,
                    late(head, expected) + " Yours is kept beside as revision " + kept.number() + ".");
        }
        clockCheck(head);
        Version saved = upkeep.append(label, offered, texts, now());
        return new Outcome.Saved(saved, "Saved as revision " + saved.number() + ".");
    }

    private static String late(Version head, int expected) {
        return "This was made from revision " + expected + ", and the plan has moved on: revision " + head.number()
                + " (" + head.revision().label() + ") is in force and stays so.";
    }

    private void clockCheck(Version head) {
        if (now().plusSeconds(60).isBefore(head.revision().at())) {
            news.tell("The clock of this machine is behind the last change, saved at "
                    + head.revision().at() + ": is it set right? Revisions keep their order all the same.");
        }
    }

    /**
     * Saves files that came from elsewhere. Those not given stay as they are in force; a plan or log that does not fit a new
     * scenario is left out, which is told, and stays in the revision before.
     *
     * @param files their bytes, by the names {@code scenario.json}, {@code plan.json} and {@code log.json}
     * @throws DocumentException when one of them cannot be used; nothing is saved then
     */
    public Outcome take(int expected, String label, Map<String, byte[]> files) throws DocumentException {
        Map<Part, byte[]> offered = Part.named(files);
        return turns.take(() -> {
            Version head = upkeep.settle(now());
            Merge merge = Merge.of(Texts.of(madeFrom(head, expected)), offered, Merge.REFUSED);
            Outcome outcome = commit(head, expected, label, merge.texts().read(), merge.texts());
            if (outcome instanceof Outcome.Saved) {
                upkeep.tellUnfit(merge, head.number());
            }
            return outcome;
        });
    }

    /** What somebody saw who offers a document: where it comes late, it is kept beside with the others of that time. */
    private Contents madeFrom(Version head, int expected) throws IOException {
        try {
            return head.number() == expected
                    ? head.contents()
                    : upkeep.history().version(expected).contents();
        } catch (DamagedException e) {
            return head.contents();
        }
    }

    /** Goes back one change: the state before becomes a new revision, so that it survives crashes and other windows. */
    public Outcome undo(int expected) {
        return from(expected, head -> {
            int change = head.revision().shows();
            Version before = upkeep.trail().before(change);
            return before == null
                    ? new Outcome.Same(head, "There is nothing to undo: this is the oldest state that is kept.")
                    : shown(head, before, "Undone: " + upkeep.trail().label(change));
        });
    }

    /** Takes the last undo back. */
    public Outcome redo(int expected) {
        return from(expected, head -> {
            Version after = upkeep.trail().after(head.revision());
            return after == null
                    ? new Outcome.Same(head, "There is nothing to redo: nothing was undone since the last change.")
                    : shown(
                            head,
                            after,
                            "Done again: "
                                    + upkeep.trail().label(after.revision().shows()));
        });
    }

    private Outcome shown(Version head, Version target, String label) throws IOException {
        clockCheck(head);
        return new Outcome.Saved(upkeep.showAgain(label, target, now()), label + ".");
    }

    /**
     * Takes up an older version, or one kept beside, as a change of its own.
     *
     * @throws StoreFault when there is none of that number, or it is damaged
     */
    public Outcome restore(int expected, int number) {
        return from(expected, head -> {
            Version older = version(number);
            String label =
                    "Back to revision " + number + ": " + older.revision().label();
            Outcome outcome = commit(head, expected, label, older.contents(), Texts.of(older.contents()));
            return outcome instanceof Outcome.Saved saved
                    ? new Outcome.Saved(saved.head(), label + ". " + saved.message())
                    : outcome;
        });
    }

    /** Does something to the version in force if it is the one that was seen. */
    private Outcome from(int expected, Work<Outcome> work) {
        return settled(head ->
                head.number() == expected ? work.on(head) : new Outcome.Stale(head, null, null, late(head, expected)));
    }

    /**
     * Takes an athlete out of every revision: out of scenario, plan, log, findings, texts and labels. It cannot be undone.
     * Damaged revisions and files kept aside are deleted with it, since they could still hold the name.
     *
     * @param athlete the athlete's id
     */
    public Outcome forget(String athlete) {
        return settled(head -> {
            Version clean = upkeep.forget(athlete, head, now());
            if (clean == null) {
                return new Outcome.Same(head, "No revision knows an athlete with this id: nothing was changed.");
            }
            return new Outcome.Saved(
                    clean,
                    "The athlete is forgotten in all revisions of this folder. Files that were"
                            + " copied or sent elsewhere, and nicknames in notes, are not found by this.");
        });
    }

    /** The folder. */
    @Override
    public String toString() {
        return folder.toString();
    }

    private interface Work<T extends @Nullable Object> {
        T on(Version head) throws IOException;
    }

    private <T> T settled(Work<T> work) {
        try {
            return turns.take(() -> work.on(upkeep.settle(now())));
        } catch (DocumentException e) {
            throw new IllegalStateException("documents in force were read before", e);
        }
    }
}
