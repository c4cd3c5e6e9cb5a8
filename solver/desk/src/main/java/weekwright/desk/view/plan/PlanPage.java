package weekwright.desk.view.plan;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.DayClass;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Moment;

/**
 * A plan as a coach reads it: the weeks one after the other, then how they stand.
 *
 * @param title title of the scenario
 * @param span first and last date in words
 * @param zone zone of all times
 * @param made how the plan was made, or null in a plan written by hand
 */
public record PlanPage(
        String title,
        String span,
        String zone,
        List<Week> weeks,
        Standing standing,
        @Nullable String made) {
    public PlanPage {
        weeks = List.copyOf(weeks);
    }

    /**
     * One week of the plan.
     *
     * @param heading which week it is, or null where there is only one
     */
    public record Week(@Nullable String heading, List<Lane> lanes) {
        public Week {
            lanes = List.copyOf(lanes);
        }
    }

    /** A group's week. */
    public record Lane(String group, List<Day> days) {
        public Lane {
            days = List.copyOf(days);
        }
    }

    /**
     * A group's day.
     *
     * @param matchDay days from a match, negative before it, or null where none is near
     * @param demand points of demand, 0 to about 10
     * @param load planned load in AU
     * @param entries what lies on it, in order of time
     */
    public record Day(
            LocalDate date,
            @Nullable Integer matchDay,
            DayClass dayClass,
            double demand,
            double load,
            List<Entry> entries) {
        public Day {
            entries = List.copyOf(entries);
        }
    }

    /** What an entry of a day is. */
    public enum Kind {
        /** A match or a meet. */
        FIXTURE,
        /** A practice or another thing that is fixed. */
        FIXED,
        /** A session that was placed. */
        SESSION
    }

    /**
     * One thing on a day.
     *
     * @param end end, or null where it is not known
     * @param label what it is
     * @param dose its dose in words where it is not full, else null
     * @param place label of the facility, or null
     * @param notes what else to know: which lift, for whom, who leads, what is pinned, whether it is fixed
     */
    public record Entry(
            Kind kind,
            Moment start,
            @Nullable Moment end,
            String label,
            @Nullable String dose,
            @Nullable String place,
            List<String> notes) {
        public Entry {
            notes = List.copyOf(notes);
        }
    }

    /**
     * How a plan stands.
     *
     * @param verdict the totals in words
     * @param breaches what is broken, dearest level first
     * @param leftOut sessions wanted and not placed
     * @param told facts that cost nothing
     * @param softened titles of the rules that the scenario changes
     * @param kept how many of the rules judged are kept, theme by theme; empty where nothing is known
     */
    public record Standing(
            String verdict,
            List<Breaches> breaches,
            List<Line> leftOut,
            List<Line> told,
            List<String> softened,
            List<String> kept) {
        public Standing {
            breaches = List.copyOf(breaches);
            leftOut = List.copyOf(leftOut);
            told = List.copyOf(told);
            softened = List.copyOf(softened);
            kept = List.copyOf(kept);
        }
    }

    /** What is broken at one level, dearest first. */
    public record Breaches(RuleLevel level, List<Line> lines) {
        public Breaches {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A sentence with what it costs.
     *
     * @param cost cost at its level, or null where it is a fact
     * @param text the sentence
     * @param help what would help, or null
     * @param about ids of the sessions, fixtures and commitments that it is about
     * @param finding number of the finding that it tells, from 0, or null where it is told for nothing
     */
    public record Line(
            @Nullable String cost,
            String text,
            @Nullable String help,
            List<String> about,
            @Nullable Integer finding) {
        public Line {
            about = List.copyOf(about);
        }

        /** A line that nothing is to be done about. */
        static Line of(@Nullable String cost, String text, List<String> about) {
            return new Line(cost, text, null, about, null);
        }
    }
}
