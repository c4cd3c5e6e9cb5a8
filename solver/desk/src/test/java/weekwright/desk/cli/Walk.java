package weekwright.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import weekwright.desk.app.Planner;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Does lines of a README as a shell would, in a place of its own and with little searching. */
final class Walk {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|\\S+");
    private static final Pattern FILE =
            Pattern.compile("(week|mine)(-2|/.*)?|[a-z0-9-]+[.](json|ics|csv|tsv|html|pdf|txt)|without-[a-z]+");

    /** Searches a little, however long it is given. */
    private static final Planner HASTY = new Planner() {
        @Override
        public Judged judge(Scenario scenario, Plan plan) {
            return ENGINE.judge(scenario, plan);
        }

        @Override
        public Judged propose(Proposal asked, Progress progress) {
            return ENGINE.propose(
                    new Proposal(
                            asked.scenario(),
                            asked.from(),
                            Budget.moves(30),
                            asked.seed(),
                            asked.threads(),
                            asked.now()),
                    progress);
        }
    };

    private final Path place;
    final Trial trial = new Trial().planner(HASTY);

    Walk(Path place) {
        this.place = place;
    }

    Path in(String name) {
        return place.resolve(name);
    }

    /** Does one line; gives its exit code. */
    int does(String line) throws IOException, InterruptedException {
        List<String> words = words(line);
        if (words.get(0).equals("mkdir")) {
            Files.createDirectory(in(words.get(1)));
            return 0;
        }
        int given = words.indexOf("<");
        if (given > 0) {
            trial.in(Files.readAllBytes(in(words.get(given + 1))));
            words = words.subList(0, given);
        }
        String[] asked = words.stream().skip(1).map(this::inPlace).toArray(String[]::new);
        return asked[0].equals("desk") ? opened(asked) : trial.run(asked);
    }

    /** As a shell takes a line apart: at spaces, but not within quotation marks. */
    static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group())
                .toList();
    }

    private String inPlace(String word) {
        return FILE.matcher(word).matches() ? in(word).toString() : word;
    }

    /** A desk stays open until it is closed: it is, as soon as it has told its address. */
    private int opened(String... asked) throws InterruptedException {
        List<Integer> exit = new ArrayList<>();
        Thread desk = new Thread(() -> exit.add(trial.run(asked)));
        trial.forget();
        desk.start();
        while (desk.isAlive() && !trial.out().contains("http://")) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        desk.interrupt();
        desk.join();
        return trial.out().contains("http://") ? exit.get(0) : -1;
    }
}
