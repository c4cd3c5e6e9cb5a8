package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import weekwright.model.scenario.Athlete;

/**
 * Rewrites every revision without one athlete: a second history is written beside the first and takes its place in two
 * steps, so that after a crash either all revisions still know the athlete or none does.
 */
final class Forgetting {
    /** The folder of the revisions. */
    static final String HISTORY = "history";
    /** The second history, while it is written. */
    static final String NEXT = "history.new";
    /** The first one, once the second is complete. */
    static final String LAST = "history.old";

    /** Label of the revision that stands for the forgetting; it names nobody. */
    static final String LABEL = "An athlete was forgotten";

    private final Path folder;
    private final Disk disk;
    private final History history;
    private final WorkingCopies copies;

    Forgetting(Path folder, Disk disk, History history, WorkingCopies copies) {
        this.folder = folder;
        this.disk = disk;
        this.history = history;
        this.copies = copies;
    }

    /** Ends what a crash broke off: backwards before the second history was complete, forwards from then on. */
    void finish() throws IOException {
        Path now = folder.resolve(HISTORY);
        Path next = folder.resolve(NEXT);
        Path last = folder.resolve(LAST);
        boolean broken = disk.isFolder(next) || disk.isFolder(last);
        if (!broken) {
            return;
        }
        if (!disk.isFolder(now)) {
            disk.rename(disk.isFolder(next) ? next : last, now);
            disk.sync(folder);
        }
        disk.deleteAll(next);
        if (disk.isFolder(last)) {
            copies.removeAside();
            disk.deleteAll(last);
        }
        disk.sync(folder);
    }

    /**
     * The names that an athlete has had in any revision; none where no revision knows the id. Revisions that turn out to be
     * damaged are set aside, and go with the old history.
     */
    Set<String> names(String athlete) throws IOException {
        Set<String> names = new TreeSet<>();
        for (Revision revision : history.all()) {
            try {
                for (Athlete one :
                        history.version(revision.number()).contents().scenario().athletes()) {
                    if (one.id().equals(athlete)) {
                        names.add(one.name());
                    }
                }
            } catch (DamagedException e) {
                history.setAside(revision.number());
            }
        }
        return names;
    }

    private Version version(Revision revision) throws IOException {
        try {
            return history.version(revision.number());
        } catch (DamagedException e) {
            throw new IOException("revision " + revision.number() + " cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Rewrites all revisions and adds one that shows what the newest shows.
     *
     * @param scrub takes the athlete out
     * @param head the version in force
     * @param now what time it is
     */
    void run(Scrub scrub, Version head, Instant now) throws IOException {
        Path next = folder.resolve(NEXT);
        History rewritten = new History(next, disk);
        try {
            disk.deleteAll(next);
            disk.makeFolder(next);
            rewrite(scrub, head, now, rewritten);
            disk.sync(next);
            // Else, after a crash, a copy that still knows the athlete would pass for one changed by hand.
            copies.remove();
        } catch (IOException e) {
            giveUp(next);
            throw e;
        }
        disk.rename(folder.resolve(HISTORY), folder.resolve(LAST));
        try {
            disk.sync(folder);
            disk.rename(next, folder.resolve(HISTORY));
            disk.sync(folder);
            finish();
        } catch (IOException e) {
            throw StoreFault.halfForgotten(folder, e);
        }
    }

    private void giveUp(Path next) {
        try {
            disk.deleteAll(next);
        } catch (IOException e) {
            // The next opening does it.
            return;
        }
    }

    private void rewrite(Scrub scrub, Version head, Instant now, History rewritten) throws IOException {
        List<Revision> all = history.all();
        for (Revision revision : all) {
            Texts texts = scrub.texts(version(revision));
            rewritten.put(relabelled(revision, scrub.text(revision.label()), texts), texts);
            if (revision.number() == head.number()) {
                int number = history.next();
                rewritten.put(new Revision(number, now, LABEL, head.revision().shows(), false, texts.digests()), texts);
            }
        }
    }

    private static Revision relabelled(Revision revision, String label, Texts texts) {
        return new Revision(
                revision.number(), revision.at(), label, revision.shows(), revision.beside(), texts.digests());
    }
}
