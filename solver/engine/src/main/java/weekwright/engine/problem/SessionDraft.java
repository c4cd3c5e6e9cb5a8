package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Prefer;

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

    private @Nullable List<Integer> facilities;
    private @Nullable List<Dose> doses;

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

    /** Where it may be, by the places' numbers; looked up once, when all else is known. */
    List<Integer> facilities(ProblemBuilder problem) {
        List<Integer> found = facilities;
        if (found == null) {
            found = facilitiesOf(problem);
            facilities = found;
        }
        return found;
    }

    /** In which doses it may be given; looked up once, when all else is known. */
    List<Dose> doses() {
        List<Dose> found = doses;
        if (found == null) {
            found = dosesOf();
            doses = found;
        }
        return found;
    }

    /** The facility that is held, or all of the right kind; a family that may be anywhere uses none unless the coach prefers one. */
    private List<Integer> facilitiesOf(ProblemBuilder problem) {
        if (placement != null && pin.facility()) {
            return List.of(problem.facility(placement.facility()));
        }
        List<Integer> found = new ArrayList<>();
        Prefer prefer = aim == null ? null : aim.aim.prefer();
        List<String> preferred = prefer == null ? List.of() : prefer.facilities();
        boolean anywhere = family.family.facility().isEmpty();
        if (anywhere) {
            found.add(Stimulus.NOWHERE);
        }
        for (FacilityInfo facility : problem.facilities) {
            boolean wanted = !anywhere || preferred.contains(facility.facility.id());
            if (wanted && facility.offers(family.family) && facility.straightEnough(family.family)) {
                found.add(facility.index);
            }
        }
        return found;
    }

    /** The doses of the aim; one that is held need not be among them. */
    private List<Dose> dosesOf() {
        boolean held = placement != null && pin.dose();
        if (aim != null && !held) {
            return aim.aim.doses().stream().sorted().distinct().toList();
        }
        if (like != null) {
            return List.of(like.dose);
        }
        return List.of(placement == null ? Dose.FULL : placement.dose());
    }
}
