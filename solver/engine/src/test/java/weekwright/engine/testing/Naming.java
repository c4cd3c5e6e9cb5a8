package weekwright.engine.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.StaffMember;

/**
 * The names under which things are written, and the order of the lists that they stand in.
 *
 * @param backwards lists are told from their ends
 * @param otherNames ids are spelt with letters from the other end of the alphabet, so that what came first comes last
 */
record Naming(boolean backwards, boolean otherNames) {
    /** The words of an id, the first with a capital. */
    static String label(String id) {
        return id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1).replace('-', ' ');
    }

    String id(String id) {
        if (!otherNames) {
            return id;
        }
        StringBuilder other = new StringBuilder();
        id.chars().forEach(c -> other.append(c >= 'a' && c <= 'z' ? (char) ('a' + 'z' - c) : (char) c));
        return other.toString();
    }

    List<String> ids(List<String> ids) {
        return ids.stream().map(this::id).toList();
    }

    <A, B> List<B> listed(List<A> all, Function<A, B> made) {
        List<B> list = new ArrayList<>(all.stream().map(made).toList());
        if (backwards) {
            Collections.reverse(list);
        }
        return list;
    }

    Athlete athlete(Athlete athlete) {
        return new Athlete(
                id(athlete.id()),
                athlete.name(),
                ids(athlete.groups()),
                null,
                athlete.born(),
                athlete.marks(),
                athlete.windows(),
                athlete.away(),
                athlete.restrictions());
    }

    Facility facility(Facility place) {
        return new Facility(
                id(place.id()),
                place.label(),
                place.offers(),
                place.straightMetres(),
                place.room(),
                place.open(),
                place.closed());
    }

    StaffMember staff(StaffMember member) {
        return new StaffMember(
                id(member.id()), member.name(), member.leads(), member.atOnce(), member.windows(), member.away());
    }
}
