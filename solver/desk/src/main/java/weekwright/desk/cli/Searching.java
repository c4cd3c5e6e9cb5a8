package weekwright.desk.cli;

import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;

/** A search that tells how far it has come, and that can be interrupted. */
final class Searching {
    private Searching() {}

    static Judged run(Surroundings around, Proposal proposal) {
        Interrupts interrupts = new Interrupts(
                () -> around.err()
                        .println("\nStopping: the best plan so far follows. Interrupt again to stop at once."),
                () -> Runtime.getRuntime().halt(Exit.INTERRUPTED));
        interrupts.listen();
        ProgressReport report = new ProgressReport(around.err(), around.live(), System::nanoTime, interrupts::asked);
        report.begin();
        try {
            return around.planner().propose(proposal, report);
        } finally {
            report.end();
        }
    }
}
