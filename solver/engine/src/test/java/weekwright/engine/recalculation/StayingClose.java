package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;

/** What people already know of a plan changes as little as it can. */
final class StayingClose extends Judge {
    private final Plan plan;
    private final Plan before;
    private final @Nullable Moment now;

    StayingClose(Case the, Ledger ledger, Plan plan, Plan before, @Nullable Moment now) {
        super(the, ledger);
        this.plan = plan;
        this.before = before;
        this.now = now;
    }

    @Override
    void judge() {
        keepPlan();
    }

    private void keepPlan() {
        List<String> oldIds = PlacementIds.of(the.scenario(), before);
        List<String> newIds = PlacementIds.of(the.scenario(), plan);
        for (int i = 0; i < oldIds.size(); i++) {
            Placement old = before.placements().get(i);
            int place = newIds.indexOf(oldIds.get(i));
            Placement current = place < 0 ? null : plan.placements().get(place);
            Fraction points = before.published() == null ? ofDraft(old, current) : ofPublished(old, current);
            want("keep-plan", oldIds.get(i), old.group(), points, Fraction.ONE);
        }
    }

    private Fraction ofDraft(Placement old, @Nullable Placement current) {
        boolean same = current != null
                && start(old).equals(start(current))
                && Objects.equals(old.facility(), current.facility())
                && old.dose() == current.dose();
        return same ? Fraction.ZERO : number("keep-plan", "draftPoints", old.group());
    }

    private Fraction ofPublished(Placement old, @Nullable Placement current) {
        String changed =
                current == null || !old.start().date().equals(current.start().date())
                        ? "dayPoints"
                        : !start(old).equals(start(current)) || old.dose() != current.dose()
                                ? "hourPoints"
                                : !Objects.equals(old.facility(), current.facility()) ? "placePoints" : "";
        if (changed.isEmpty()) {
            return Fraction.ZERO;
        }
        Fraction points = number("keep-plan", changed, old.group());
        return isSoon(old) ? points.times(number("keep-plan", "soonFactor", old.group())) : points;
    }

    private boolean isSoon(Placement old) {
        if (now == null) {
            return false;
        }
        Instant present = now.instant(the.scenario().zone());
        long hours = number("keep-plan", "soonHours", old.group()).roundedDown();
        return !start(old).isBefore(present) && !start(old).isAfter(present.plus(Duration.ofHours(hours)));
    }

    private Instant start(Placement placement) {
        return placement.start().instant(the.scenario().zone());
    }
}
