package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import weekwright.desk.store.FrailDisk.Luck;
import weekwright.desk.store.Journey.Held;
import weekwright.model.document.DocumentException;

/**
 * The power goes at every step of every kind of write: opening, saving, undo, redo, import, an edit outside, solving again,
 * coming late, forgetting, thinning out. Afterwards every document reads and no confirmed change is missing.
 */
class PowerCutTest {
    /** What survives by chance, besides all and nothing; {@code -Dweekwright.cuts=20} tries more. */
    private static final int TRIES_BY_CHANCE = Integer.getInteger("weekwright.cuts", 1);

    private final Set<Map<String, String>> read = new HashSet<>();

    @Test
    void nothing_confirmed_is_lost_wherever_the_power_goes() throws Exception {
        Journey whole = new Journey();
        whole.go();
        Map<String, Integer> cuts = new LinkedHashMap<>();

        for (int step = 0; step < whole.names().size(); step++) {
            cuts.put(whole.names().get(step), cutsIn(whole, step));
        }

        if (TRIES_BY_CHANCE > 1) {
            System.out.println("Cuts, each with all, nothing and " + TRIES_BY_CHANCE
                    + " chance parts of what was not synced: " + cuts);
        }
        assertThat(cuts).allSatisfy((step, count) -> assertThat(count).as(step).isGreaterThan(8));
    }

    /** Cuts the power at every write, sync, rename and delete of a step; how many there were. */
    private int cutsIn(Journey whole, int step) throws Exception {
        for (int cut = 1; ; cut++) {
            Journey journey = whole.upTo(step);
            journey.disk.cutAfter(cut);
            try {
                journey.go(step);
            } catch (PowerCut expected) {
                tryAll(whole, journey, step, cut);
                continue;
            }
            return cut - 1;
        }
    }

    private void tryAll(Journey whole, Journey journey, int step, int cut) throws Exception {
        for (int chance = -2; chance < TRIES_BY_CHANCE; chance++) {
            Luck luck = chance == -2 ? Luck.ALL : chance == -1 ? Luck.NONE : Luck.ANY;
            String when = whole.names().get(step) + ", step " + cut + ", luck " + luck + ", seed " + chance;
            Random random = new Random(1_009L * step + 31L * cut + chance);
            FrailDisk found = journey.disk.afterCut(luck, random);
            if (luck == Luck.ANY) {
                found = cutAgain(found, journey, random);
            }
            check(found, journey, before(whole, step), whole.held.get(step), when);
        }
    }

    private static Held before(Journey whole, int step) {
        return step == 0 ? new Held(Map.of(), whole.held.get(0).head()) : whole.held.get(step - 1);
    }

    /** The power goes once more while the folder is mended. */
    private static FrailDisk cutAgain(FrailDisk found, Journey journey, Random random) throws DocumentException {
        found.cutAfter(1 + random.nextInt(25));
        try {
            Journey.open(found, journey.clock);
        } catch (PowerCut expected) {
            return found.afterCut(Luck.ANY, random);
        }
        return found.afterCut(Luck.NONE, random);
    }

    private void check(FrailDisk found, Journey journey, Held before, Held after, String when)
            throws DocumentException, IOException {
        Store store = Journey.open(found, journey.clock);
        List<String> news = store.news();
        assertThat(news).as(when).noneMatch(line -> line.contains("damaged") || line.contains("could not"));
        Held now = Held.of(store);
        assertThat(now.head()).as(when).isIn(before.head(), after.head());
        // All revisions are as they were before the step or all are as they are after it.
        boolean past = now.head() == after.head();
        before.revisions().forEach((number, files) -> {
            boolean mayGo = !after.revisions().containsKey(number);
            Map<String, String> wanted = past ? after.revisions().getOrDefault(number, files) : files;
            if (now.revisions().containsKey(number) || !mayGo) {
                assertThat(now.revisions().get(number))
                        .as(when + ", revision " + number)
                        .isEqualTo(wanted);
            }
        });
        everythingReads(found, store, when);
        copiesFollow(found, store, when);
        assertThat(store.commit(
                        store.head().number(),
                        "Life goes on",
                        store.head().contents().with(Harbour.plan(77))))
                .as(when)
                .isInstanceOf(Outcome.Saved.class);
    }

    /** Documents that were read once, byte for byte, are not read again: only that they are these bytes is looked at. */
    private void everythingReads(FrailDisk found, Store store, String when) throws IOException {
        History history = new History(Journey.FOLDER.resolve("history"), found);
        for (Revision revision : store.history()) {
            try {
                assertThat(history.texts(revision).digests()).as(when).isEqualTo(revision.files());
                if (read.add(revision.files())) {
                    assertThat(history.version(revision.number()).revision())
                            .as(when)
                            .isEqualTo(revision);
                }
            } catch (DamagedException e) {
                throw new AssertionError(when + ", revision " + revision.number(), e);
            }
        }
    }

    private static void copiesFollow(FrailDisk found, Store store, String when) {
        Map<String, String> beside = found.everything(Journey.FOLDER).entrySet().stream()
                .filter(file -> !file.getKey().startsWith("/history/"))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        Texts wanted = Texts.of(store.head().contents());
        for (Part part : Part.values()) {
            byte[] text = wanted.get(part);
            String file = "/" + part.file();
            assertThat(beside.get(file))
                    .as(when + ", " + file)
                    .isEqualTo(text == null ? null : new String(text, StandardCharsets.UTF_8));
            beside.remove(file);
        }
        assertThat(beside).as(when).isEmpty();
    }
}
