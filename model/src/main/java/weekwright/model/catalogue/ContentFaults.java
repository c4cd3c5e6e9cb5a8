package weekwright.model.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is wrong with the lines of a session, beyond their form. */
final class ContentFaults {
    private final List<String> found = new ArrayList<>();

    private ContentFaults() {}

    /** One line a fault; the path of the field comes before the first colon. */
    static List<String> of(List<Content> content) {
        ContentFaults faults = new ContentFaults();
        for (int i = 0; i < content.size(); i++) {
            faults.line("content[" + i + "]", content.get(i));
        }
        return faults.found;
    }

    private void line(String path, Content line) {
        Double from = line.percentFrom();
        Double to = line.percentTo();
        if (from != null && to != null && to < from) {
            found.add(path + ".percentTo: is less than percentFrom; give the same or more");
        }
        if (from == null && to != null) {
            found.add(path + ".percentTo: stands without percentFrom; give the least share too");
        }
        switch (line.kind()) {
            case SPRINT -> {
                need(path, "metres", line.metres(), "a sprint is over a distance");
                need(path, "repetitions", line.repetitions(), "a sprint is run a number of times");
            }
            case LIFT -> need(path, "repetitions", line.repetitions(), "a lift has repetitions");
            case JUMP -> need(path, "repetitions", line.repetitions(), "jumps are counted");
            case RUN -> run(path, line);
            case WARM_UP, WORDS -> {}
        }
    }

    private void run(String path, Content line) {
        need(path, "repetitions", line.repetitions(), "runs are counted");
        if ((line.metres() == null) == (line.seconds() == null)) {
            found.add(path + ".metres: a run is over metres (a share of top speed) or over seconds (a share of"
                    + " aerobic speed); give one of the two");
        }
    }

    private void need(String path, String field, @Nullable Object value, String why) {
        if (value == null) {
            found.add(path + "." + field + ": is missing; " + why);
        }
    }
}
