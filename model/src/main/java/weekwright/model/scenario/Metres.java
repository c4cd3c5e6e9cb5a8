package weekwright.model.scenario;

/** Sprint metres of a full session: those at 95 % of best speed or more, and all with run-ins. */
public record Metres(int fast, int all) {}
