package weekwright.engine.explain;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import weekwright.engine.problem.Cost;

/**
 * What one change of a plan does, really judged.
 *
 * @param change change of the totals; negative is better
 * @param broken what is broken with it and was not before
 * @param cleared what was broken before and is not with it
 * @param altered what is broken before and after, at another cost
 */
record Effect(Cost change, List<Broken> broken, List<Broken> cleared, List<Altered> altered) {
    /** A breach that costs more or less than before. */
    record Altered(Broken before, Broken after) {
        int more() {
            return after.tenths() - before.tenths();
        }
    }

    /** Whether it breaks nothing that must hold, but for what was broken already. */
    boolean possible() {
        return broken.stream().noneMatch(Broken::must);
    }

    /** Ids of the must rules newly broken, each once. */
    List<String> mustsBroken() {
        return broken.isEmpty()
                ? List.of()
                : ids(broken.stream().filter(Broken::must).toList());
    }

    /** Ids of the rules newly broken, each once. */
    List<String> breaks() {
        return ids(broken);
    }

    /** Ids of the rules that are broken at fewer places, each once. */
    List<String> clears() {
        return ids(cleared);
    }

    private static List<String> ids(List<Broken> some) {
        return some.stream().map(one -> one.key().rule()).distinct().sorted().toList();
    }

    /** What makes it dearer, gravest and dearest first. */
    List<Broken> reasons() {
        return Stream.concat(
                        broken.stream(),
                        altered.stream().filter(one -> one.more() > 0).map(Altered::after))
                .sorted(Comparator.comparing((Broken one) -> one.rule().level()).thenComparing(one -> -more(one)))
                .toList();
    }

    /** What it puts right, as it stood before, gravest and dearest first. */
    List<Broken> gains() {
        return Stream.concat(
                        cleared.stream(),
                        altered.stream().filter(one -> one.more() < 0).map(Altered::before))
                .sorted(Comparator.comparing((Broken one) -> one.rule().level()).thenComparing(one -> -gain(one)))
                .toList();
    }

    private int gain(Broken one) {
        return altered.stream()
                .filter(change -> change.before().key().equals(one.key()))
                .mapToInt(change -> -change.more())
                .findFirst()
                .orElse(one.tenths());
    }

    private int more(Broken one) {
        return altered.stream()
                .filter(change -> change.after().key().equals(one.key()))
                .mapToInt(Altered::more)
                .findFirst()
                .orElse(one.tenths());
    }
}
