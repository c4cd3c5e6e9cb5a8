package weekwright.desk.app;

import java.util.function.Consumer;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.Traded;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Who judges and proposes plans: the engine, or in tests somebody who answers at once. */
public interface Planner {
    /** The engine. */
    Planner ENGINE = new Planner() {
        @Override
        public Judged judge(Scenario scenario, Plan plan) {
            return Engine.judge(scenario, plan);
        }

        @Override
        public Judged judgeWithoutRemedies(Scenario scenario, Plan plan) {
            return Engine.judgeWithoutRemedies(scenario, plan);
        }

        @Override
        public Judged propose(Proposal proposal, Progress progress) {
            return Engine.propose(proposal, progress);
        }

        @Override
        public Judged proposeWithoutRemedies(Proposal proposal, Progress progress) {
            return Engine.proposeWithoutRemedies(proposal, progress);
        }
    };

    /** Judges a plan as it stands. */
    Judged judge(Scenario scenario, Plan plan);

    /** Judges a plan where nobody will read what would help: the same but for the remedies. */
    default Judged judgeWithoutRemedies(Scenario scenario, Plan plan) {
        return judge(scenario, plan);
    }

    /** The same without looking for what would help: what a coach has changed or planned must be seen at once. */
    default Planner quick() {
        Planner whole = this;
        return new Planner() {
            @Override
            public Judged judge(Scenario scenario, Plan plan) {
                return whole.judgeWithoutRemedies(scenario, plan);
            }

            @Override
            public Judged propose(Proposal proposal, Progress progress) {
                return whole.proposeWithoutRemedies(proposal, progress);
            }
        };
    }

    /** Searches for the best plan; gives the best so far when progress says stop. */
    Judged propose(Proposal proposal, Progress progress);

    /** Searches where nobody will read what would help: the same but for the remedies. */
    default Judged proposeWithoutRemedies(Proposal proposal, Progress progress) {
        return propose(proposal, progress);
    }

    /** Says what cannot all be had and what could go; as much as was found when progress says stop. */
    default Traded tradeOffs(Proposal proposal, Progress progress, Consumer<String> trying) {
        return Asking.tradeOffs(proposal, progress, trying);
    }
}
