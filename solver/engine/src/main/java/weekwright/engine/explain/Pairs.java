package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;

/** Finds for each session of a plan the one that stands for it in another; the sessions of an aim's week are alike. */
final class Pairs {
    /** A session in both plans, or in one of them alone. */
    record Pair(@Nullable Placement before, @Nullable Placement after) {}

    /** What is most alike is paired first, so that as little as can be is told to have changed. */
    private static final List<BiPredicate<Placement, Placement>> LIKENESS = List.of(
            (a, b) -> sameSpot(a, b) && Objects.equals(a.lead(), b.lead()) && Objects.equals(a.variant(), b.variant()),
            Pairs::sameSpot,
            (a, b) -> a.start().equals(b.start()),
            (a, b) -> a.start().date().equals(b.start().date()),
            (a, b) -> true);

    private final List<Pair> found = new ArrayList<>();

    /** All sessions of two judged plans: those of the first in its order, then those that only the second has. */
    static List<Pair> of(Plan before, Plan after) {
        Pairs pairs = new Pairs();
        Map<String, List<Placement>> later = byAimWeek(after);
        byAimWeek(before).forEach((week, sessions) -> {
            List<Placement> rest = later.remove(week);
            pairs.pair(sessions, rest == null ? List.of() : rest);
        });
        later.values().forEach(added -> pairs.pair(List.of(), added));
        return pairs.found;
    }

    private static Map<String, List<Placement>> byAimWeek(Plan plan) {
        Map<String, List<Placement>> byWeek = new LinkedHashMap<>();
        for (Placement session : plan.placements()) {
            String id = Objects.requireNonNull(session.id(), "a judged plan names its sessions");
            byWeek.computeIfAbsent(id.substring(0, id.lastIndexOf('/')), week -> new ArrayList<>())
                    .add(session);
        }
        return byWeek;
    }

    private void pair(List<Placement> before, List<Placement> after) {
        List<Placement> gone = new ArrayList<>(before);
        List<Placement> come = new ArrayList<>(after);
        for (BiPredicate<Placement, Placement> alike : LIKENESS) {
            gone.removeIf(old -> takes(old, come, alike));
        }
        gone.forEach(old -> found.add(new Pair(old, null)));
        come.forEach(now -> found.add(new Pair(null, now)));
    }

    private boolean takes(Placement old, List<Placement> come, BiPredicate<Placement, Placement> alike) {
        for (Placement now : come) {
            if (alike.test(old, now)) {
                come.remove(now);
                found.add(new Pair(old, now));
                return true;
            }
        }
        return false;
    }

    private static boolean sameSpot(Placement a, Placement b) {
        return a.start().equals(b.start()) && Objects.equals(a.facility(), b.facility()) && a.dose() == b.dose();
    }
}
