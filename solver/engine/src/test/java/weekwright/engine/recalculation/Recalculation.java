package weekwright.engine.recalculation;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** How a plan stands, worked out slowly and plainly. */
final class Recalculation {
    private Recalculation() {}

    /**
     * What is broken, in whole tenths, and by which rules.
     *
     * @param rules what each rule adds, in alphabetical order; those that add nothing are left out
     */
    record Result(long must, long key, long main, long want, Map<String, RuleSum> rules) {}

    /**
     * What one rule adds.
     *
     * @param count breaches that cost something
     * @param cost in tenths
     */
    record RuleSum(int count, long cost) {
        RuleSum plus(RuleSum other) {
            return new RuleSum(count + other.count, cost + other.cost);
        }
    }

    static Result of(Scenario scenario, Catalogue catalogue, Rulebook rulebook, Plan plan) {
        return of(scenario, catalogue, rulebook, plan, null, null);
    }

    /**
     * The same beside an older plan.
     *
     * @param stayCloseTo the plan that people know already, or null
     * @param now the present, or null where it does not matter
     */
    static Result of(
            Scenario scenario,
            Catalogue catalogue,
            Rulebook rulebook,
            Plan plan,
            @Nullable Plan stayCloseTo,
            @Nullable Moment now) {
        Case the = Case.of(scenario, catalogue, rulebook, plan);
        Ledger ledger = new Ledger(the.settings());
        new PlaceAndTime(the, ledger).judge();
        Staffing staffing = new Staffing(the, ledger);
        staffing.judge();
        new Turnout(the, ledger).judge();
        new DailyRhythm(the, ledger).judge();
        new Recovery(the, ledger).judge();
        new AroundFixtures(the, ledger).judge();
        new WeekShape(the, ledger).judge();
        new Aims(the, ledger).judge();
        new Wishes(the, ledger).judge();
        new Visiting(the, ledger).judge();
        new FixtureWishes(the, ledger).judge();
        new Spreading(the, ledger, staffing.leads()).judge();
        new Constancy(the, ledger).judge();
        new SprintMetres(the, ledger).judge();
        new Learning(the, ledger).judge();
        new Rotation(the, ledger).judge();
        new Tapering(the, ledger).judge();
        new LoadFacts(the, ledger).judge();
        new MarkFacts(the, ledger).judge();
        new Packs(the, ledger).judge();
        if (stayCloseTo != null) {
            new StayingClose(the, ledger, plan, stayCloseTo, now).judge();
        }
        return ledger.result();
    }
}
