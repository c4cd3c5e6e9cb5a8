package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.rules.Judge;
import weekwright.model.answer.GiveUp;
import weekwright.model.rulebook.RuleLevel;

/** Trade-offs in a coach's words. */
final class TradeOffWords {
    private static final double ONE = 10.0;
    private static final int MOST_NAMED = 4;

    private final Wishes wishes;
    private final long moves;

    TradeOffWords(Wishes wishes, long moves) {
        this.wishes = wishes;
        this.moves = moves;
    }

    GiveUp giveUp(Offer offer, Cost change) {
        return new GiveUp(List.of(offer.step()), change.totals(), offer.step() + ": " + gain(change) + ".");
    }

    /** Why some wishes cannot be had together, or were not. */
    String clash(TradeOffSearch.Clashed found) {
        List<Wish> some = found.wishes();
        return Names.sentence(
                !found.counted() ? searched(some) : some.size() == 1 ? cannot(some.get(0)) : cannot(some));
    }

    private static String names(List<Wish> some) {
        return Names.list(some.stream().map(Wish::name).toList());
    }

    private String searched(List<Wish> some) {
        return "no plan with " + names(some) + (some.size() == 1 ? "" : " together") + " was found in "
                + String.format(Locale.ROOT, "%,d", moves) + " moves" + (some.size() == 1 ? "." : "; " + without(some));
    }

    /** What can be had all the same: it was found when the clash was. */
    private static String without(List<Wish> some) {
        return some.size() == 2
                ? "either can be had without the other."
                : "without any one of them the rest can be had.";
    }

    private String cannot(Wish one) {
        String broken = one.isPin() ? broken(List.of(one)) : "";
        if (!broken.isEmpty()) {
            return one.name() + " breaks by itself what must hold: " + broken;
        }
        String inTheWay = one.isPin() ? "" : inTheWay(one);
        return one.name() + " cannot be had"
                + (inTheWay.isEmpty()
                        ? ": wherever it is put, something breaks that must hold."
                        : ": " + inTheWay + ".");
    }

    private String cannot(List<Wish> some) {
        boolean held = some.stream().allMatch(Wish::isPin);
        String cannot = names(some) + " cannot " + (some.size() == 2 ? "both" : "all") + " be had";
        String broken = held ? broken(some) : "";
        return broken.isEmpty()
                ? cannot + ", wherever they are put; " + without(some)
                : cannot + ": " + broken + " " + Names.sentence(without(some));
    }

    /** What breaks of what must hold where some sessions stand as they are held; empty where nothing does. */
    private String broken(List<Wish> held) {
        Problem alone = wishes.of(held);
        Wording wording = new Wording(alone);
        return FactSink.all(alone, Judge.of(alone, Explanation.standing(alone))).stream()
                .filter(fact -> fact.level() == RuleLevel.MUST)
                .map(wording::text)
                .findFirst()
                .orElse("");
    }

    /** What stands in the way of a wish by itself; empty where that is more than one thing. */
    private String inTheWay(Wish wish) {
        Problem alone = wishes.of(List.of(wish));
        Judge judge = Judge.of(alone, Explanation.standing(alone));
        return alone.sessions.stream()
                .filter(session -> session.aim != null && judge.at(session) == null && owedOnce(wish))
                .map(new LeftOuts(new WhatIf(alone, judge))::inTheWay)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("");
    }

    private static boolean owedOnce(Wish wish) {
        return wish.aim() != null && wish.aim().least(wish.week()) - wish.aim().commitments[wish.week()] == 1;
    }

    /** What a change buys, and at what price. */
    static String gain(Cost change) {
        List<String> parts = new ArrayList<>();
        if (change.must != 0) {
            int things = (int) Math.abs(change.must / ONE);
            parts.add((change.must < 0 ? "mends " : "breaks ") + Names.count(things, "thing") + " that must hold");
        }
        done(parts, "key", change.key);
        done(parts, "main", change.main);
        if (change.want != 0) {
            Cost wants = new Cost();
            wants.want = change.want;
            parts.add(Prices.said(wants));
        }
        return String.join(", ", parts);
    }

    private static void done(List<String> parts, String level, long tenths) {
        if (tenths != 0) {
            parts.add(Names.number(Math.abs(tenths) / ONE) + (tenths < 0 ? " more" : " less") + " of the " + level
                    + " work is done");
        }
    }

    /** The answer in a sentence or two. */
    String text(Cost total, @Nullable Cost given, List<Wish> unmet, List<GiveUp> couldGo, boolean stopped) {
        String better = given == null || total.compareLevels(given) >= 0
                ? ""
                : "A search from this plan found a better one, and the rest is about that. ";
        if (EveryWay.met(total)) {
            return better + "Nothing need go: all that must hold holds, and all that is owed is met.";
        }
        String tail = stopped
                ? " It was stopped before everything was tried."
                : couldGo.isEmpty() ? " Nothing that was tried would buy any of it." : "";
        return better + "Not all that is asked for was met: " + shortfall(total, unmet) + "." + tail;
    }

    private static String shortfall(Cost total, List<Wish> unmet) {
        List<String> parts = new ArrayList<>();
        if (total.must > 0) {
            int things = (int) (total.must / ONE);
            parts.add(Names.count(things, "thing") + " that must hold " + (things == 1 ? "does" : "do") + " not");
        }
        if (!unmet.isEmpty()) {
            List<String> names =
                    unmet.stream().limit(MOST_NAMED).map(Wish::name).toList();
            int more = unmet.size() - names.size();
            parts.add("the best plan found falls short of "
                    + (more == 0 ? Names.list(names) : String.join(", ", names) + " and " + more + " more"));
        }
        return String.join(", and ", parts);
    }
}
