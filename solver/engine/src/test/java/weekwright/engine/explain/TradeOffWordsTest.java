package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.explain.TradeOffSearch.Clashed;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.testing.Squad;
import weekwright.engine.testing.TightWeeks;
import weekwright.model.plan.Plan;

/** The sentences of trade-offs, word for word. */
class TradeOffWordsTest {
    private final Problem problem = ProblemBuilder.of(TightWeeks.week(1), null, PlanUse.NEW);
    private final Wishes wishes = new Wishes(
            problem,
            new Plan(1, problem.scenario.id(), null, null, null, List.of(), List.of(), List.of(), null, List.of()));
    private final TradeOffWords words = new TradeOffWords(wishes, 20_000);

    private Wish wish(String name) {
        Wish one = wishes.all().get(0);
        return new Wish(name, one.level(), one.group(), one.week(), null, null, name);
    }

    private static Cost cost(long must, long key, long main, long want) {
        Cost cost = new Cost();
        cost.must = must;
        cost.key = key;
        cost.main = main;
        cost.want = want;
        return cost;
    }

    @Test
    void what_was_searched_is_not_said_to_be_impossible() {
        assertThat(words.clash(new Clashed(List.of(wish("hills")), false)))
                .isEqualTo("No plan with hills was found in 20,000 moves.");
        assertThat(words.clash(new Clashed(List.of(wish("hills"), wish("squats")), false)))
                .isEqualTo("No plan with hills and squats together was found in 20,000 moves; either can be had without"
                        + " the other.");
        assertThat(words.clash(new Clashed(List.of(wish("hills"), wish("squats"), wish("jumps")), false)))
                .isEqualTo("No plan with hills, squats and jumps together was found in 20,000 moves; without any one of"
                        + " them the rest can be had.");
    }

    @Test
    void what_was_counted_cannot_be_had() {
        assertThat(words.clash(new Clashed(List.of(wish("hills")), true)))
                .isEqualTo("Hills cannot be had: wherever it is put, something breaks that must hold.");
        assertThat(words.clash(new Clashed(List.of(wish("hills"), wish("squats")), true)))
                .isEqualTo("Hills and squats cannot both be had, wherever they are put; either can be had without the"
                        + " other.");
        assertThat(words.clash(new Clashed(List.of(wish("hills"), wish("squats"), wish("jumps")), true)))
                .isEqualTo("Hills, squats and jumps cannot all be had, wherever they are put; without any one of them"
                        + " the rest can be had.");
    }

    /** What is held stands where it is: then it is said what it breaks there. */
    @Test
    void pins_that_contradict_each_other_say_why() {
        Squad held = squad().placed("technique", "2027-03-02T10:00")
                .pinned()
                .placed("trunk-and-balance", "2027-03-02T10:15")
                .pinned();
        Plan named = held.judged().judged().plan();
        Wishes pins = new Wishes(ProblemBuilder.of(held.scenario(), named, PlanUse.START), named);
        assertThat(new TradeOffWords(pins, 20_000).clash(new Clashed(pins.all(), true)))
                .isEqualTo("The pin of Technique drill / new skill (Tue 2 Mar 10:00) and the pin of Trunk, balance,"
                        + " stability (Tue 2 Mar 10:15) cannot both be had: Technique drill / new skill (Tue 2 Mar 10:00)"
                        + " and Trunk, balance, stability (Tue 2 Mar 10:15) overlap by 15 min. Either can be had without"
                        + " the other.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-10 | 0 | 0 | 0 | mends 1 thing that must hold",
                "-20 | 0 | 0 | 35 | mends 2 things that must hold, costs 3.5 points more",
                "0 | -10 | 0 | -73 | 1 more of the key work is done, saves 7.3 points",
                "0 | -10 | 10 | 10 | 1 more of the key work is done, 1 less of the main work is done, costs 1 point more",
                "0 | 0 | -20 | 0 | 2 more of the main work is done"
            })
    void what_giving_up_buys(long must, long key, long main, long want, String text) {
        assertThat(TradeOffWords.gain(cost(must, key, main, want))).isEqualTo(text);
    }

    @Test
    void the_answer_says_what_is_not_met() {
        assertThat(words.text(cost(0, 0, 0, 50), null, List.of(), List.of(), false))
                .isEqualTo("Nothing need go: all that must hold holds, and all that is owed is met.");
        assertThat(words.text(cost(10, 10, 0, 0), null, List.of(wish("hills")), List.of(), false))
                .isEqualTo("Not all that is asked for was met: 1 thing that must hold does not, and the best plan found"
                        + " falls short of hills. Nothing that was tried would buy any of it.");
        assertThat(words.text(cost(20, 0, 0, 0), cost(30, 0, 0, 0), List.of(), List.of(), true))
                .isEqualTo(
                        "A search from this plan found a better one, and the rest is about that. Not all that is asked"
                                + " for was met: 2 things that must hold do not. It was stopped before everything was tried.");
        List<Wish> many = List.of(wish("a"), wish("b"), wish("c"), wish("d"), wish("e"), wish("f"));
        assertThat(words.text(cost(0, 60, 0, 0), null, many, List.of(), false))
                .isEqualTo(
                        "Not all that is asked for was met: the best plan found falls short of a, b, c, d and 2 more."
                                + " Nothing that was tried would buy any of it.");
    }
}
