package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/** A scenario's change to a built-in family, or a family of its own: fields left out keep the built-in value. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FamilyPatch(
        String id,
        @Nullable String label,
        @Nullable Role role,
        @Nullable Demand demand,
        @Nullable Double rpe,
        @Nullable Integer minutes,
        @Nullable Integer warmUpMinutes,
        @Nullable List<FacilityKind> facility,
        @Nullable Integer straightMetres,
        @Nullable Map<Pathway, Intensity> pathways,
        @Nullable Hours againHours,
        @Nullable Hours crossHours,
        @Nullable Hours beforeFixtureHours,
        @Nullable Hours beforeFixtureMicroHours,
        @Nullable Map<String, Hours> afterHours,
        @Nullable Integer order,
        @Nullable List<Variant> variants,
        @Nullable List<Content> content,
        @Nullable String note,
        @Nullable String source) {
    /** Nothing changed of a family. */
    public static FamilyPatch none(String id) {
        return new FamilyPatch(
                id, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                null, null, null);
    }

    /** The same with other hours before a fixture: of micro doses, of all others, and after a fixture of this family. */
    public FamilyPatch withFixtureHours(
            @Nullable Hours before, @Nullable Hours beforeMicro, @Nullable Map<String, Hours> after) {
        return new FamilyPatch(
                id,
                label,
                role,
                demand,
                rpe,
                minutes,
                warmUpMinutes,
                facility,
                straightMetres,
                pathways,
                againHours,
                crossHours,
                before,
                beforeMicro,
                after,
                order,
                variants,
                content,
                note,
                source);
    }

    /** A change of what is done in its sessions, and of nothing else. */
    static FamilyPatch ofContent(String id, List<Content> content) {
        return new FamilyPatch(
                id, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                content, null, null);
    }
}
