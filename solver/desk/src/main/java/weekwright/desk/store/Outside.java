package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** What a hand, or a program of somebody else's, has changed in the files beside {@code history/}. */
final class Outside {
    private final Path folder;
    private final History history;
    private final WorkingCopies copies;
    private final News news;

    Outside(Path folder, History history, WorkingCopies copies, News news) {
        this.folder = folder;
        this.history = history;
        this.copies = copies;
        this.news = news;
    }

    /**
     * The files of a folder without revisions, as the program writes them.
     *
     * @throws DocumentException when one of them cannot be used
     * @throws StoreFault when there is no scenario, or a newer version of the program wrote them
     */
    Texts first() throws IOException, DocumentException {
        Map<Part, byte[]> there = copies.read();
        if (!there.containsKey(Part.SCENARIO)) {
            throw new StoreFault("The folder " + folder + " holds no scenario.json: put one there first, for example"
                    + " with: weekwright demo one-match -o FOLDER/scenario.json");
        }
        refuseNewer(there);
        return Merge.of(new Texts(Map.of()), there, Merge.REFUSED).texts();
    }

    /**
     * Looks at what was changed against the version in force, and touches nothing.
     *
     * @throws DocumentException when a changed file cannot be used
     */
    void refuseSlips(Texts inForce) throws IOException, DocumentException {
        Merge.of(inForce, unknown(copies.read(), inForce), Merge.REFUSED);
    }

    /**
     * What was changed against the version in force; a file that cannot be used is kept aside, which is told.
     *
     * @param inForce the documents in force
     * @param number their revision
     * @return the documents with what was changed; null where nothing was
     */
    @Nullable
    Merge changes(Texts inForce, int number, Instant now) throws IOException {
        Map<Part, byte[]> there = unknown(copies.read(), inForce);
        if (there.isEmpty()) {
            return null;
        }
        refuseNewer(there);
        try {
            Merge merge = Merge.of(inForce, there, (part, why) -> keepAside(part, why, number, now));
            return merge.changed().isEmpty() ? null : merge;
        } catch (DocumentException e) {
            throw new IllegalStateException("what cannot be used is kept aside", e);
        }
    }

    /** The files that are neither what is in force nor what any revision held: those a crash left behind are passed over. */
    private Map<Part, byte[]> unknown(Map<Part, byte[]> there, Texts inForce) throws IOException {
        Map<Part, byte[]> unknown = new EnumMap<>(Part.class);
        there.forEach((part, text) -> {
            if (!Arrays.equals(text, inForce.get(part))) {
                unknown.put(part, text);
            }
        });
        if (!unknown.isEmpty()) {
            List<Revision> all = history.all();
            unknown.entrySet().removeIf(entry -> held(all, entry.getKey(), Documents.digest(entry.getValue())));
        }
        return unknown;
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

    private void keepAside(Part part, DocumentException why, int number, Instant now) throws IOException {
        String name = copies.keepAside(part, now);
        news.tell(part.file() + " could not be used and is kept as " + name + "; the one of revision " + number
                + " takes its place. What was wrong: " + why.problems().get(0));
    }
}
