package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** Two sessions of an aim that follow one another in a week, and who leads them. */
public final class LeadsView extends View {
    private final AimInfo aim;
    private final Stimulus first;
    private final Stimulus second;
    private final int firstLead;
    private final int secondLead;

    LeadsView(Problem problem, AimInfo aim, Stimulus first, Stimulus second, int firstLead, int secondLead) {
        super(problem);
        this.aim = aim;
        this.first = first;
        this.second = second;
        this.firstLead = firstLead;
        this.secondLead = secondLead;
    }

    /** The aim. */
    public AimInfo aim() {
        return aim;
    }

    /** The earlier session. */
    public Stimulus first() {
        return first;
    }

    /** The later session. */
    public Stimulus second() {
        return second;
    }

    /** Place in the staff list of who leads the earlier one, or {@link Leads#NOBODY}. */
    int firstLead() {
        return firstLead;
    }

    /** The same of the later one. */
    int secondLead() {
        return secondLead;
    }

    @Override
    public GroupInfo group() {
        return aim.group;
    }
}
