package weekwright.model.plan;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/**
 * A session at its time and place.
 *
 * @param id {@code group/family/week/n}, or null in a plan written by hand
 * @param minutes whole minutes, warm-up included, or null in a plan written by hand
 * @param facility id of the facility, or null for nowhere in particular
 * @param lead id of the staff member, or null
 * @param pin what the coach holds, or null
 */
public record Placement(
        @Nullable String id,
        String group,
        String family,
        Moment start,
        @Nullable Integer minutes,
        @Nullable String facility,
        @Nullable String lead,
        Dose dose,
        @Nullable String variant,
        @Nullable Pin pin) {
    public Placement {
        dose = dose == null ? Dose.FULL : dose;
    }

    /** What is held, never null. */
    public Pin held() {
        return pin == null ? Pin.NONE : pin;
    }

    /** The same at another start. */
    public Placement withStart(Moment start) {
        return copy(start, pin);
    }

    /** The same with another pin; null holds nothing. */
    public Placement withPin(@Nullable Pin pin) {
        return copy(start, pin);
    }

    /**
     * The same with all of it held that was chosen in place of what was there before, so that no search takes it back.
     * What was held stays held; a day that was barred is barred no more where it lies there now.
     *
     * @param before where it was, or null where it was left out
     */
    public Placement chosenInstead(@Nullable Placement before) {
        Pin was = before == null ? Pin.NONE : before.held();
        boolean moved = before == null || !start.equals(before.start);
        Pin now = new Pin(
                was.start() || moved,
                was.day() && !moved,
                was.facility() || (before != null && !Objects.equals(facility, before.facility)),
                lead != null && (was.lead() || before == null || !lead.equals(before.lead)),
                was.dose() || (before != null && dose != before.dose),
                variant != null && (was.variant() || before == null || !variant.equals(before.variant)),
                false,
                was.notDays().stream().filter(day -> !day.equals(start.date())).toList());
        return withPin(now.isNone() ? null : now);
    }

    private Placement copy(Moment start, @Nullable Pin pin) {
        return new Placement(id, group, family, start, minutes, facility, lead, dose, variant, pin);
    }
}
