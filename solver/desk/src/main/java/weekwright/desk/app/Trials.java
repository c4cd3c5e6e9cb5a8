package weekwright.desk.app;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import weekwright.desk.app.WhatIfs.Answer;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Outcome;
import weekwright.engine.search.Progress;
import weekwright.model.change.Event;

/** What would happen if, tried for the page: the last trial of each folder is kept until the coach keeps or drops it. */
public final class Trials {
    private static final double SECONDS = 3;

    private final Planner planner;
    private final Clock clock;
    private final Map<Workplace, Trial> latest = new ConcurrentHashMap<>();
    private final ReentrantLock busy = new ReentrantLock();

    /** Trials with a planner. */
    public Trials(Planner planner, Clock clock) {
        this.planner = planner;
        this.clock = clock;
    }

    /**
     * A trial.
     *
     * @param from the revision that it was made from
     * @param question what was asked
     * @param besides what it brings with it
     */
    public record Trial(Seen from, String question, List<String> besides, Answer answer) {}

    /**
     * Tries some events; it takes some seconds.
     *
     * @throws InputFault when they cannot happen, there is no plan yet, or another trial is on
     */
    public Trial tried(Workplace place, Seen from, List<Event> events, String question, List<String> besides) {
        if (!from.planned()) {
            throw new InputFault("there is no plan to hold it against yet: plan the week first");
        }
        if (!busy.tryLock()) {
            throw new InputFault("another what-if is being worked out: ask again in a few seconds");
        }
        try {
            Answer answer = new WhatIfs(planner)
                    .of(
                            Proposals.of(from.scenario(), from.judged().plan(), SECONDS, clock),
                            from.judged().plan(),
                            events,
                            proposal -> planner.propose(proposal, Progress.SILENT));
            Trial trial = new Trial(from, question, besides, answer);
            latest.put(place, trial);
            return trial;
        } finally {
            busy.unlock();
        }
    }

    /** The last trial of a folder, where it was made from the revision in force. */
    public Optional<Trial> of(Workplace place) {
        int now = place.now().revision().number();
        return Optional.ofNullable(latest.get(place))
                .filter(trial -> trial.from().revision().number() == now);
    }

    /** Drops the last trial of a folder. */
    public void drop(Workplace place) {
        latest.remove(place);
    }

    /**
     * Keeps the last trial of a folder as a change.
     *
     * @throws InputFault when there is none
     */
    public Outcome keep(Workplace place) {
        Trial trial = of(place).orElseThrow(() -> new InputFault("there is nothing to keep any more: ask again"));
        Outcome outcome = place.change(
                trial.from().revision().number(),
                trial.question().replaceFirst("\\?$", ""),
                trial.answer().scenario(),
                trial.answer().judged());
        latest.remove(place);
        return outcome;
    }
}
