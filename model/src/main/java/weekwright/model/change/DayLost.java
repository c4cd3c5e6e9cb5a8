package weekwright.model.change;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/**
 * Nobody trains on a day: groups are away all day, and what they had fixed on it falls away. Fixtures stay, and so does what
 * single athletes have fixed for themselves.
 *
 * @param day local date
 * @param group id of the only group that loses it, or null where all do
 */
public record DayLost(LocalDate day, @Nullable String group) implements Event {
    @Override
    public Scenario after(Scenario scenario) {
        Draft draft = new Draft(scenario);
        Draft.change(draft.groups, one -> loses(one.id()), one -> away(one, draft), "group", String.valueOf(group));
        draft.commitments.removeAll(fallingAway(scenario));
        draft.commitments.replaceAll(one -> lies(one) ? withoutLosers(one) : one);
        return draft.scenario();
    }

    /** Commitments of these groups alone on that day, which fall away. */
    public List<Commitment> fallingAway(Scenario scenario) {
        return scenario.commitments().stream()
                .filter(one -> lies(one) && one.groups().stream().allMatch(this::loses))
                .toList();
    }

    private boolean loses(String id) {
        return group == null || group.equals(id);
    }

    /** Whether it is a commitment of groups on that day. */
    private boolean lies(Commitment one) {
        return !one.groups().isEmpty() && one.start().date().equals(day);
    }

    private Commitment withoutLosers(Commitment one) {
        List<String> rest = one.groups().stream().filter(id -> !loses(id)).toList();
        return Draft.with(one, rest, one.athletes());
    }

    private Group away(Group one, Draft draft) {
        return one.withAway(Draft.with(one.away(), draft.wholeDay(day)));
    }
}
