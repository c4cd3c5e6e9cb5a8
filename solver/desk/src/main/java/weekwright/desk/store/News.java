package weekwright.desk.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Sentences that wait to be told, each once. */
final class News {
    private final Set<String> waiting = new LinkedHashSet<>();

    synchronized void tell(String sentence) {
        waiting.add(sentence);
    }

    synchronized List<String> taken() {
        List<String> taken = new ArrayList<>(waiting);
        waiting.clear();
        return taken;
    }
}
