package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.engine.problem.Problem;
import weekwright.engine.rules.Judge;

/** Says whether some wishes can be had together: by counting every way where there are few, else by a search. */
final class Fitting {
    /** How it was found that they cannot. */
    enum Answer {
        /** They can. */
        FOUND,
        /** They cannot: every way was counted. */
        COUNTED_OUT,
        /** No plan with all of them was found. */
        NOT_FOUND
    }

    private record Known(Set<String> wishes, Answer answer) {}

    private final Wishes wishes;
    private final Solving solving;
    private final List<Known> known = new ArrayList<>();

    Fitting(Wishes wishes, Solving solving) {
        this.wishes = wishes;
        this.solving = solving;
    }

    /** Takes for granted that some can be had together. */
    void canBeHad(Collection<Wish> some) {
        known.add(new Known(ids(some), Answer.FOUND));
    }

    boolean fits(Collection<Wish> some) {
        return of(some) == Answer.FOUND;
    }

    Answer of(Collection<Wish> some) {
        Set<String> ids = ids(some);
        for (Known one : known) {
            boolean part = one.answer() == Answer.FOUND && one.wishes().containsAll(ids);
            boolean more = one.answer() != Answer.FOUND && ids.containsAll(one.wishes());
            if (part || more) {
                return one.answer();
            }
        }
        Answer answer = some.isEmpty() ? Answer.FOUND : looked(some);
        if (!solving.stop()) {
            known.add(new Known(ids, answer));
        }
        return answer;
    }

    private static Set<String> ids(Collection<Wish> some) {
        return some.stream().map(Wish::id).collect(Collectors.toCollection(HashSet::new));
    }

    private Answer looked(Collection<Wish> some) {
        solving.trying(some.size() == 1 ? some.iterator().next().name() + " alone" : some.size() + " wishes together");
        Problem problem = wishes.of(some);
        return switch (EveryWay.of(problem)) {
            case FOUND -> Answer.FOUND;
            case NONE -> Answer.COUNTED_OUT;
            case UNKNOWN ->
                EveryWay.met(Judge.of(problem, solving.solve(problem, true)).total()) ? Answer.FOUND : Answer.NOT_FOUND;
        };
    }
}
