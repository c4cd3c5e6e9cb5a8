package weekwright.model.scenario;

/** How many in a week: the least that is owed, the number wanted, the most that may be placed. */
public record PerWeek(int least, int target, int most) {}
