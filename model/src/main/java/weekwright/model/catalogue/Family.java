package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/**
 * A family of sessions: one line of the catalogue.
 *
 * @param demand demand of a full session
 * @param rpe planned rating of perceived exertion, 0 to 10
 * @param minutes main minutes of a full session; of a fixture the minutes of play
 * @param warmUpMinutes minutes of warm-up, never shortened by a dose
 * @param facility kinds of place that serve; empty means anywhere or nowhere
 * @param straightMetres straight run needed, or null
 * @param pathways qualities trained and how hard
 * @param againHours hours from its end to the next session that is high on one of its high pathways
 * @param crossHours hours from its high day's end to the next high day
 * @param beforeFixtureHours hours by which it ends before a fixture
 * @param beforeFixtureMicroHours the same for a micro dose, or null for the same hours
 * @param afterHours of a fixture family: hours after it, by pathway id and by the keys of {@link AfterKey}
 * @param order place within a day, freshest first, or null where it does not matter
 * @param variants close variations that may rotate
 * @param content what is done in a session, line by line; empty means only the note says it
 * @param source published source, or {@code expert proposal}
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Family(
        String id,
        String label,
        Role role,
        Demand demand,
        double rpe,
        int minutes,
        int warmUpMinutes,
        List<FacilityKind> facility,
        @Nullable Integer straightMetres,
        Map<Pathway, Intensity> pathways,
        Hours againHours,
        Hours crossHours,
        Hours beforeFixtureHours,
        @Nullable Hours beforeFixtureMicroHours,
        Map<String, Hours> afterHours,
        @Nullable Integer order,
        List<Variant> variants,
        List<Content> content,
        @Nullable String note,
        String source) {
    public Family {
        label = label == null ? id : label;
        role = role == null ? Role.SESSION : role;
        facility = Ids.listed(facility);
        pathways = Ids.mapped(pathways);
        afterHours = Ids.mapped(afterHours);
        variants = Ids.listed(variants);
        content = Ids.listed(content);
    }

    /** The same family with other lines of what is done. */
    Family with(List<Content> other) {
        return FamilyPatches.merged(this, FamilyPatch.ofContent(id, other));
    }

    /** Whether it meets a pathway at high intensity. */
    public boolean high(Pathway pathway) {
        return pathways.get(pathway) == Intensity.HIGH;
    }

    /** Whether it trains the upper body and nothing else. */
    public boolean upperBodyOnly() {
        return !pathways.isEmpty()
                && pathways.keySet().stream().allMatch(p -> p == Pathway.UPPER_PUSH || p == Pathway.UPPER_PULL);
    }

    /** Whether it is maximal or near maximal sprinting, whose first warm-up of a day cannot be cut short. */
    public boolean sprint() {
        return high(Pathway.MAX_VELOCITY_SPRINT) || high(Pathway.ACCELERATION);
    }

    /** Whether it is lifting in a weights room, whose first warm-up of a day cannot be cut short. */
    public boolean lift() {
        return facility.equals(List.of(FacilityKind.GYM))
                && pathways.keySet().stream()
                        .anyMatch(p -> p == Pathway.KNEE_DOMINANT
                                || p == Pathway.HIP_DOMINANT
                                || p == Pathway.UPPER_PUSH
                                || p == Pathway.UPPER_PULL);
    }
}
