package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/**
 * How long a coach waits for the page, and how much it weighs. It is run by its name only and prints rows for
 * {@code benchmarks/report.md}; nothing here can fail for being slow.
 */
class PageFigures {
    private static final int TIMES = 7;

    @TempDir
    private Path place;

    @Test
    void print() throws Exception {
        Planned.week(place, "week", Scenarios.read("one-match"), 5_000);
        Planned.week(place, "club", SquadGenerator.squad(5, 8, 224, 4), 3_000);
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            for (String folder : List.of("week", "club")) {
                String of = folder.equals("week") ? ", one squad's week" : ", a week of eight squads and four weeks";
                page.navigate(coach.origin() + "/w/" + folder);
                row("session pressed to all its starts drawn" + of, () -> held(page));
                page.keyboard().press("Escape");
                row("the page drawn anew" + of, () -> drawn(page, coach.origin() + "/w/" + folder));
                weight(coach, folder, of);
            }
            page.navigate(coach.origin() + "/w/week");
            row("`Plan afresh` pressed to the first better plan, one squad's week", () -> planned(page));
        }
    }

    private void row(String what, DoubleSupplier millis) {
        // The first is not counted.
        double[] all = Stream.generate(millis::getAsDouble)
                .limit(TIMES + 1)
                .skip(1)
                .mapToDouble(one -> one)
                .sorted()
                .toArray();
        System.out.println(String.format(
                Locale.ROOT, "| %s | %.0f ms | %.0f to %.0f ms |", what, all[TIMES / 2], all[0], all[TIMES - 1]));
    }

    static final String PAINTED = "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))";

    static double number(Page page, String script) {
        return ((Number) page.evaluate(script)).doubleValue();
    }

    /** From the press of a session to the frame that shows all that its starts would do. */
    private static double held(Page page) {
        page.keyboard().press("Escape");
        assertThat(page.locator(".cell")).hasCount(0);
        return number(page, """
                () => new Promise(done => {
                  const card = document.querySelectorAll('.card.session')[2];
                  const start = performance.now();
                  new MutationObserver((_, all) => {
                    if (document.querySelector('.hours .cell')) {
                      all.disconnect();
                      requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)));
                    }
                  }).observe(document.body, { childList: true, subtree: true });
                  card.click();
                })""");
    }

    private static double drawn(Page page, String address) {
        page.navigate(address);
        page.evaluate(PAINTED);
        // Counted from when the page was asked for.
        return number(page, "() => performance.now()");
    }

    /** Asks for another plan that need not stay close to this one. */
    private static double planned(Page page) {
        page.locator("#seconds").selectOption("2");
        double millis = number(page, """
                () => new Promise(done => {
                  const start = performance.now();
                  let begun = false;
                  new MutationObserver((_, all) => {
                    const progress = document.querySelector('#search .progress');
                    begun = begun || document.getElementById('search-end') !== null;
                    const better = begun && progress && progress.textContent.includes('sessions are placed');
                    // A short search may be over before it was drawn.
                    if (better || (begun && document.getElementById('search-begin') !== null)) {
                      all.disconnect();
                      requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)));
                    }
                  }).observe(document.body, { childList: true, subtree: true });
                  document.getElementById('search-afresh').click();
                })""");
        assertThat(page.locator("#search-begin")).isVisible();
        return millis;
    }

    private void weight(Coach coach, String folder, String of) {
        List<Response> answers = new ArrayList<>();
        try (Page page = coach.window.newPage()) {
            page.onResponse(answers::add);
            page.navigate(coach.origin() + "/w/" + folder);
            page.waitForTimeout(500);
            List<Response> parts = answers.stream()
                    .filter(one -> !one.url().endsWith("/events") && !one.url().contains("/remedies"))
                    .toList();
            long bytes = parts.stream().mapToLong(one -> one.body().length).sum();
            System.out.println(String.format(
                    Locale.ROOT,
                    "| weight of the page, unpacked%s | %d KB | %d requests |",
                    of,
                    bytes / 1024,
                    parts.size()));
        }
    }
}
