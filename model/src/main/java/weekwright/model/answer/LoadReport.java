package weekwright.model.answer;

import com.fasterxml.jackson.annotation.JsonValue;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Pathway;

/**
 * Load planned and load reported, side by side and never in one sum, unless a ratio says from when on it is planned.
 *
 * @param divisor what the variance is divided by in monotony and strain: n − 1 or n
 * @param lengthUnit m or yd, in which all lengths are
 * @param doneUntil last day of which anything was reported, or null where nothing was
 * @param people groups, then athletes
 * @param log the log against the plan
 * @param conventions what the three ratios are
 * @param caveat what stands beside every ratio
 * @param critiques what is held against it
 */
public record LoadReport(
        String scenario,
        String title,
        String divisor,
        String lengthUnit,
        @Nullable LocalDate doneUntil,
        List<Person> people,
        List<Checked> log,
        List<String> conventions,
        String caveat,
        List<String> critiques) {
    public LoadReport {
        people = Ids.listed(people);
        log = Ids.listed(log);
        conventions = Ids.listed(conventions);
        critiques = Ids.listed(critiques);
    }

    /** Where figures come from. */
    public enum Series {
        DONE,
        PLANNED;

        /** The name as written in documents. */
        @JsonValue
        public String id() {
            return Ids.of(this);
        }
    }

    /**
     * A group's usual member, or an athlete.
     *
     * @param group whether it is a group
     * @param weeks week by week, done before planned
     * @param exposures qualities that the group has aims for
     */
    public record Person(
            String id, String label, boolean group, List<Week> weeks, List<Ratio> ratios, List<Exposure> exposures) {
        public Person {
            weeks = Ids.listed(weeks);
            ratios = Ids.listed(ratios);
            exposures = Ids.listed(exposures);
        }
    }

    /**
     * A week of one series.
     *
     * @param days load of each day in AU from its first on, fewer than seven where no more is known
     * @param total load in AU
     * @param change change from the week before in per cent, or null where there is none to compare with
     * @param changeOn the series of the week before, or null
     * @param monotony mean over standard deviation, or null where all days are alike or some are not known
     * @param strain total times monotony, or null where monotony is
     * @param work what the sessions hold
     */
    public record Week(
            LocalDate from,
            Series series,
            List<Double> days,
            double total,
            @Nullable Double change,
            @Nullable Series changeOn,
            @Nullable Double monotony,
            @Nullable Double strain,
            Content work) {
        public Week {
            days = Ids.listed(days);
        }
    }

    /**
     * What the sessions of a week hold, as they are prescribed.
     *
     * @param fast length of all runs at 95 % of the best and more, run-ins not counted
     * @param sprints length of all sprints, run-ins counted
     * @param runs length of all slower runs over a distance
     * @param contacts contacts with the ground in jumps
     * @param sets sets of lifts and jumps for each quality
     */
    public record Content(double fast, double sprints, double runs, int contacts, Map<Pathway, Integer> sets) {
        public Content {
            sets = Ids.mapped(sets);
        }
    }

    /**
     * How a week compares with the weeks before, by three conventions; null before 28 days are known and where the long load
     * is 0.
     *
     * @param plannedFrom first day whose load is planned, or null where all of it was reported
     */
    public record Ratio(
            LocalDate day,
            @Nullable LocalDate plannedFrom,
            @Nullable Double coupled,
            @Nullable Double uncoupled,
            @Nullable Double weighted) {}

    /**
     * When a quality was and will be met at high intensity, in sessions and in measured matches.
     *
     * @param daysAtEnd days from the last exposure, done or planned, to the last day of the plan; null without any
     */
    public record Exposure(
            Pathway quality,
            @Nullable LocalDate lastDone,
            @Nullable LocalDate nextPlanned,
            @Nullable Integer daysAtEnd) {}

    /**
     * A session of the plan, or an entry of the log, held against the other.
     *
     * @param placement id of the session, or null of an entry that was not planned
     * @param start when it was done, or should have been
     */
    public record Checked(What what, @Nullable String placement, Moment start, String text) {}

    /** How the log and the plan agree on a session. */
    public enum What {
        AS_PLANNED,
        CHANGED,
        MISSED,
        NOT_LOGGED,
        EXTRA;

        /** The name as written in documents. */
        @JsonValue
        public String id() {
            return Ids.of(this);
        }
    }
}
