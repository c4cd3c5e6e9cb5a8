package weekwright.engine.explain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.JudgedRule;
import weekwright.model.rulebook.RuleLevel;

/**
 * A breach with all that a sentence needs.
 *
 * @param key what it is a breach of
 * @param level the rule's level, or told where nobody here can mend it
 * @param tenths cost in tenths
 * @param groups the groups that it is about: those of its sessions, or the one whose days it is about
 * @param cohorts cohorts concerned; empty where all of the group are
 * @param athletes ids of those concerned, where they are not all of the cohorts; else empty
 * @param things what it is about, in order of start
 * @param session the session concerned, or null
 * @param facility the facility concerned, or null
 * @param aim the aim concerned, or null
 * @param detail which of several forms of the rule is broken
 * @param measured in the rule's whole unit: minutes, tenths or a count
 */
record Fact(
        Key key,
        JudgedRule rule,
        RuleLevel level,
        int tenths,
        int heads,
        GroupInfo group,
        List<GroupInfo> groups,
        List<Integer> cohorts,
        List<String> athletes,
        List<Stimulus> things,
        @Nullable Session session,
        @Nullable FacilityInfo facility,
        @Nullable AimInfo aim,
        int firstDay,
        int lastDay,
        int detail,
        int measured,
        int limit) {}
