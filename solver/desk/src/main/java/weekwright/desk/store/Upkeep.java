package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

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

    private @Nullable Version head;
    private @Nullable LocalDate thinned;
    private @Nullable Revision written;
    private Texts writtenTexts = new Texts(Map.of());

    Upkeep(
            Path folder,
            Disk disk,
            History history,
            WorkingCopies copies,
            Forgetting forgetting,
            Retention retention,
            News news) {
        this.folder = folder;
        this.disk = disk;
        this.history = history;
        this.copies = copies;
        this.forgetting = forgetting;
        this.retention = retention;
        this.news = news;
    }

    /** The version in force of a folder that may keep no revisions yet. */
    Version open(Instant now) throws IOException, DocumentException {
        forgetting.finish();
        if (!disk.isFolder(historyFolder())) {
            Texts texts = firstFiles();
            disk.makeFolder(historyFolder());
            disk.sync(folder);
            return append(START, texts.read(), texts, 0, now);
        }
        if (history.isEmpty()) {
            // The program ended between making the folder of revisions and the first of them.
            Texts texts = firstFiles();
            return append(START, texts.read(), texts, 0, now);
        }
        Version settled = settle(now);
        thin(settled, now);
        return settled;
    }

    private Path historyFolder() {
        return folder.resolve(Forgetting.HISTORY);
    }

    /** The files of a folder without revisions, as the program writes them. */
    private Texts firstFiles() throws IOException, DocumentException {
        Map<Part, byte[]> there = copies.read();
        if (!there.containsKey(Part.SCENARIO)) {
            throw new StoreFault("The folder " + folder + " holds no scenario.json: put one there first, for example"
                    + " with: weekwright demo one-match -o FOLDER/scenario.json");
        }
        refuseNewer(there);
        return Merge.of(new Texts(Map.of()), there, (part, why) -> {
                    throw why;
                })
                .texts();
    }

    /** Begins a folder with the first revision. */
    Version begin(String label, Texts texts, Instant now) throws IOException, DocumentException {
        if (Store.isStore(folder, disk) || copies.read().containsKey(Part.SCENARIO)) {
            throw new StoreFault("The folder " + folder + " holds a scenario already: open it, or name another one.");
        }
        disk.makeFolder(historyFolder());
        disk.sync(folder);
        return append(label, texts.read(), texts, 0, now);
    }

    /** The version in force, after all that a crash or a hand has left is mended. */
    Version settle(Instant now) throws IOException {
        forgetting.finish();
        if (!disk.isFolder(historyFolder())) {
            throw StoreFault.gone(folder);
        }
        history.sweep();
        copies.sweep();
        int highest = history.numbers().stream().mapToInt(Integer::intValue).max().orElse(0);
        Version newest = newest();
        Version settled =
                newest == null ? fromFiles(now) : absorb(newest, newest.number() < highest, now);
        refresh(settled);
        return settled;
    }

    /** The newest revision that can be read; damaged ones are set aside on the way. */
    private @Nullable Version newest() throws IOException {
        List<Integer> numbers = history.numbers();
        boolean damaged = false;
        for (int i = numbers.size() - 1; i >= 0; i--) {
            int number = numbers.get(i);
            try {
                Version known = head;
                if (known == null || !known.revision().equals(history.revision(number))) {
                    known = history.version(number);
                }
                head = known;
                if (damaged) {
                    news.tell("Revision " + number + " (" + known.revision().label()
                            + ") is the newest that could be read.");
                }
                return known;
            } catch (DamagedException e) {
                setAside(number, e);
                damaged = true;
            }
        }
        return null;
    }

    private void setAside(int number, DamagedException why) throws IOException {
        String aside = history.setAside(number);
        news.tell("Revision " + number + " is damaged: " + why.getMessage() + ". What is left of it is kept in "
                + Forgetting.HISTORY + "/" + aside + ".");
    }

    /** No revision can be read: what the coach sees in the folder is all there is. */
    private Version fromFiles(Instant now) throws IOException {
        try {
            Texts texts = firstFiles();
            news.tell("No revision could be read; the files of the folder are sound and are in force.");
            return append(RECOVERED, texts.read(), texts, 0, now);
        } catch (DocumentException e) {
            throw new StoreFault("Neither a revision nor the files in " + folder + " can be read: "
                    + e.problems().get(0) + " Nothing was deleted: take them from a copy.");
        }
    }

    /** What was changed by hand becomes a revision; what cannot be used is kept aside. */
    private Version absorb(Version newest, boolean recovered, Instant now) throws IOException {
        Texts inForce = texts(newest);
        Map<Part, byte[]> there = strange(copies.read(), inForce);
        if (there.isEmpty()) {
            return newest;
        }
        refuseNewer(there);
        try {
            Merge merge = Merge.of(inForce, there, (part, why) -> keepAside(part, why, newest, now));
            if (merge.changed().isEmpty()) {
                return newest;
            }
            Version edited = append(recovered ? RECOVERED : OUTSIDE, merge.texts().read(), merge.texts(), 0, now);
            news.tell(found(merge.changed(), recovered) + ": this is revision " + edited.number() + " now.");
            merge.unfit().forEach(part -> news.tell(unfit(part, newest.number())));
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

    /** What a coach is told of a document that a changed scenario has no place for. */
    static String unfit(Part part, int number) {
        return part.file() + " does not fit the changed scenario and is left out; revision " + number
                + " still has it.";
    }

    private void keepAside(Part part, DocumentException why, Version newest, Instant now) throws IOException {
        String name = copies.keepAside(part, now);
        news.tell(part.file() + " could not be used and is kept as " + name + "; the one of revision " + newest.number()
                + " takes its place. What was wrong: " + why.problems().get(0));
    }

    /** The files that are neither what is in force nor what any revision held: those a crash left behind are passed over. */
    private Map<Part, byte[]> strange(Map<Part, byte[]> there, Texts inForce) throws IOException {
        Map<Part, byte[]> strange = new EnumMap<>(Part.class);
        there.forEach((part, text) -> {
            if (!Arrays.equals(text, inForce.get(part))) {
                strange.put(part, text);
            }
        });
        if (!strange.isEmpty()) {
            List<Revision> all = history.all();
            strange.entrySet().removeIf(entry -> held(all, entry.getKey(), Texts.digest(entry.getValue())));
        }
        return strange;
    }

    private static boolean held(List<Revision> all, Part part, String digest) {
        return all.stream().anyMatch(revision -> digest.equals(revision.files().get(part.file())));
    }

    private void refuseNewer(Map<Part, byte[]> texts) {
        texts.forEach((part, text) -> {
            if (Documents.form(text).orElse(0) > Scenario.VERSION) {
                throw StoreFault.newer(copies.path(part));
            }
        });
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
    Version append(String label, Contents contents, Texts texts, int shows, Instant now) throws IOException {
        int number = history.next();
        Revision revision = new Revision(number, now, label, shows == 0 ? number : shows, false, texts.digests());
        history.append(revision, texts);
        Version appended = new Version(revision, contents);
        head = appended;
        refresh(appended);
        thin(appended, now);
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

    /** Rewrites all without an athlete. */
    void forget(Scrub scrub, Version version, Instant now) throws IOException {
        head = null;
        forgetting.run(scrub, version, now);
    }

    /** The state before a change: the newest that is kept of those made before it; null where there is none. */
    @Nullable
    Version before(int change) throws IOException {
        List<Integer> numbers = history.numbers();
        for (int i = numbers.size() - 1; i >= 0; i--) {
            if (numbers.get(i) < change) {
                try {
                    return history.version(numbers.get(i));
                } catch (DamagedException e) {
                    setAside(numbers.get(i), e);
                }
            }
        }
        return null;
    }

    /** The state that was undone last to come to what a revision shows; null where there is none. */
    @Nullable
    Version after(Revision revision) throws IOException {
        List<Revision> all = new ArrayList<>(history.all());
        all.removeIf(Revision::beside);
        for (int i = all.size() - 1; i >= 0; i--) {
            Revision candidate = all.get(i);
            if (parent(candidate.shows(), all) == revision.shows()) {
                try {
                    return history.version(candidate.number());
                } catch (DamagedException e) {
                    setAside(candidate.number(), e);
                }
            }
        }
        return null;
    }

    /** What was shown when a change was made, or 0. */
    private static int parent(int change, List<Revision> all) {
        int parent = 0;
        for (Revision revision : all) {
            if (revision.number() < change) {
                parent = revision.shows();
            }
        }
        return parent;
    }

    /** What was done in a revision. */
    String label(int number) throws IOException {
        try {
            return history.revision(number).label();
        } catch (DamagedException e) {
            return Revision.NO_LABEL;
        }
    }
}
