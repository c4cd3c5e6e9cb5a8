package weekwright.desk.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Puts a session where a coach wants it, and holds it there. What that breaks is found and said; nothing else moves. */
public final class Moving {
    private Moving() {}

    /**
     * Where to.
     *
     * @param session id of a session, placed or left out
     * @param facility id of its place, or null
     */
    public record Move(
            String session, Moment start, @Nullable String facility, Dose dose) {}

    /**
     * The plan after a move, judged anew. Whom it had to lead it and which lift it was are chosen anew unless they are
     * pinned.
     *
     * @throws InputFault when that session cannot lie there at all
     */
    public static Judged to(Planner planner, Scenario scenario, Workplace.Seen seen, Move move) {
        boolean known = seen.questions().knows(move.session());
        boolean possible = known
                && seen.questions().options(move.session()).stream()
                        .anyMatch(option -> option.start().equals(move.start())
                                && Objects.equals(option.facility(), move.facility())
                                && option.dose() == move.dose());
        if (!possible) {
            throw new InputFault("that session cannot lie there: choose one of the starts that are shown");
        }
        return planner.judge(scenario, moved(seen.judged().plan(), move));
    }

    private static Plan moved(Plan plan, Move move) {
        List<Placement> placements = new ArrayList<>(plan.placements());
        Placement before = placements.stream()
                .filter(placement -> move.session().equals(placement.id()))
                .findFirst()
                .orElse(null);
        placements.remove(before);
        placements.add((before == null ? placed(move) : moved(before, move)).chosenInstead(before));
        List<LeftOut> leftOut = plan.leftOut().stream()
                .filter(left -> !left.id().equals(move.session()))
                .toList();
        return plan.withSessions(placements, leftOut);
    }

    /** Its id names its group and its family: {@code group/family+whom/week/n}. */
    private static Placement placed(Move move) {
        String[] parts = move.session().split("/", -1);
        return new Placement(
                move.session(),
                parts[0],
                parts[1].replaceFirst("\\+.*", ""),
                move.start(),
                null,
                move.facility(),
                null,
                move.dose(),
                null,
                null);
    }

    private static Placement moved(Placement before, Move move) {
        Pin pin = before.held();
        boolean otherDose = before.dose() != move.dose();
        return new Placement(
                before.id(),
                before.group(),
                before.family(),
                move.start(),
                otherDose ? null : before.minutes(),
                move.facility(),
                pin.lead() ? before.lead() : null,
                move.dose(),
                pin.variant() ? before.variant() : null,
                null);
    }
}
