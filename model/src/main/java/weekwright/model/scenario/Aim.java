package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * What a group is to train each week.
 *
 * @param family id of the session family
 * @param whom for whom ({@code for} in documents)
 * @param perWeek how many sessions a week
 * @param priority what a missing one costs
 * @param doses doses that may be used
 * @param prefer wanted place and time, or null
 * @param microCounts whether micro doses count for {@code least}
 * @param learning whether a new skill is being learnt
 * @param power whether lifting is for power and wants more hours from endurance work
 * @param weeks factor of the main part by week, the last repeated; empty means 1
 * @param minutes main minutes instead of the family's, or null
 * @param metres sprint metres instead of the usual, or null
 */
public record Aim(
        String family,
        @JsonProperty("for") Share whom,
        PerWeek perWeek,
        Priority priority,
        List<Dose> doses,
        @Nullable Prefer prefer,
        boolean microCounts,
        boolean learning,
        boolean power,
        List<Double> weeks,
        @Nullable Integer minutes,
        @Nullable Metres metres) {
    public Aim {
        whom = whom == null ? Share.ALL : whom;
        doses = doses == null || doses.isEmpty() ? List.of(Dose.FULL) : List.copyOf(doses);
        weeks = Ids.listed(weeks);
    }

    /** The same with other numbers a week, at another priority. */
    public Aim withPerWeek(PerWeek perWeek, Priority priority) {
        return copy(perWeek, priority, doses, microCounts, weeks);
    }

    /** The same in other doses. */
    public Aim withDoses(List<Dose> doses, boolean microCounts) {
        return copy(perWeek, priority, doses, microCounts, weeks);
    }

    /** The same with other factors of its main part by week. */
    public Aim withWeeks(List<Double> weeks) {
        return copy(perWeek, priority, doses, microCounts, weeks);
    }

    private Aim copy(PerWeek perWeek, Priority priority, List<Dose> doses, boolean microCounts, List<Double> weeks) {
        return new Aim(
                family, whom, perWeek, priority, doses, prefer, microCounts, learning, power, weeks, minutes, metres);
    }

    /** The part of a placement's id that names this aim in its group: {@code family} or {@code family+not-played}. */
    public String key() {
        return whom == Share.ALL ? family : family + "+" + whom.id();
    }

    /** The factor of the main part in a plan week, counted from 0. */
    public double weekFactor(int week) {
        return weeks.isEmpty() ? 1.0 : weeks.get(Math.min(week, weeks.size() - 1));
    }
}
