package weekwright.engine.rules;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.LiftLine;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.LearningRules.MaximumRepeated;
import weekwright.engine.rules.LearningRules.VariantChurn;
import weekwright.engine.rules.LiftCount.Limits;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;

/**
 * Which lift a session is: the variant that is held, else that which costs least along its lift line, of equals the one
 * that comes first in its family's list, earliest session first. A plain function of where the sessions lie, so that a
 * what-if is exact; found by dynamic programming along the line.
 */
public final class Lifts {
    /** A session without variants, or one that is not placed. */
    public static final int NONE = LiftLine.UNKNOWN;

    private final Problem problem;
    private final Limits[] limits;
    private final Prices[] prices;

    /** What each count costs, in tenths; what is not a want weighs more than all wants. */
    private record Prices(long repeated, long churned, long untested) {
        private static final long OWED = 1_000_000;

        static Prices of(RuleSettings settings) {
            MaximumRepeated repeated = new MaximumRepeated(settings);
            VariantChurn churn = new VariantChurn(settings);
            return new Prices(
                    price(repeated, repeated.pointsPerBreach()),
                    price(churn, churn.pointsPerBreach()),
                    price(churn, churn.testedPoints()));
        }

        private static long price(JudgedRule rule, int points) {
            if (rule.level() == RuleLevel.OFF) {
                return 0;
            }
            boolean wish = rule.level() == RuleLevel.WANT || rule.level() == RuleLevel.TOLD;
            return wish ? Price.whole(rule, points) : OWED;
        }

        long of(LiftCount count) {
            return (count.weeksRunning() > 0 ? repeated : 0)
                    + (count.leftAfter() > 0 ? churned : 0)
                    + (count.daysUntested() > 0 ? untested : 0);
        }
    }

    Lifts(Problem problem) {
        this.problem = problem;
        limits = new Limits[problem.liftLines.size()];
        prices = new Prices[limits.length];
        for (LiftLine line : problem.liftLines) {
            limits[line.index] = limitsOf(line);
            prices[line.index] = Prices.of(line.group.settings);
        }
    }

    private static Limits limitsOf(LiftLine line) {
        RuleSettings settings = line.group.settings;
        boolean advanced = line.group.group.level() == Level.ADVANCED;
        int days = (int) Math.round(7 * settings.number("variant-churn", "testedWeeks"));
        return new Limits(
                (int) settings.number("maximum-repeated", advanced ? "advancedWeeks" : "trainedWeeks"),
                (int) settings.number("variant-churn", advanced ? "advancedExposures" : "exposures"),
                line.wantsTested() ? days : Limits.NEVER);
    }

    /** The variant of every session, by its place in the family's list, or {@link #NONE}. */
    public static int[] of(Problem problem, @Nullable Stimulus[] at) {
        Lifts lifts = new Lifts(problem);
        int[] all = new int[at.length];
        java.util.Arrays.fill(all, NONE);
        for (LiftLine line : problem.liftLines) {
            Stimulus[] placed = placed(line, at);
            int[] filled = lifts.fill(line, placed);
            for (int i = 0; i < placed.length; i++) {
                all[placed[i].index] = filled[i];
            }
        }
        return all;
    }

    /** The sessions of a line that are placed, in order of start. */
    static Stimulus[] placed(LiftLine line, @Nullable Stimulus[] at) {
        return line.sessions.stream()
                .map(session -> at[session.index])
                .filter(java.util.Objects::nonNull)
                .sorted(Stimulus::inOrder)
                .toArray(Stimulus[]::new);
    }

    Limits limits(LiftLine line) {
        return limits[line.index];
    }

    /** The variants of a line's sessions, which are given in order of start. */
    int[] fill(LiftLine line, Stimulus[] placed) {
        return line.group.novice() ? simplest(placed) : new Filling(line, placed).filled();
    }

    /** Novices keep to one lift. */
    private int[] simplest(Stimulus[] placed) {
        int[] filled = new int[placed.length];
        for (int i = 0; i < placed.length; i++) {
            filled[i] = Math.max(0, held(placed[i]));
        }
        return filled;
    }

    private int held(Stimulus placed) {
        Session session = problem.sessions.get(placed.index);
        return placed.variant >= 0 ? placed.variant : session.heldVariant;
    }

    /**
     * One line as it is filled. The least cost is looked for from nothing upwards: what costs more than the least thought
     * possible is not followed until it must be.
     */
    private final class Filling {
        /**
         * What the rest of a line costs.
         *
         * @param cost the least cost, or where no variant is given something that it is not below
         */
        private record Choice(long cost, int variant) {
            boolean found() {
                return variant >= 0;
            }
        }

        private final LiftLine line;
        private final Stimulus[] placed;
        private final boolean[] heldSomewhere;
        private final int lastDay = problem.calendar.days() - 1;
        private final Map<LiftCount.Key, Choice> known = new HashMap<>();

        Filling(LiftLine line, Stimulus[] placed) {
            this.line = line;
            this.placed = placed;
            heldSomewhere = new boolean[line.variants()];
            for (Stimulus session : placed) {
                if (held(session) >= 0) {
                    heldSomewhere[held(session)] = true;
                }
            }
        }

        /** Micro doses, which count nowhere, keep to the lift before them. */
        int[] filled() {
            int[] filled = new int[placed.length];
            LiftCount count = new LiftCount(line, limits[line.index]);
            for (int i = 0; i < line.pastVariants.length; i++) {
                count.step(line.past.get(i), line.pastVariants[i]);
            }
            for (int i = 0; i < placed.length; i++) {
                if (placed[i].dose == Dose.MICRO) {
                    filled[i] = held(placed[i]) >= 0 ? held(placed[i]) : Math.max(0, count.variant());
                } else {
                    filled[i] = least(i, count);
                    count.step(placed[i], filled[i]);
                }
            }
            return filled;
        }

        private int least(int i, LiftCount count) {
            Choice choice = within(0, i, count);
            while (!choice.found()) {
                choice = within(choice.cost(), i, count);
            }
            return choice.variant();
        }

        /** The first of what costs least from a session on, if that is not above a limit. */
        private Choice within(long limit, int i, LiftCount count) {
            LiftCount.Key key = count.key(i);
            Choice choice = known.get(key);
            if (choice == null || (!choice.found() && choice.cost() <= limit)) {
                choice = tried(limit, i, count);
                known.put(key, choice);
            }
            return choice;
        }

        private Choice tried(long limit, int i, LiftCount count) {
            int held = held(placed[i]);
            Choice best = new Choice(Long.MAX_VALUE, -1);
            long notBelow = Long.MAX_VALUE;
            for (int v = 0; v < line.variants() && best.cost() > 0; v++) {
                if (held >= 0 ? v == held : !likeEarlier(count, v)) {
                    LiftCount then = count.copy().step(placed[i], v);
                    long step = prices[line.index].of(then);
                    long most = Math.min(limit, best.cost() - 1);
                    long cost = step > most ? step : step + after(most - step, i + 1, then);
                    best = cost <= most ? new Choice(cost, v) : best;
                    notBelow = Math.min(notBelow, cost);
                }
            }
            return best.found() ? best : new Choice(notBelow, -1);
        }

        /** The least cost from a session on where that is not above a limit, else something above the limit. */
        private long after(long limit, int i, LiftCount count) {
            if (i == placed.length) {
                return prices[line.index].of(count.end(lastDay));
            }
            return placed[i].dose == Dose.MICRO
                    ? after(limit, i + 1, count)
                    : within(limit, i, count).cost();
        }

        /** Of variants that stand alike, and that nobody holds, the first stands for all. */
        private boolean likeEarlier(LiftCount count, int v) {
            for (int w = 0; w < v; w++) {
                if (!heldSomewhere[v] && !heldSomewhere[w] && count.alike(v, w)) {
                    return true;
                }
            }
            return false;
        }
    }
}
