package weekwright.model.scenario;

/** Minutes that an athlete is expected to play, or has played, in a fixture. */
public record Appearance(String athlete, int minutes) {}
