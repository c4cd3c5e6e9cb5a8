package weekwright.desk.app;

import java.util.Optional;
import weekwright.desk.app.Workplace.Seen;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.Remedied;
import weekwright.engine.explain.Traded;
import weekwright.model.scenario.Scenario;

/** What could go in the open folders: looked for when it is the turn of each, the last answer of each folder is kept. */
public final class Bargains {
    /** Moves of each search, as many as the command takes where nothing is said. */
    private static final long MOVES = 20_000;

    private final Planner planner;
    private final Latest<Bargain> latest;

    /**
     * Nothing asked yet.
     *
     * @param turns where they wait for their turn
     */
    public Bargains(Planner planner, OneByOne turns) {
        this.planner = planner;
        latest = new Latest<>(turns);
    }

    /**
     * Something given up.
     *
     * @param step what was done, in a few words
     */
    public record Given(Scenario scenario, Judged judged, String step) {}

    /**
     * Looks for what could go, unless that is being done for the folder already.
     *
     * @throws InputFault when there is no plan yet
     */
    public Bargain ask(Workplace place, Seen from) {
        if (!from.planned()) {
            throw new InputFault("there is no plan yet: plan the week first");
        }
        return latest.ask(place, () -> new Bargain(from, this::look));
    }

    /** The last one of a folder. */
    public Optional<Bargain> of(Workplace place) {
        return latest.of(place);
    }

    /** How many pieces of work come before one that waits. */
    public int before(Bargain bargain) {
        return latest.before(bargain);
    }

    /** Forgets the last one of a folder, once it has ended. */
    public void putAway(Workplace place) {
        latest.putAway(place);
    }

    /**
     * The documents after one of the things that could go has gone, judged.
     *
     * @param seen what the coach saw
     * @param number its number in the answer, from 0
     * @throws InputFault when it was not looked for of what the coach saw
     */
    public Given given(Workplace place, Seen seen, int number) {
        Bargain bargain = latest.of(place).orElse(null);
        Traded found =
                bargain == null || !bargain.isOf(seen) ? null : bargain.now().found();
        if (found == null || number >= found.without().size()) {
            throw new InputFault("what could go was looked for in another plan than this one: look again");
        }
        Remedied then = found.without().get(number);
        return new Given(
                then.scenario(),
                planner.judgeWithoutRemedies(then.scenario(), then.plan()),
                String.join(", ", found.answer().couldGo().get(number).steps()));
    }

    private void look(Bargain bargain) {
        if (bargain.stop()) {
            bargain.fails("Stopped before it began.");
            return;
        }
        bargain.begins();
        Seen from = bargain.from();
        try {
            bargain.ends(planner.tradeOffs(
                    Proposals.of(from.scenario(), from.judged().plan(), MOVES), bargain, bargain::tries));
        } catch (RuntimeException fault) {
            bargain.fails(Latest.failed(fault));
        }
    }
}
