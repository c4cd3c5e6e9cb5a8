package weekwright.model.load;

import java.util.OptionalDouble;

/** Change from one week to the next. */
public final class Change {
    /** Rise in per cent that is told. Common practice, no source. */
    public static final double TOLD = 10;
    /** Rise in per cent that asks for a reason. Common practice, no source. */
    public static final double ASKED = 15;

    private Change() {}

    /** Change in per cent; empty where the week before had no load. */
    public static OptionalDouble percent(double before, double now) {
        return before <= 0 ? OptionalDouble.empty() : OptionalDouble.of((now - before) / before * 100);
    }
}
