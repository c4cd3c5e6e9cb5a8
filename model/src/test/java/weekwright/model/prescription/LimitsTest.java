package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;

/** What a clinician allows, and what is done instead. */
class LimitsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 2, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 2, 14);
    private static final Catalogue CATALOGUE = Catalogue.builtIn();
    private static final Facility GYM =
            new Facility("gym", "Gym", List.of(FacilityKind.GYM), null, null, List.of(), List.of());

    private static Restriction upTo(RestrictionLimit limit, Pathway... pathways) {
        return new Restriction(List.of(pathways), limit, FIRST, LAST, "clinician");
    }

    /** Maximal velocity is high on sprinting and light on hip-dominant work. */
    @ParameterizedTest
    @CsvSource({
        "LIGHT, MAX_VELOCITY_SPRINT, FULL, true",
        "LIGHT, MAX_VELOCITY_SPRINT, MICRO, true",
        "MICRO, MAX_VELOCITY_SPRINT, REDUCED, true",
        "MICRO, MAX_VELOCITY_SPRINT, MICRO, false",
        "NONE, MAX_VELOCITY_SPRINT, MICRO, true",
        "LIGHT, HIP_DOMINANT, FULL, false",
        "NONE, HIP_DOMINANT, FULL, true",
        "NONE, UPPER_PULL, FULL, false"
    })
    void who_is_kept_out_of_maximal_sprinting(RestrictionLimit limit, Pathway pathway, Dose dose, boolean out) {
        Family family = CATALOGUE.family("max-velocity");

        assertThat(Limits.keepsOut(upTo(limit, pathway), family, dose, FIRST)).isEqualTo(out);
    }

    @Test
    void a_restriction_holds_on_its_first_and_last_day_and_not_beside_them() {
        Restriction restriction = upTo(RestrictionLimit.LIGHT, Pathway.KNEE_DOMINANT);
        Family squats = CATALOGUE.family("heavy-lower-knee");

        assertThat(Limits.keepsOut(restriction, squats, Dose.FULL, FIRST)).isTrue();
        assertThat(Limits.keepsOut(restriction, squats, Dose.FULL, LAST)).isTrue();
        assertThat(Limits.keepsOut(restriction, squats, Dose.FULL, FIRST.minusDays(1)))
                .isFalse();
        assertThat(Limits.keepsOut(restriction, squats, Dose.FULL, LAST.plusDays(1)))
                .isFalse();
    }

    @Test
    void who_sits_out_does_what_stresses_another_quality() {
        Alternatives alternatives = new Alternatives(CATALOGUE);
        Family squats = CATALOGUE.family("heavy-lower-knee");
        List<Restriction> knee = List.of(upTo(RestrictionLimit.LIGHT, Pathway.KNEE_DOMINANT));

        assertThat(alternatives.instead(squats, knee, GYM, 100, other -> true).id())
                .isEqualTo("upper-strength");
        assertThat(alternatives.instead(squats, knee, GYM, 10, other -> true).id())
                .as("10 h before a match")
                .isEqualTo("trunk-and-balance");
        assertThat(alternatives.instead(squats, knee, null, 100, other -> true).id())
                .as("nowhere in particular")
                .isEqualTo("trunk-and-balance");
        List<Restriction> arms = List.of(upTo(RestrictionLimit.NONE, Pathway.UPPER_PULL, Pathway.KNEE_DOMINANT));
        assertThat(alternatives.instead(squats, arms, GYM, 100, other -> true).id())
                .as("no pulling")
                .isEqualTo("heavy-upper-push");
        assertThat(alternatives.instead(squats, knee, GYM, 100, other -> false)).isNull();
    }

    @Test
    void what_is_offered_never_touches_what_is_restricted_nor_what_the_session_stresses() {
        Alternatives alternatives = new Alternatives(CATALOGUE);
        for (Family family : CATALOGUE.families()) {
            for (Pathway pathway : Pathway.values()) {
                Family other = alternatives.instead(
                        family, List.of(upTo(RestrictionLimit.NONE, pathway)), GYM, 500, one -> true);
                if (other != null) {
                    assertThat(other.pathways()).doesNotContainKey(pathway);
                    assertThat(other.pathways().keySet()).noneMatch(family::high);
                }
            }
        }
    }

    @Test
    void what_is_offered_is_another_session_no_harder_and_may_end_just_as_long_before_a_match_as_it_must() {
        Alternatives alternatives = new Alternatives(CATALOGUE);
        Family squats = CATALOGUE.family("heavy-lower-knee");

        assertThat(alternatives
                        .instead(squats, List.of(), GYM, 16, other -> true)
                        .id())
                .as("upper body work ends 16 h before")
                .isEqualTo("upper-strength");
        assertThat(offered(alternatives, "trunk-and-balance", "trunk-and-balance"))
                .as("itself")
                .isNull();
        assertThat(offered(alternatives, "mobility", "trunk-and-balance"))
                .as("harder")
                .isNull();
        assertThat(offered(alternatives, "heavy-upper-push", "heavy-upper-pull"))
                .as("just as hard")
                .isNotNull();
    }

    private static Family offered(Alternatives alternatives, String family, String only) {
        return alternatives.instead(
                CATALOGUE.family(family),
                List.of(),
                GYM,
                100,
                other -> other.id().equals(only));
    }
}
