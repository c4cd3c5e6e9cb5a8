package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that writes is killed in the middle of its work, again and again in the same folder; five times here, as often
 * as {@code -Dweekwright.kills=50} says otherwise.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("weekwright.kills", 5);

    @TempDir
    private Path folder;

    private int confirmed;
    private int inTheMiddle;

    @Test
    void a_program_that_is_killed_loses_nothing_that_was_confirmed() throws Exception {
        Files.writeString(folder.resolve("scenario.json"), Harbour.SCENARIO);
        Files.writeString(folder.resolve("plan.json"), Harbour.planText(1));
        Store.open(folder, new RealDisk(), new Hands("2027-03-01T08:00:00Z"));
        Random random = new Random(6);

        for (int kill = 1; kill <= KILLS; kill++) {
            check(killed(5 + random.nextInt(40), random.nextInt(30)), "kill " + kill);
        }

        if (KILLS > 5) {
            System.out.println(KILLS + " kills, " + inTheMiddle + " of them in the middle of a change; " + confirmed
                    + " changes confirmed, none lost; " + Harbour.labels(open()).size() + " revisions at the end");
        }
    }

    /** What the program had said when it was killed, some milliseconds after so many changes. */
    private List<String> killed(int changes, int millis) throws IOException, InterruptedException {
        List<String> said = new ArrayList<>();
        try (ChildProgram child = ChildProgram.writing(folder)) {
            for (int done = 0; done < changes; ) {
                String line = child.line();
                assertThat(line)
                        .as("the program ended of itself after %s", said)
                        .isNotNull();
                said.add(line);
                done += line.startsWith("done") ? 1 : 0;
            }
            Thread.sleep(millis);
            said.addAll(child.kill());
        }
        return said;
    }

    private Store open() throws Exception {
        // The clock stands at the beginning: nothing is thinned out while it is looked for.
        return Store.open(folder, new RealDisk(), new Hands("2027-03-01T08:00:00Z"));
    }

    private void check(List<String> said, String when) throws Exception {
        Map<Integer, String> promised = promised(said);
        Store store = open();
        assertThat(store.news()).as(when).noneMatch(line -> line.contains("damaged") || line.contains("could"));

        Map<Integer, String> kept = new LinkedHashMap<>();
        for (Revision revision : store.history()) {
            assertThat(store.read(revision.number()).revision()).as(when).isEqualTo(revision);
            kept.put(revision.number(), new TreeMap<>(revision.files()).toString());
        }
        assertThat(kept).as(when).containsAllEntriesOf(promised);
        int last = promised.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
        assertThat(store.head().number()).as(when).isGreaterThanOrEqualTo(last);
        Texts wanted = Texts.of(store.head().contents());
        for (Part part : Part.values()) {
            byte[] text = wanted.get(part);
            if (text != null) {
                assertThat(folder.resolve(part.file())).as(when).hasBinaryContent(text);
            }
        }
        assertThat(leftovers()).as(when).isEmpty();
    }

    /** The revisions said to be confirmed. A forgetting that was begun may have rewritten those before it. */
    private Map<Integer, String> promised(List<String> said) {
        Map<Integer, String> promised = new LinkedHashMap<>();
        for (String line : said) {
            String[] words = line.split(" ", 3);
            if (line.equals("doing forget")) {
                promised.clear();
            } else if (words[0].equals("done")) {
                promised.put(Integer.parseInt(words[1]), words[2]);
                confirmed++;
            }
        }
        inTheMiddle += said.get(said.size() - 1).startsWith("doing") ? 1 : 0;
        return promised;
    }

    private List<String> leftovers() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> folder.relativize(file).toString())
                    .filter(name -> name.contains("writing") || name.contains("gone") || name.contains("history."))
                    .toList();
        }
    }
}
