package weekwright.desk.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * A file as it was read.
 *
 * @param found its entries, numbered from 1
 * @param how how it was read, sentence by sentence
 * @param questions what it leaves open for many entries at once
 */
public record Reading(List<Found> found, List<String> how, List<String> questions) {
    public Reading {
        List<Found> numbered = new ArrayList<>();
        found.forEach(one -> numbered.add(one.numbered(numbered.size() + 1)));
        found = List.copyOf(numbered);
        how = List.copyOf(how);
        questions = List.copyOf(questions);
    }
}
