package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Random;
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
    private static final int TRIES_BY_CHANCE = 4;

    private int tried;

    @Test
    void nothing_confirmed_is_lost_wherever_the_power_goes() throws Exception {
        Journey whole = new Journey();
        whole.go();
        int steps = whole.disk.steps();

        for (int step = 1; step <= steps; step++) {
            Journey journey = cut(step);
            tryAll(whole, journey, step);
        }

        assertThat(steps).isGreaterThan(300);
        assertThat(tried).isEqualTo(steps * (2 + TRIES_BY_CHANCE));
    }

    private static Journey cut(int step) throws Exception {
        Journey journey = new Journey();
        journey.disk.cutAfter(step);
        try {
            journey.go();
        } catch (PowerCut expected) {
            return journey;
        }
        throw new AssertionError("the power did not go at step " + step);
    }

    private void tryAll(Journey whole, Journey journey, int step) throws Exception {
        for (int chance = -2; chance < TRIES_BY_CHANCE; chance++) {
            Luck luck = chance == -2 ? Luck.ALL : chance == -1 ? Luck.NONE : Luck.ANY;
            String when = "step " + step + ", luck " + luck + ", seed " + chance;
            Random random = new Random(31L * step + chance);
            FrailDisk found = journey.disk.afterCut(luck, random);
            if (luck == Luck.ANY) {
                found = cutAgain(found, journey, random);
            }
            check(found, whole, journey, when);
            tried++;
        }
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

    private static void check(FrailDisk found, Journey whole, Journey journey, String when)
            throws DocumentException, IOException {
        Store store = Journey.open(found, journey.clock);
        List<String> news = store.news();
        assertThat(news).as(when).noneMatch(line -> line.contains("damaged") || line.contains("could not"));

        int done = journey.held.size();
        Held now = Held.of(store);
        Held after = whole.held.get(done);
        Held before = done == 0 ? new Held(Map.of(), after.head()) : whole.held.get(done - 1);
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
        everythingReads(store, when);
        copiesFollow(found, store, when);
        assertThat(store.commit(
                        store.head().number(),
                        "Life goes on",
                        store.head().contents().with(Harbour.plan(77))))
                .as(when)
                .isInstanceOf(Outcome.Saved.class);
    }

    private static void everythingReads(Store store, String when) {
        for (Revision revision : store.history()) {
            assertThat(store.read(revision.number()).revision()).as(when).isEqualTo(revision);
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
                    .isEqualTo(text == null ? null : new String(text, java.nio.charset.StandardCharsets.UTF_8));
            beside.remove(file);
        }
        assertThat(beside).as(when).isEmpty();
    }
}
