package weekwright.desk.cli;

import java.util.function.Consumer;
import java.util.function.Function;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;

/** A search that tells how far it has come, and that can be interrupted. */
final class Searching {
    private Searching() {}

    /** A search for the best plan. */
    static Judged run(Surroundings around, Proposal proposal) {
        return interruptible(
                around,
                "the best plan so far",
                ProgressReport::begin,
                report -> around.planner().propose(proposal, report));
    }

    /**
     * Any search.
     *
     * @param follows what follows when it is interrupted
     */
    static <T> T interruptible(
            Surroundings around, String follows, Consumer<ProgressReport> begin, Function<ProgressReport, T> search) {
        Interrupts interrupts = new Interrupts(
                () -> around.err().println("\nStopping: " + follows + " follows. Interrupt again to stop at once."),
                () -> Runtime.getRuntime().halt(Exit.INTERRUPTED));
        interrupts.listen();
        ProgressReport report = new ProgressReport(around.err(), around.live(), System::nanoTime, interrupts::asked);
        begin.accept(report);
        try {
            return search.apply(report);
        } finally {
            report.end();
        }
    }
}
