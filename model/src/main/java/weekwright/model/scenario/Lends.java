package weekwright.model.scenario;

/** Minutes of a practice, at its start or its end, in which micro sessions of the same groups may lie. */
public record Lends(int minutes, LendsAt at) {}
