package weekwright.desk.browser;

import com.microsoft.playwright.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.scenarios.Scenarios;

/**
 * How long a coach waits from the start of the program to the first page, step by step. It is run by its name only, after
 * the jar was built, and prints rows for {@code benchmarks/report.md}; nothing here can fail for being slow. The browser is
 * open beforehand, as a coach's is.
 */
class StartFigures {
    private static final Path JAR = Path.of("target/weekwright.jar");
    private static final int TIMES = 7;
    /** How long a coach looks at the first page before a demo is pressed, at the least. */
    private static final double LOOKED_MILLIS = 1_000;

    @TempDir
    private Path place;

    @Test
    void print() throws Exception {
        Planned.week(place, "week", Scenarios.read("one-match"), 5_000);
        Path week = place.resolve("week");
        rows("one squad's week", List.of(), week, false);
        rows("a demo chosen on the first page", List.of(), null, true);
        String kept = place.resolve("weekwright.jsa").toString();
        start(List.of("-XX:ArchiveClassesAtExit=" + kept, "-Xlog:cds=off", "-Xlog:cds+dynamic=off"), week, false);
        List<String> quick = List.of("-XX:SharedArchiveFile=" + kept);
        rows("one squad's week, classes kept", quick, week, false);
        rows("a demo chosen on the first page, classes kept", quick, null, true);
    }

    private void rows(String what, List<String> options, Path week, boolean demo) throws Exception {
        Map<String, List<Double>> rows = new LinkedHashMap<>();
        for (int time = 0; time <= TIMES; time++) {
            Path folder = week != null ? week : Files.createDirectories(place.resolve(what + time));
            Map<String, Double> one = start(options, folder, demo);
            if (time > 0) {
                // The first is not counted.
                one.forEach((stage, millis) ->
                        rows.computeIfAbsent(stage, any -> new ArrayList<>()).add(millis));
            }
        }
        rows.forEach((stage, all) -> {
            double[] sorted = all.stream().mapToDouble(one -> one).sorted().toArray();
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %s: %s | %.0f | %.0f to %.0f |",
                    what,
                    stage,
                    sorted[sorted.length / 2],
                    sorted[0],
                    sorted[sorted.length - 1]));
        });
    }

    /** Starts the jar in a process of its own, opens the address that it prints and tells what took how long, in ms. */
    private static Map<String, Double> start(List<String> options, Path folder, boolean demo)
            throws IOException, InterruptedException {
        Map<String, Double> stages = new LinkedHashMap<>();
        try (Page page = Chromium.page()) {
            long start = System.nanoTime();
            Process desk = process(options, folder, demo);
            try (BufferedReader out =
                    new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8))) {
                String line = out.readLine();
                stages.put("start to its address", since(start));
                long asked = System.nanoTime();
                page.navigate(line.substring(line.indexOf("http")).strip());
                page.waitForSelector(demo ? "button.demo" : ".card.session");
                page.evaluate(PageFigures.PAINTED);
                stages.put("address opened to its text", number(page, "responseEnd"));
                stages.put("address opened to all loaded", number(page, "loadEventEnd"));
                stages.put("address opened to drawn", since(asked));
                stages.put("start to drawn, in all", since(start));
                stages.put("processor time by then", cpu(desk));
                if (demo) {
                    page.waitForTimeout(LOOKED_MILLIS);
                    long pressed = System.nanoTime();
                    page.locator("button.demo[value=one-match]").click();
                    page.waitForSelector(".card.session");
                    page.evaluate(PageFigures.PAINTED);
                    stages.put("demo pressed, after a second of looking, to its first sessions drawn", since(pressed));
                }
            } finally {
                desk.destroy();
                desk.waitFor();
            }
        }
        return stages;
    }

    private static Process process(List<String> options, Path folder, boolean demo) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(Arrays.asList("-jar", JAR.toAbsolutePath().toString(), "desk"));
        if (!demo) {
            command.add(folder.toString());
        }
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static double number(Page page, String when) {
        return PageFigures.number(page, "() => performance.getEntriesByType('navigation')[0]." + when);
    }

    private static double cpu(Process desk) {
        return desk.info().totalCpuDuration().map(Duration::toMillis).orElse(0L);
    }
}
