package weekwright.scenarios;

/**
 * A demo scenario.
 *
 * @param name name by which it is read, such as {@code one-match}
 * @param title title of the scenario
 * @param note what a good coach expects of its plan
 */
public record Demo(String name, String title, String note) {}
