package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.Planner;
import weekwright.desk.app.Shelf;

/** How the desk starts, and how it does not. */
class DeskTest {
    @TempDir
    private Path place;

    /** Hears what libraries complain of. */
    private static final class Ear extends Handler {
        private final List<String> complaints = new ArrayList<>();

        @Override
        public void publish(LogRecord line) {
            if (line.getLevel().intValue() >= Level.SEVERE.intValue()) {
                complaints.add(line.getMessage());
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @Test
    void a_port_that_is_taken_is_said_once_and_in_words() {
        Ear ear = new Ear();
        Logger all = Logger.getLogger("");
        all.addHandler(ear);
        try (Browser browser = Browser.outside(place)) {
            int port = browser.desk.port();
            assertThatThrownBy(() -> Desk.start(Shelf.in(place, Browser.NOON, Planner.ENGINE), port, address -> {}))
                    .isInstanceOf(FileFault.class)
                    .hasMessage("Port " + port + " is taken by another program: give another, such as --port 0");
        } finally {
            all.removeHandler(ear);
        }
        assertThat(ear.complaints).isEmpty();
    }
}
