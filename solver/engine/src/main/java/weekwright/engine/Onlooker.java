package weekwright.engine;

import java.util.function.Supplier;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Progress;

/** Hears of a search, and may look at the best plan while it runs. */
public interface Onlooker extends Progress {
    /**
     * The plan that {@link #better} tells of next.
     *
     * @param drawn its placements and days, with nothing said of them yet; may be asked for later and from any thread
     */
    void plan(Supplier<Judged> drawn);
}
