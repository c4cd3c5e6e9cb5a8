package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import weekwright.model.plan.Totals;

class ProgressReportTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final AtomicLong millis = new AtomicLong();

    @Test
    void elsewhere_a_line_is_written_now_and_then() {
        ProgressReport report = report(false);

        better(report, 0, 40);
        better(report, 1_999, 30);
        better(report, 2_000, 20.5);
        report.end();

        assertThat(said()).isEqualTo("""
                        0.0 s: 3 of at most 4 placed; 1 key short; 40.0 points of wishes unmet
                        2.0 s: 3 of at most 4 placed; 1 key short; 20.5 points of wishes unmet
                        """);
    }

    @Test
    void on_a_terminal_one_line_is_rewritten_and_left_clean() {
        ProgressReport report = report(true);

        report.begin();
        better(report, 0, 40);
        better(report, 99, 30);
        better(report, 100, 20);
        report.end();

        assertThat(said().split("\r", -1))
                .satisfiesExactly(
                        before -> assertThat(before).isEmpty(),
                        begin -> assertThat(begin).startsWith("Searching; ").hasSize(79),
                        first -> assertThat(first)
                                .startsWith("0.0 s: 3 of at most 4 placed")
                                .hasSize(79),
                        second -> assertThat(second)
                                .startsWith("0.1 s: 3 of at most 4 placed")
                                .hasSize(79),
                        blank -> assertThat(blank).isBlank().hasSize(79),
                        end -> assertThat(end).isEmpty());
    }

    @Test
    void without_a_clock_moves_are_counted() {
        report(false).better(new Totals(2, 0, 1, 0), 4, 4, 12_000, 0);

        assertThat(said())
                .isEqualTo(
                        "12,000 moves: 4 of at most 4 placed; 2 broken that must hold, 1 main short; 0.0 points of wishes unmet\n");
    }

    private void better(ProgressReport report, long atMillis, double want) {
        millis.set(atMillis);
        report.better(new Totals(0, 1, 0, want), 3, 4, 1_000 + atMillis, Math.max(0.01, atMillis / 1_000.0));
    }

    private ProgressReport report(boolean live) {
        PrintStream to = new PrintStream(err, true, StandardCharsets.UTF_8);
        return new ProgressReport(to, live, () -> millis.get() * 1_000_000, () -> false);
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
