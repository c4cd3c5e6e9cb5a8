package weekwright.desk.cli;

import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicBoolean;

/** The first interrupt asks for the best plan so far; the second ends the program at once. */
final class Interrupts {
    private final AtomicBoolean asked = new AtomicBoolean();
    private final Runnable first;
    private final Runnable second;

    Interrupts(Runnable first, Runnable second) {
        this.first = first;
        this.second = second;
    }

    /** Whether there was an interrupt. */
    boolean asked() {
        return asked.get();
    }

    /** An interrupt. */
    void interrupt() {
        if (asked.compareAndSet(false, true)) {
            first.run();
        } else {
            second.run();
        }
    }

    /**
     * Takes the machine's interrupts (Ctrl-C) from now on. Java has no public class for them; the one that every usual
     * Java brings is reached by name, and where it is missing an interrupt ends the program as ever.
     */
    void listen() {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object mine = Proxy.newProxyInstance(
                    handler.getClassLoader(), new Class<?>[] {handler}, (proxy, method, arguments) -> {
                        if (method.getDeclaringClass() == Object.class) {
                            return method.invoke(this, arguments);
                        }
                        interrupt();
                        return null;
                    });
            Object interrupt = signal.getConstructor(String.class).newInstance("INT");
            signal.getMethod("handle", signal, handler).invoke(null, interrupt, mine);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            // Nothing to listen to: the default stands.
        }
    }
}
