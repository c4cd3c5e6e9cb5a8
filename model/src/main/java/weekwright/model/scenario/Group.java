package weekwright.model.scenario;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * A group of athletes who train together.
 *
 * @param headcount people in it, or null for the athletes listed (at least 1)
 * @param quorum share of the group that a session needs, 0 to 1
 * @param windows hours in which its sessions may lie; empty means always
 * @param away spans in which the whole group is away
 * @param highDays high days a week, fixtures included, or null where the coach sets none
 * @param rules the group's own rule settings, over the scenario's
 * @param packs rule packs switched on for this group
 */
public record Group(
        String id,
        String label,
        GroupKind kind,
        Phase phase,
        Level level,
        @Nullable Integer headcount,
        double quorum,
        List<Window> windows,
        List<Away> away,
        @Nullable PerWeek highDays,
        List<Aim> aims,
        Map<String, RuleSetting> rules,
        List<String> packs) {
    /** The share of a group that a session needs where the document says nothing. */
    public static final double USUAL_QUORUM = 0.8;

    public Group {
        label = label == null ? id : label;
        kind = kind == null ? GroupKind.OTHER : kind;
        phase = phase == null ? Phase.IN_SEASON : phase;
        level = level == null ? Level.TRAINED : level;
        quorum = quorum == 0 ? USUAL_QUORUM : quorum;
        windows = Ids.listed(windows);
        away = Ids.listed(away);
        aims = Ids.listed(aims);
        rules = Ids.mapped(rules);
        packs = Ids.listed(packs);
    }

    /** The same with another number of people; null for the athletes listed. */
    public Group withHeadcount(@Nullable Integer headcount) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same that needs another share of its people for a session, above 0 and up to 1. */
    public Group withQuorum(double quorum) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same with other hours. */
    public Group withWindows(List<Window> windows) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same with other spans away. */
    public Group withAway(List<Away> away) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same with another number of high days a week; null for none set. */
    public Group withHighDays(@Nullable PerWeek highDays) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same with other aims. */
    public Group withAims(List<Aim> aims) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    /** The same with other rules of its own. */
    public Group withRules(Map<String, RuleSetting> rules) {
        return copy(headcount, quorum, windows, away, highDays, aims, rules);
    }

    private Group copy(
            @Nullable Integer headcount,
            double quorum,
            List<Window> windows,
            List<Away> away,
            @Nullable PerWeek highDays,
            List<Aim> aims,
            Map<String, RuleSetting> rules) {
        return new Group(id, label, kind, phase, level, headcount, quorum, windows, away, highDays, aims, rules, packs);
    }
}
