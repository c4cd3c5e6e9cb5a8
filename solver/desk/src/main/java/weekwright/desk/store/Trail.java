package weekwright.desk.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The way through the revisions, back and forth. Damaged ones met on it are set aside, told and passed over. */
final class Trail {
    private final History history;
    private final News news;

    private @Nullable Version head;

    Trail(History history, News news) {
        this.history = history;
        this.news = news;
    }

    /** Takes note of the version in force, which need not be read again then; null where it must be. */
    void head(@Nullable Version version) {
        head = version;
    }

    /** The newest revision that can be read; null where none can. */
    @Nullable
    Version newest() throws IOException {
        List<Integer> numbers = history.numbers();
        for (int i = numbers.size() - 1; i >= 0; i--) {
            Version found = readable(numbers.get(i));
            if (found != null) {
                if (i < numbers.size() - 1) {
                    news.tell("Revision " + found.number() + " ("
                            + found.revision().label() + ") is the newest that could be read.");
                }
                head = found;
                return found;
            }
        }
        return null;
    }

    /** A revision; null where it is damaged. */
    private @Nullable Version readable(int number) throws IOException {
        try {
            Version known = head;
            return known != null && known.revision().equals(history.revision(number)) ? known : history.version(number);
        } catch (DamagedException e) {
            String aside = history.setAside(number);
            news.tell("Revision " + number + " is damaged: " + e.getMessage() + ". What is left of it is kept in "
                    + Forgetting.HISTORY + "/" + aside + ".");
            return null;
        }
    }

    /** The state before a change: the newest that is kept of those made before it; null where there is none. */
    @Nullable
    Version before(int change) throws IOException {
        List<Integer> numbers = new ArrayList<>(history.numbers());
        numbers.removeIf(number -> number >= change);
        for (int i = numbers.size() - 1; i >= 0; i--) {
            Version found = readable(numbers.get(i));
            if (found != null) {
                return found;
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
            if (shownBefore(candidate.shows(), all) == revision.shows()) {
                Version found = readable(candidate.number());
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** What was shown when a change was made, or 0. */
    private static int shownBefore(int change, List<Revision> all) {
        int shown = 0;
        for (Revision revision : all) {
            if (revision.number() < change) {
                shown = revision.shows();
            }
        }
        return shown;
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
