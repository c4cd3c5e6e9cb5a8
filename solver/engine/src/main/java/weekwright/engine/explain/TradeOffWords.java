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
    private static final String COUNTED = "every way was counted";
    private static final String WITHOUT = "; without any one of them a plan was found for the rest.";

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
        String all = Names.list(some.stream().map(Wish::name).toList());
        boolean one = some.size() == 1;
        if (!found.counted()) {
            return "No plan with " + all + (one ? "" : " together") + " was found in "
                    + String.format(Locale.ROOT, "%,d", moves) + " moves" + (one ? "." : WITHOUT);
        }
        String sentence = one
                ? all
                        + (some.get(0).isPin() ? " breaks by itself what must hold: " : " cannot be had: ")
                        + reasons(some.get(0))
                : all + " cannot " + (some.size() == 2 ? "both" : "all") + " be had: " + COUNTED + WITHOUT;
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** What stands in the way of a wish by itself. */
    private String reasons(Wish wish) {
        Problem alone = wishes.of(List.of(wish));
        Judge judge = Judge.of(alone, Explanation.standing(alone));
        if (wish.isPin()) {
            Wording wording = new Wording(alone);
            return FactSink.all(alone, judge).stream()
                    .filter(fact -> fact.level() == RuleLevel.MUST)
                    .map(wording::text)
                    .findFirst()
                    .orElse(COUNTED + ".");
        }
        return alone.sessions.stream()
                        .filter(session -> session.aim != null && judge.at(session) == null && owedOnce(wish))
                        .map(new LeftOuts(new WhatIf(alone, judge))::inTheWay)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(COUNTED)
                + ".";
    }

    private static boolean owedOnce(Wish wish) {
        return wish.aim() != null && wish.aim().least(wish.week()) - wish.aim().commitments[wish.week()] == 1;
    }

    /** What a change buys, and at what price. */
    static String gain(Cost change) {
        List<String> parts = new ArrayList<>();
        if (change.must != 0) {
            int things = (int) Math.abs(change.must / ONE);
            parts.add(Names.count(things, "thing") + (change.must < 0 ? " more" : " fewer") + " that must hold "
                    + (things == 1 ? "does" : "do"));
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
