package weekwright.engine.problem;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Pin;

/** A session that may be placed: one of an aim in a week, or an extra one that a plan written by hand brings. */
public final class Session {
    /** Place in the problem's list. */
    public final int index;
    /** As in documents: group, family, first day of its week, number. */
    public final String id;
    /** Whose it is. */
    public final GroupInfo group;
    /** What kind of session it is. */
    public final FamilyInfo family;
    /** The aim it serves, or null for an extra one. */
    public final @Nullable AimInfo aim;

    /** Week of the plan in which it has to lie, from 0. */
    public final int week;
    /** What the coach holds of it. */
    public final Pin pin;
    /** Whether it must stay placed: held by a pin, or extra. */
    public final boolean stays;
    /** Where it stood in the plan that was read, or null. */
    public final @Nullable Stimulus before;
    /** Staff member who is to lead it whatever happens, or -1. */
    public final int heldLead;
    /** Variant that it is to have whatever happens, by its place in the family's list, or -1. */
    public final int heldVariant;
    /** Everywhere it may lie without breaking what never changes, and where it stood before. */
    public final Stimulus[] options;
    /** The options on a coarse grid, for the search. */
    public final Stimulus[] coarse;

    Session(SessionDraft draft, Stimulus[] options, Stimulus[] coarse) {
        index = draft.index;
        id = draft.id;
        group = draft.group;
        family = draft.family;
        aim = draft.aim;
        week = draft.week;
        pin = draft.pin;
        stays = draft.stays;
        before = draft.before;
        heldLead = draft.heldLead;
        heldVariant = draft.heldVariant;
        this.options = options;
        this.coarse = coarse;
    }

    /**
     * Where a search begins with it: where it stood, or null where it stood nowhere or on a day that is barred now; what
     * must stay placed then begins at its first option.
     */
    public @Nullable Stimulus start() {
        if (before == null || before.option >= 0) {
            return before;
        }
        return stays ? options[0] : null;
    }
}
