package weekwright.desk.view.week;

import java.util.ArrayList;
import java.util.List;
import weekwright.desk.view.week.TimeAxis.Stretch;

/** Puts what overlaps in time side by side. */
final class Tracks {
    /** More than so many side by side cannot be read. */
    static final int MOST = 4;

    private Tracks() {}

    /**
     * A place in a row.
     *
     * @param track from 1
     * @param of how many there are side by side
     */
    record Track(int track, int of) {}

    /** The tracks of stretches that are given in order of their starts. */
    static List<Track> of(List<Stretch> stretches) {
        List<Track> tracks = new ArrayList<>();
        int at = 0;
        while (at < stretches.size()) {
            int end = bundle(stretches, at);
            tracks.addAll(sideBySide(stretches.subList(at, end)));
            at = end;
        }
        return tracks;
    }

    /** The end of those that hang together in time. */
    private static int bundle(List<Stretch> stretches, int from) {
        int until = stretches.get(from).to();
        int at = from + 1;
        while (at < stretches.size() && stretches.get(at).from() < until) {
            until = Math.max(until, stretches.get(at).to());
            at++;
        }
        return at;
    }

    private static List<Track> sideBySide(List<Stretch> bundle) {
        List<Integer> ends = new ArrayList<>();
        List<Integer> chosen = new ArrayList<>();
        for (Stretch stretch : bundle) {
            int free = 0;
            while (free < ends.size() && ends.get(free) > stretch.from()) {
                free++;
            }
            if (free == ends.size()) {
                ends.add(stretch.to());
            } else {
                ends.set(free, stretch.to());
            }
            chosen.add(Math.min(free, MOST - 1));
        }
        int of = Math.min(MOST, ends.size());
        return chosen.stream().map(track -> new Track(track + 1, of)).toList();
    }
}
