package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Session;
import weekwright.model.rulebook.RuleLevel;

/** A finding for which a remedy is looked for, and what has been found so far. */
final class Sought {
    /** Ways that only the coach has are kept in mind up to this number: each must be judged from nothing. */
    private static final int MOST_OF_COACH = 4;

    final Fact fact;
    final List<Session> concerned;
    /** What clears the finding by the plan alone. */
    @Nullable
    Found best;

    /** What would clear it if somebody gave more time; at what price is a guess until it is judged. */
    final List<Found> ofCoach = new ArrayList<>();

    int tried;
    int untried;
    int clearing;
    int dearer;
    final Map<String, Integer> blockers = new TreeMap<>();

    Sought(Fact fact, List<Session> concerned) {
        this.fact = fact;
        this.concerned = concerned;
    }

    String rule() {
        return fact.rule().id();
    }

    /** Whether a change is worth telling: nothing graver gets worse for it, and what is owed less is not made up elsewhere. */
    boolean worthIt(Cost change) {
        return switch (fact.level()) {
            case MUST -> change.must < 0;
            case KEY -> change.must <= 0 && change.key < 0;
            case MAIN -> change.must <= 0 && change.key <= 0 && change.main < 0;
            default -> change.must <= 0 && change.key <= 0 && change.main <= 0;
        };
    }

    boolean isWish() {
        return fact.level() == RuleLevel.WANT;
    }

    /** Takes note of a way that clears the finding and breaks nothing new that must hold. */
    void offer(Found found) {
        if (!worthIt(found.change())) {
            dearer++;
        } else if (best == null || Found.IN_ORDER.compare(found, best) < 0) {
            best = found;
        }
    }

    /** Takes note of a way that clears the finding but breaks something new that must hold. */
    void blocked(List<String> musts) {
        musts.forEach(rule -> blockers.merge(rule, 1, Integer::sum));
    }

    /** Takes note of a way that the coach could open. */
    void offerOfCoach(Found guess) {
        if (worthIt(guess.change())) {
            ofCoach.add(guess);
            ofCoach.sort(Found.IN_ORDER);
            if (ofCoach.size() > MOST_OF_COACH) {
                ofCoach.remove(MOST_OF_COACH);
            }
        }
    }
}
