package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.LiftLine;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Dose;

/** A lift line with its exposures, those of the history first, and the variant of each. */
public final class LiftView extends View {
    private final Lifts lifts;
    private final LiftLine line;
    private final List<Stimulus> exposures = new ArrayList<>();
    private final List<Integer> variants = new ArrayList<>();
    private List<Stimulus> shown = List.of();

    /**
     * A line as it stands.
     *
     * @param placed its sessions, in order of start
     * @param filled the variant of each
     */
    LiftView(Problem problem, Lifts lifts, LiftLine line, Stimulus[] placed, int[] filled) {
        super(problem);
        this.lifts = lifts;
        this.line = line;
        for (int i = 0; i < line.pastVariants.length; i++) {
            exposures.add(line.past.get(i));
            variants.add(line.pastVariants[i]);
        }
        for (int i = 0; i < placed.length; i++) {
            if (placed[i].dose != Dose.MICRO) {
                exposures.add(placed[i]);
                variants.add(filled[i]);
            }
        }
    }

    /** The line. */
    public LiftLine line() {
        return line;
    }

    /** What a breach found in it is about. */
    public List<Stimulus> shown() {
        return shown;
    }

    void show(List<Stimulus> things) {
        shown = things;
    }

    /** Exposures, in order of start. */
    List<Stimulus> exposures() {
        return exposures;
    }

    /** Variant of an exposure. */
    int variant(int exposure) {
        return variants.get(exposure);
    }

    /** A count that stands before the first exposure. */
    LiftCount count() {
        return new LiftCount(line, limits());
    }

    LiftCount.Limits limits() {
        return lifts.limits(line);
    }

    int lastDay() {
        return problem.calendar.days() - 1;
    }

    @Override
    public GroupInfo group() {
        return line.group;
    }
}
