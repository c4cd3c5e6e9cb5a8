package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Variant;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Share;

/** The sessions of a group in one family that has variants, those of the history first: where lifts rotate. */
public final class LiftLine {
    /** A variant that nobody wrote down. */
    public static final int UNKNOWN = -1;

    /** Place in the problem's list. */
    public final int index;
    /** Whose lifts they are. */
    public final GroupInfo group;
    /** The family whose variants rotate. */
    public final FamilyInfo family;
    /** Sessions that may be placed. */
    public final List<Session> sessions = new ArrayList<>();
    /** What the history holds of it, micro doses left aside, in order of time. */
    public final List<Stimulus> past;
    /** The variant of each, or {@link #UNKNOWN}. */
    public final int[] pastVariants;
    /** Which variants are tested. */
    public final boolean[] tested;

    private @Nullable AimInfo aim;

    private LiftLine(int index, Session first, Problem problem) {
        this.index = index;
        group = first.group;
        family = first.family;
        past = problem.fixed.stream()
                .filter(fixed -> fixed.kind == Stimulus.Kind.HISTORY
                        && fixed.group == group.index
                        && fixed.family == family
                        && fixed.dose != Dose.MICRO)
                .toList();
        pastVariants = past.stream()
                .mapToInt(done -> variant(
                        family, problem.scenario.history().get(done.index).variant()))
                .toArray();
        List<Variant> variants = family.family.variants();
        tested = new boolean[variants.size()];
        for (int i = 0; i < tested.length; i++) {
            tested[i] = variants.get(i).tested();
        }
    }

    private void add(Session session) {
        sessions.add(session);
        if (session.aim != null && (aim == null || session.aim.aim.whom() == Share.ALL)) {
            aim = session.aim;
        }
    }

    /** All lines of a problem, in the order of their first sessions. */
    static List<LiftLine> of(Problem problem) {
        Map<List<Integer>, LiftLine> lines = new LinkedHashMap<>();
        for (Session session : problem.sessions) {
            if (!session.family.family.variants().isEmpty()) {
                lines.computeIfAbsent(
                                List.of(session.group.index, session.family.index),
                                key -> new LiftLine(lines.size(), session, problem))
                        .add(session);
            }
        }
        return List.copyOf(lines.values());
    }

    /** The place of a variant in its family's list, or {@link #UNKNOWN}. */
    static int variant(FamilyInfo family, @Nullable String id) {
        List<Variant> variants = family.family.variants();
        for (int i = 0; i < variants.size(); i++) {
            if (variants.get(i).id().equals(id)) {
                return i;
            }
        }
        return UNKNOWN;
    }

    /** The aim that asks for these lifts, or null where they are extra. */
    public @Nullable AimInfo aim() {
        return aim;
    }

    /** Number of variants. */
    public int variants() {
        return tested.length;
    }

    /** Whether the lift that is tested is to come back: an aim asks for these lifts, and one of them is tested. */
    public boolean wantsTested() {
        boolean any = false;
        for (boolean one : tested) {
            any |= one;
        }
        return any && aim != null;
    }
}
