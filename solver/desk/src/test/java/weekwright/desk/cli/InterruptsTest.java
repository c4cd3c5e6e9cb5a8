package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class InterruptsTest {
    @Test
    void the_first_asks_for_the_best_so_far_and_the_second_ends_at_once() {
        List<String> done = new ArrayList<>();
        Interrupts interrupts = new Interrupts(() -> done.add("first"), () -> done.add("second"));

        assertThat(interrupts.asked()).isFalse();
        interrupts.interrupt();
        assertThat(interrupts.asked()).isTrue();
        assertThat(done).containsExactly("first");
        interrupts.interrupt();
        assertThat(done).containsExactly("first", "second");
    }

    @Test
    void the_keyboard_reaches_it() throws Exception {
        CountDownLatch heard = new CountDownLatch(1);
        Interrupts interrupts = new Interrupts(heard::countDown, () -> {});
        Class<?> signal = Class.forName("sun.misc.Signal");
        Class<?> handler = Class.forName("sun.misc.SignalHandler");
        Object keyboard = signal.getConstructor(String.class).newInstance("INT");

        // Where the tests were started with interrupts ignored, they stay ignored.
        Object before = signal.getMethod("handle", signal, handler)
                .invoke(null, keyboard, handler.getField("SIG_DFL").get(null));
        boolean ignored = before == handler.getField("SIG_IGN").get(null);
        interrupts.listen();
        signal.getMethod("raise", signal).invoke(null, keyboard);

        try {
            assertThat(heard.await(ignored ? 1 : 20, TimeUnit.SECONDS)).isEqualTo(!ignored);
            assertThat(interrupts.asked()).isEqualTo(!ignored);
        } finally {
            signal.getMethod("handle", signal, handler)
                    .invoke(null, keyboard, handler.getField("SIG_DFL").get(null));
        }
    }
}
