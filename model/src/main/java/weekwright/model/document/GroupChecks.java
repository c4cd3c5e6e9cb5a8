package weekwright.model.document;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Groups and their aims. */
final class GroupChecks {
    private final Node scenario;
    private final Known known;
    private final TimeChecks times;
    private final RuleChecks rules;
    private final Faults faults;
    /** Athletes listed, by group. */
    private final Map<String, Long> athletesIn;

    GroupChecks(Node scenario, Known known, TimeChecks times, RuleChecks rules, Faults faults) {
        this.scenario = scenario;
        this.known = known;
        this.times = times;
        this.rules = rules;
        this.faults = faults;
        this.athletesIn = scenario.list("athletes").stream()
                .flatMap(athlete ->
                        athlete.list("groups").stream().map(Node::written).distinct())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    }

    void check() {
        scenario.list("groups").forEach(this::group);
    }

    private void group(Node group) {
        times.windows(group.list("windows"));
        times.spans(group.list("away"));
        rules.check(group);
        headcount(group);
        perWeek(group.field("highDays"));
        Map<String, Node> aims = new HashMap<>();
        group.list("aims").forEach(aim -> aim(aim, aims));
    }

    private void headcount(Node group) {
        long listed = group.field("id")
                .text()
                .map(id -> athletesIn.getOrDefault(id, 0L))
                .orElse(0L);
        Node headcount = group.field("headcount");
        OptionalInt heads = headcount.whole();
        if (heads.isPresent() && heads.getAsInt() < listed) {
            faults.add(
                    headcount,
                    heads.getAsInt() + " is fewer than the " + listed + " athletes listed in the group",
                    "Give " + listed + " or more, or leave the headcount out.");
        }
    }

    private void aim(Node aim, Map<String, Node> seen) {
        Node family = aim.field("family");
        known.session(family, faults);
        perWeek(aim.field("perWeek"));
        prefer(aim.field("prefer"));
        metres(aim.field("metres"));
        family.id().ifPresent(id -> once(id, aim, seen));
    }

    private void once(String family, Node aim, Map<String, Node> seen) {
        String whom = aim.field("for").text().orElse("all");
        Node first = seen.putIfAbsent(family + "+" + whom, aim);
        if (first != null) {
            faults.add(
                    aim,
                    "a second aim for " + Shown.quoted(family) + (whom.equals("all") ? "" : ", " + whom)
                            + "; the first is at " + faults.place(first),
                    "Keep one aim for each family and \"for\".");
        }
    }

    private void perWeek(Node number) {
        OptionalInt least = number.field("least").whole();
        OptionalInt target = number.field("target").whole();
        OptionalInt most = number.field("most").whole();
        if (least.isPresent() && target.isPresent() && target.getAsInt() < least.getAsInt()) {
            faults.add(
                    number.field("target"),
                    "target " + target.getAsInt() + " is less than least " + least.getAsInt(),
                    "Give least, target, most in rising order, such as 1, 1, 2.");
        }
        if (target.isPresent() && most.isPresent() && most.getAsInt() < target.getAsInt()) {
            faults.add(
                    number.field("most"),
                    "most " + most.getAsInt() + " is less than target " + target.getAsInt(),
                    "Give least, target, most in rising order, such as 1, 1, 2.");
        }
    }

    private void prefer(Node prefer) {
        prefer.list("facilities").forEach(id -> known.facility(id, faults));
        times.wish(prefer.field("from"), prefer.field("to"));
    }

    private void metres(Node metres) {
        OptionalInt fast = metres.field("fast").whole();
        OptionalInt all = metres.field("all").whole();
        if (fast.isPresent() && all.isPresent() && all.getAsInt() < fast.getAsInt()) {
            faults.add(
                    metres.field("all"),
                    "all " + all.getAsInt() + " m are less than the fast " + fast.getAsInt() + " m among them",
                    "Count the run-ins too: give " + fast.getAsInt() + " or more.");
        }
    }
}
