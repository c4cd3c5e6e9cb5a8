package weekwright.engine.problem;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;

/** A session in the making. */
final class SessionDraft {
    final int index;
    final String id;
    final GroupInfo group;
    final FamilyInfo family;
    final @Nullable AimInfo aim;
    final int week;
    final Pin pin;
    /** As it stands in the plan that was read, or null. */
    final @Nullable Placement placement;

    boolean openOnly = true;
    /** Minutes by which the group's free time is taken to be longer at either end. */
    int longer;
    /** Windows and opening hours left aside, where pins leave no other way. */
    boolean anyHour;

    /** Whose length and dose it keeps: those of an extra session are the coach's. */
    @Nullable
    Stimulus like;

    boolean stays;

    /** The practices that lend minutes to it; looked up when first asked for. */
    @Nullable
    Lenders lenders;

    @Nullable
    Stimulus before;

    int heldLead = -1;
    int heldVariant = LiftLine.UNKNOWN;

    SessionDraft(
            int index,
            String id,
            GroupInfo group,
            FamilyInfo family,
            @Nullable AimInfo aim,
            int week,
            Pin pin,
            @Nullable Placement placement) {
        this.index = index;
        this.id = id;
        this.group = group;
        this.family = family;
        this.aim = aim;
        this.week = week;
        this.pin = pin;
        this.placement = placement;
    }
}
