package weekwright.engine.problem;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;

/**
 * The practices that lend minutes to a session: a micro dose whose main part lies inside them is held there, after the
 * practice's own warm-up or at its end, as its main part alone.
 */
final class Lenders {
    private final ProblemBuilder problem;
    private final List<Stimulus> practices;

    Lenders(ProblemBuilder problem, SessionDraft draft) {
        this.problem = problem;
        String group = draft.group.group.id();
        practices = problem.fixed.stream()
                .filter(fixed -> fixed.lends != null)
                .filter(fixed ->
                        problem.scenario.commitments().get(fixed.index).groups().contains(group))
                .toList();
    }

    /** The practice in whose lent minutes a session lies that starts then, or null. */
    @Nullable
    Stimulus of(Dose dose, int start, int mainMinutes) {
        if (dose != Dose.MICRO || mainMinutes <= 0) {
            return null;
        }
        for (Stimulus practice : practices) {
            if (java.util.Objects.requireNonNull(practice.lends).holds(start, start + mainMinutes)) {
                return practice;
            }
        }
        return null;
    }

    /** The first starts in the lent minutes of a day, with the way from the practice to a facility. */
    IntStream firstStarts(int day, int facility) {
        return practices.stream()
                .filter(practice -> practice.day == day)
                .mapToInt(practice ->
                        java.util.Objects.requireNonNull(practice.lends).from() + way(practice, facility));
    }

    /** Whether the way there, and back where practice goes on, lies in the lent minutes too. */
    boolean waysFit(Stimulus practice, int start, int mainMinutes, int facility) {
        int left = java.util.Objects.requireNonNull(practice.lends).forTheWay(start, start + mainMinutes);
        return left >= way(practice, facility);
    }

    private int way(Stimulus practice, int facility) {
        return practice.facility < 0 || facility < 0 ? 0 : problem.transferMinutes()[practice.facility][facility];
    }
}
