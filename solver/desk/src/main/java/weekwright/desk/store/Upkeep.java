package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;

/** What is done to a folder under its lock: finding the version in force, mending, appending, thinning out. */
final class Upkeep {
    private static final String START = "The first files of the folder";
    private static final String OUTSIDE = "Edited outside";
    private static final String RECOVERED = "Recovered from the files of the folder";

    private final Path folder;
    private final Disk disk;
    private final History history;
    private final WorkingCopies copies;
    private final Forgetting forgetting;
    private final Retention retention;
    private final News news;
    private final Trail trail;
    private final Outside outside;

    private @Nullable LocalDate thinned;
    private @Nullable Revision written;
    private Texts writtenTexts = new Texts(Map.of());

    Upkeep(Path folder, Disk disk, Retention retention, News news) {
        this.folder = folder;
        this.disk = disk;
        this.retention = retention;
        this.news = news;
        this.history = new History(folder.resolve(Forgetting.HISTORY), disk);
        this.copies = new WorkingCopies(folder, disk);
        this.forgetting = new Forgetting(folder, disk, history, copies);
        this.trail = new Trail(history, news);
        this.outside = new Outside(folder, history, copies, news);
    }

    History history() {
        return history;
    }

    Trail trail() {
        return trail;
    }

    /**
     * Looks at the files beside the revisions before a folder is opened.
     *
     * @throws DocumentException when one was changed by hand and cannot be used
     */
    void refuseSlips() throws IOException, DocumentException {
        forgetting.finish();
        if (begun()) {
            Version newest = trail.newest();
            if (newest != null) {
                outside.refuseSlips(texts(newest));
            }
        }
    }

    /** The version in force of a folder that may keep no revisions yet. */
    Version open(Instant now) throws IOException, DocumentException {
        forgetting.finish();
        if (begun()) {
            Version settled = settle(now);
            thin(settled, now);
            return settled;
        }
        Texts first = outside.first();
        // There already where the program ended between making it and the first revision.
        if (!disk.isFolder(historyFolder())) {
            makeHistory();
        }
        return append(START, first.read(), first, now);
    }

    private boolean begun() throws IOException {
        return disk.isFolder(historyFolder()) && !history.isEmpty();
    }

    /** Begins a folder with the first revision. */
    Version begin(String label, Texts texts, Instant now) throws IOException, DocumentException {
        if (Store.isStore(folder, disk) || copies.read().containsKey(Part.SCENARIO)) {
            throw new StoreFault("The folder " + folder + " holds a scenario already: open it, or name another one.");
        }
        makeHistory();
        return append(label, texts.read(), texts, now);
    }

    private Path historyFolder() {
        return folder.resolve(Forgetting.HISTORY);
    }

    private void makeHistory() throws IOException {
        disk.makeFolder(historyFolder());
        disk.sync(folder);
    }

    /** The version in force, after all that a crash or a hand has left is mended. */
    Version settle(Instant now) throws IOException {
        forgetting.finish();
        if (!disk.isFolder(historyFolder())) {
            throw StoreFault.gone(folder);
        }
        history.sweep();
        copies.sweep();
        int highest =
                history.numbers().stream().mapToInt(Integer::intValue).max().orElse(0);
        Version newest = trail.newest();
        Version settled = newest == null ? fromFiles(now) : absorb(newest, newest.number() < highest, now);
        refresh(settled);
        return settled;
    }

    /** No revision can be read: what the coach sees in the folder is all there is. */
    private Version fromFiles(Instant now) throws IOException {
        try {
            Texts texts = outside.first();
            news.tell("No revision could be read; the files of the folder are sound and are in force.");
            return append(RECOVERED, texts.read(), texts, now);
        } catch (DocumentException e) {
            throw new StoreFault("Neither a revision nor the files in " + folder + " can be read: "
                    + e.problems().get(0) + " Nothing was deleted: take them from a copy.");
        }
    }

    /** What was changed by hand becomes a revision. */
    private Version absorb(Version newest, boolean recovered, Instant now) throws IOException {
        Merge merge = outside.changes(texts(newest), newest.number(), now);
        if (merge == null) {
            return newest;
        }
        try {
            Version edited =
                    append(recovered ? RECOVERED : OUTSIDE, merge.texts().read(), merge.texts(), now);
            news.tell(found(merge.changed(), recovered) + ": this is revision " + edited.number() + " now.");
            tellUnfit(merge, newest.number());
            return edited;
        } catch (DocumentException e) {
            throw new IllegalStateException("what was merged was read before", e);
        }
    }

    private static String found(List<Part> changed, boolean recovered) {
        String files = changed.stream().map(Part::file).collect(Collectors.joining(" and "));
        String changedOutside = (changed.size() == 1 ? " was" : " were") + " changed outside the program";
        return files + (recovered ? " still held what was saved after it" : changedOutside);
    }

    /** Tells of documents that a changed scenario has no place for. */
    void tellUnfit(Merge merge, int number) {
        merge.unfit()
                .forEach(part -> news.tell(part.file() + " does not fit the changed scenario and is left out; revision "
                        + number + " still has it."));
    }

    /** The documents of a version as the program writes them; of the last one asked for they are known. */
    Texts texts(Version version) {
        if (!version.revision().equals(written)) {
            writtenTexts = Texts.of(version.contents());
            written = version.revision();
        }
        return writtenTexts;
    }

    /** Appends a revision and puts it in force. */
    Version append(String label, Contents contents, Texts texts, Instant now) throws IOException {
        int number = history.next();
        return append(new Revision(number, now, label, number, false, texts.digests()), contents, texts);
    }

    /** Appends a revision that shows once more what an older one showed, and puts it in force. */
    Version showAgain(String label, Version older, Instant now) throws IOException {
        Texts texts = texts(older);
        int shows = older.revision().shows();
        return append(new Revision(history.next(), now, label, shows, false, texts.digests()), older.contents(), texts);
    }

    private Version append(Revision revision, Contents contents, Texts texts) throws IOException {
        history.append(revision, texts);
        Version appended = new Version(revision, contents);
        trail.head(appended);
        refresh(appended);
        thin(appended, revision.at());
        return appended;
    }

    /** The version is safe whether or not its copies can be written. */
    private void refresh(Version version) {
        try {
            copies.refresh(texts(version));
        } catch (IOException e) {
            news.tell("Revision " + version.number() + " is saved, but the files beside " + Forgetting.HISTORY
                    + " could not be brought up to date; this is tried again at the next change.");
        }
    }

    /** Keeps what was refused, unless it is kept already. */
    Revision beside(String label, Texts texts, Instant now) throws IOException {
        Map<String, String> digests = texts.digests();
        for (Revision revision : history.all()) {
            if (revision.beside() && revision.files().equals(digests)) {
                return revision;
            }
        }
        int number = history.next();
        Revision revision = new Revision(number, now, label, number, true, digests);
        history.append(revision, texts);
        return revision;
    }

    /** Once a day, and at every opening: often enough, and no change waits for it. */
    private void thin(Version version, Instant now) {
        ZoneId zone = version.contents().scenario().zone();
        LocalDate today = LocalDate.ofInstant(now, zone);
        if (today.equals(thinned)) {
            return;
        }
        try {
            history.drop(retention.over(history.all(), now, zone));
            thinned = today;
        } catch (IOException e) {
            // Old revisions that stay longer do no harm; the next change tries again.
            return;
        }
    }

    /** Rewrites all without an athlete; gives the version in force, or null where no revision knows the athlete. */
    @Nullable
    Version forget(String athlete, Version version, Instant now) throws IOException {
        Set<String> names = forgetting.names(athlete);
        if (names.isEmpty()) {
            return null;
        }
        trail.head(null);
        forgetting.run(new Scrub(athlete, names), version, now);
        return settle(now);
    }
}
