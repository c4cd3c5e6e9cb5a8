package weekwright.desk.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Lists of a scenario with one thing changed. */
final class Revised {
    private Revised() {}

    /** A list and one more. */
    static <T> List<T> and(List<T> list, T one) {
        List<T> more = new ArrayList<>(list);
        more.add(one);
        return more;
    }

    /** A list in which one, found by its id, is changed. */
    static <T> List<T> changed(List<T> list, Function<T, String> ids, String id, UnaryOperator<T> change) {
        return list.stream()
                .map(one -> ids.apply(one).equals(id) ? change.apply(one) : one)
                .toList();
    }
}
