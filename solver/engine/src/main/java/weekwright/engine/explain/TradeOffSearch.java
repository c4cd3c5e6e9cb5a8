package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.answer.Clash;
import weekwright.model.answer.GiveUp;
import weekwright.model.answer.TradeOffs;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * What cannot all be had, and what could go: a plan is searched for, wishes that it does not meet are held against the others
 * until a smallest set is left that clashes, and each thing that could be given up is really tried by searching again.
 */
public final class TradeOffSearch {
    private static final int MOST_CLASHES = 4;

    private final Solving solving;
    private final Problem problem;
    private final Plan plan;
    private final Cost total;
    private final @Nullable Cost given;
    private final Wishes wishes;
    private final Fitting fitting;
    private final List<Wish> unmet;

    /** Clashing wishes, and whether every way was counted. */
    record Clashed(List<Wish> wishes, boolean counted) {}

    /**
     * Looks for a plan.
     *
     * @param from a plan to start from, with its pins, or null
     */
    public TradeOffSearch(Scenario scenario, @Nullable Plan from, Solving solving) {
        this.solving = solving;
        Problem first = ProblemBuilder.of(scenario, from, from == null ? PlanUse.NEW : PlanUse.START);
        given = from == null ? null : total(first);
        solving.trying("all that is asked for");
        plan = new Explanation(first, solving.solve(first, false)).written();
        problem = ProblemBuilder.of(scenario, plan, PlanUse.START);
        Judge judge = Judge.of(problem, Explanation.standing(problem));
        total = judge.total().copy();
        wishes = new Wishes(problem, plan);
        fitting = new Fitting(wishes, solving);
        unmet = unmet(FactSink.all(problem, judge));
    }

    private static Cost total(Problem problem) {
        return Judge.of(problem, Explanation.standing(problem)).total().copy();
    }

    private List<Wish> unmet(List<Fact> facts) {
        Set<Wish> found = new LinkedHashSet<>();
        for (Fact fact : facts) {
            String week = String.valueOf(problem.calendar.date(7 * Math.floorDiv(fact.firstDay(), 7)));
            String group = fact.group().group.id();
            String name = switch (fact.rule().id()) {
                case "aim-least" ->
                    group + "/" + Objects.requireNonNull(fact.aim()).aim.key() + "/" + week;
                case "high-days-least" -> group + "/high-days/" + week;
                default -> "";
            };
            Wish wish = wishes.named(name);
            if (wish != null) {
                found.add(wish);
            }
        }
        return found.stream().sorted(Comparator.comparing(Wish::level)).toList();
    }

    /** The answer, or as much of it as was found when somebody said to stop. */
    public Traded answer() {
        TradeOffWords words = new TradeOffWords(wishes, solving.moves());
        List<Clashed> clashes = EveryWay.met(total) ? List.of() : clashes();
        List<Tried> tried = clashes.isEmpty() && unmet.isEmpty() ? List.of() : tried(clashes);
        List<GiveUp> couldGo = tried.stream()
                .map(one -> words.giveUp(one.offer(), one.change()))
                .toList();
        TradeOffs answer = new TradeOffs(
                total.totals(),
                clashes.stream().map(found -> clash(words, found)).toList(),
                couldGo,
                solving.moves(),
                words.text(total, given, unmet, couldGo, solving.stop()));
        return new Traded(answer, tried.stream().map(Tried::documents).toList());
    }

    private static Clash clash(TradeOffWords words, Clashed found) {
        return new Clash(found.wishes().stream().map(Wish::id).toList(), found.counted(), words.clash(found));
    }

    private List<Clashed> clashes() {
        List<Clashed> found = new ArrayList<>();
        List<Wish> pins = pinsThatFit(found);
        List<Wish> met = Stream.concat(
                        pins.stream(), wishes.all().stream().filter(wish -> !wish.isPin() && !unmet.contains(wish)))
                .toList();
        if (total.must == 0) {
            fitting.canBeHad(met);
        }
        for (Wish wish : unmet) {
            List<Wish> others = met.stream()
                    .filter(other -> Math.abs(other.week() - wish.week()) <= 1)
                    .sorted(Comparator.comparingInt(other -> distance(other, wish)))
                    .toList();
            add(new Clashing(fitting).of(List.of(wish), others), found);
        }
        return found;
    }

    /** What is held and can be had together: of what is held and clashes one after the other is left aside. */
    private List<Wish> pinsThatFit(List<Clashed> found) {
        List<Wish> pins =
                new ArrayList<>(wishes.all().stream().filter(Wish::isPin).toList());
        boolean clash = total.must > 0 && !pins.isEmpty();
        while (clash && found.size() < MOST_CLASHES) {
            List<Wish> some = new Clashing(fitting).of(List.of(), pins);
            clash = some != null && add(some, found);
            if (clash && some != null) {
                pins.remove(some.get(some.size() - 1));
            }
        }
        return pins;
    }

    /** Whether it is a clash not found before. */
    private boolean add(@Nullable List<Wish> some, List<Clashed> found) {
        if (some == null
                || solving.stop()
                || found.size() == MOST_CLASHES
                || found.stream().anyMatch(one -> one.wishes().containsAll(some))) {
            return false;
        }
        List<Wish> inOrder = some.stream()
                .sorted(Comparator.comparing(Wish::level).thenComparing(Wish::id))
                .toList();
        found.add(new Clashed(inOrder, fitting.of(some) == Fitting.Answer.COUNTED_OUT));
        return true;
    }

    private static int distance(Wish other, Wish wish) {
        int people = other.group() == wish.group() ? 0 : 1;
        return 4 * Math.abs(other.week() - wish.week()) + 2 * people + (other.isPin() ? 0 : 1);
    }

    /** What buys something, what buys most first. */
    private List<Tried> tried(List<Clashed> clashes) {
        List<Tried> tried = new ArrayList<>();
        for (Offer offer : offers(clashes)) {
            solving.trying(offer.step().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                    + offer.step().substring(1));
            Tried one = tried(offer);
            if (solving.stop()) {
                break;
            }
            if (buys(one.change())) {
                tried.add(one);
            }
        }
        return tried.stream()
                .sorted(Comparator.comparing(Tried::change, Cost::compareLevels))
                .toList();
    }

    private record Tried(Offer offer, Cost change, Plan found) {
        Remedied documents() {
            return new Remedied(offer.scenario(), found);
        }
    }

    private Tried tried(Offer offer) {
        Problem without = ProblemBuilder.of(offer.scenario(), offer.plan(), PlanUse.START, offer.asked());
        @Nullable Stimulus[] found = solving.solve(without, false);
        Cost change = Judge.of(without, found).total().copy();
        change.subtract(total);
        return new Tried(offer, change, new Explanation(without, found).written());
    }

    /** Whether more holds that must, or more is met that is owed. */
    private static boolean buys(Cost change) {
        return change.must < 0 || (change.must == 0 && (change.key < 0 || (change.key == 0 && change.main < 0)));
    }

    private List<Offer> offers(List<Clashed> clashes) {
        Offers offers = new Offers(problem, plan, wishes);
        Set<Wish> some = new LinkedHashSet<>();
        clashes.forEach(clash -> some.addAll(clash.wishes()));
        some.addAll(unmet);
        // to do without what is not met is what the plan does already
        some.stream().filter(wish -> !unmet.contains(wish)).forEach(offers::without);
        some.forEach(offers::smaller);
        unmet.forEach(wish -> survey(wish, offers));
        some.forEach(offers::there);
        clashes.stream()
                .filter(clash -> clash.wishes().size() > 1)
                .flatMap(clash -> clash.wishes().stream())
                .forEach(offers::anHourMore);
        return offers.all();
    }

    /** What stands in the way of a wish by itself, and beside all that is met. */
    private void survey(Wish wish, Offers offers) {
        for (Problem each : List.of(wishes.of(List.of(wish)), problem)) {
            Obstacles survey = new Obstacles(each);
            each.sessions.stream()
                    .filter(session -> isFor(session, wish) && session.before == null)
                    .limit(1)
                    .forEach(survey::look);
            offers.surveyed(survey);
        }
    }

    private static boolean isFor(Session session, Wish wish) {
        return wish.aim() != null
                && session.aim != null
                && session.week == wish.week()
                && session.group.index == wish.group().index
                && session.aim.aim.key().equals(wish.aim().aim.key());
    }
}
