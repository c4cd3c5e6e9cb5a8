package weekwright.benchmarks;

import java.util.List;
import java.util.Locale;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/**
 * A made-up problem with the budgets at which it is looked at.
 *
 * @param name name on the command line and in the list of best known plans
 * @param label what it is
 * @param squads squads that share facilities and staff
 * @param sessions sessions wanted a week, about
 * @param weeks length of the plan
 * @param seconds budgets by the clock
 * @param moves budgets by moves
 */
record Instance(
        String name, String label, int squads, int sessions, int weeks, List<Double> seconds, List<Long> moves) {
    /** Seed of the squads: the smallest with 7 cohorts in the one-squad week. */
    private static final long SEED = 10;

    static final List<Instance> ALL = List.of(
            new Instance(
                    "week",
                    "one squad, one week",
                    1,
                    28,
                    1,
                    List.of(0.1, 0.3, 1.0, 5.0, 30.0),
                    List.of(10_000L, 100_000L, 1_000_000L, 10_000_000L)),
            new Instance(
                    "four-weeks",
                    "one squad, four weeks",
                    1,
                    28,
                    4,
                    List.of(1.0, 5.0, 10.0),
                    List.of(10_000L, 100_000L, 1_000_000L)),
            new Instance(
                    "eight-squads",
                    "eight squads, one week",
                    8,
                    224,
                    1,
                    List.of(5.0, 10.0, 20.0),
                    List.of(10_000L, 100_000L, 1_000_000L)),
            new Instance(
                    "eight-squads-four-weeks",
                    "eight squads, four weeks",
                    8,
                    224,
                    4,
                    List.of(30.0),
                    List.of(100_000L, 1_000_000L)),
            new Instance(
                    "twelve-weeks", "one squad, twelve weeks", 1, 28, 12, List.of(5.0), List.of(100_000L, 1_000_000L)));

    /** The scenario, under the yardstick rules or under all. */
    Scenario scenario(boolean yardstick) {
        Scenario scenario = SquadGenerator.squad(SEED, squads, sessions, weeks);
        return yardstick ? Yardstick.of(scenario) : scenario;
    }

    /** Budgets by moves; with all rules ten million would take a quarter of an hour. */
    List<Long> moves(boolean yardstick) {
        return moves.stream().filter(each -> yardstick || each < 10_000_000).toList();
    }

    /** Name in the list of best known plans. */
    String key(boolean yardstick) {
        return String.format(Locale.ROOT, "%s.%s", name, yardstick ? "yardstick" : "all");
    }

    static Instance of(String name) {
        return ALL.stream()
                .filter(one -> one.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such table: [" + name + "]; there are "
                        + ALL.stream().map(Instance::name).toList()));
    }
}
