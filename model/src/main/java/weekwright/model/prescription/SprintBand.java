package weekwright.model.prescription;

import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Family;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;

/** Metres of a full session at or near top speed, run-ins not counted: at least and at most. */
public record SprintBand(int least, int most) {
    /** Fast metres for each main minute where nobody says otherwise. Expert proposal. */
    public static final int FAST_A_MINUTE = 3;
    /** All metres of sprinting for each main minute where nobody says otherwise. Expert proposal. */
    public static final int ALL_A_MINUTE = 10;

    private static final String RULE = "sprint-metres";

    /**
     * The band of a family for a level in a group, or null for a family without one. Maximal velocity by the numbers of
     * the rule {@code sprint-metres}; acceleration 60 to 150 m novices, 80 to 200 field sports in season, 100 to 300 off
     * season and sprinters (expert proposal, the last Haugen et al. 2019, Sports Med Open 5:44, Table 2).
     */
    public static @Nullable SprintBand of(Family family, Group group, Level level, RuleSettings settings) {
        if (family.id().equals("max-velocity")) {
            String name = level == Level.NOVICE
                    ? "novice"
                    : group.kind() == GroupKind.SPRINT ? "sprint" : inSeason(group) ? "inSeason" : "offSeason";
            return new SprintBand(
                    (int) settings.number(RULE, name + "Least"), (int) settings.number(RULE, name + "Most"));
        }
        if (family.id().equals("acceleration")) {
            if (level == Level.NOVICE) {
                return new SprintBand(60, 150);
            }
            return inSeason(group) && group.kind() != GroupKind.SPRINT
                    ? new SprintBand(80, 200)
                    : new SprintBand(100, 300);
        }
        return null;
    }

    private static boolean inSeason(Group group) {
        return group.phase() == Phase.IN_SEASON || group.phase() == Phase.RETURN;
    }

    /**
     * Metres of a family's full session: what the aim says, else by its main minutes; none of a family that is no
     * sprinting.
     */
    public static @Nullable Metres planned(Family family, @Nullable Aim aim) {
        if (aim != null && aim.metres() != null) {
            return aim.metres();
        }
        if (!family.sprint()) {
            return null;
        }
        int minutes = aim == null || aim.minutes() == null ? family.minutes() : aim.minutes();
        int fast = family.high(Pathway.MAX_VELOCITY_SPRINT) ? FAST_A_MINUTE * minutes : 0;
        return new Metres(fast, ALL_A_MINUTE * minutes);
    }
}
