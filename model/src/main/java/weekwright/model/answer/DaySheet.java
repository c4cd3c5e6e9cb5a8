package weekwright.model.answer;

import com.fasterxml.jackson.annotation.JsonValue;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.catalogue.DayClass;
import weekwright.model.prescription.Target;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.SprintStart;

/**
 * What is done on a day: the plan of each group, then the numbers of each athlete. It says who sits out, never why.
 *
 * @param scenario id of the scenario
 * @param title title of the scenario
 * @param weightUnit kg or lb, in which all weights are
 * @param lengthUnit m or yd, in which all lengths are
 * @param groups the groups that have anything on the day
 * @param cautions what to keep in mind, and to whom to defer
 */
public record DaySheet(
        String scenario,
        String title,
        LocalDate day,
        String weightUnit,
        String lengthUnit,
        List<GroupDay> groups,
        List<String> cautions) {
    public DaySheet {
        groups = Ids.listed(groups);
        cautions = Ids.listed(cautions);
    }

    /**
     * A group's day.
     *
     * @param matchDay days from a match, negative before it, or null where none is near
     * @param dayClass how much the day asks for
     * @param fixed fixtures and practices
     * @param sessions what was placed, in order of time
     */
    public record GroupDay(
            String group,
            String label,
            @Nullable Integer matchDay,
            DayClass dayClass,
            List<Fixed> fixed,
            List<Session> sessions) {
        public GroupDay {
            fixed = Ids.listed(fixed);
            sessions = Ids.listed(sessions);
        }
    }

    /**
     * A fixture or a practice.
     *
     * @param match whether it is a match or a meet
     * @param facility label of the place, or null
     */
    public record Fixed(
            String label,
            boolean match,
            Moment start,
            Moment end,
            @Nullable String facility) {}

    /**
     * A session.
     *
     * @param placement its id in the plan
     * @param label label of its family
     * @param variant label of the variant that is done, or null
     * @param facility label of the place, or null
     * @param lead name of who leads, or null
     * @param warmUpMinutes minutes of the warm-up; fewer where another session or practice has just warmed up
     * @param remarks what holds for the whole session
     * @param plans what is done, one for each level that takes part, the group's own first
     * @param out who does not take part
     */
    public record Session(
            String placement,
            String family,
            String label,
            Dose dose,
            @Nullable String variant,
            Moment start,
            Moment end,
            @Nullable String facility,
            @Nullable String lead,
            int warmUpMinutes,
            List<String> remarks,
            List<Plan> plans,
            List<Out> out) {
        public Session {
            remarks = Ids.listed(remarks);
            plans = Ids.listed(plans);
            out = Ids.listed(out);
        }
    }

    /**
     * What those of a level do.
     *
     * @param lines line by line
     * @param fastLength length of all runs at 95 % of the best and more, run-ins not counted, in the sheet's unit
     * @param contacts contacts with the ground in jumps
     * @param athletes the numbers of each
     * @param others how many more take part who are not listed by name
     * @param byFeel what those go by, and whoever has no marks: one target a line
     */
    public record Plan(
            Level level,
            List<Line> lines,
            double fastLength,
            int contacts,
            List<Row> athletes,
            int others,
            List<Target> byFeel) {
        public Plan {
            lines = Ids.listed(lines);
            athletes = Ids.listed(athletes);
            byFeel = Ids.listed(byFeel);
        }
    }

    /**
     * A line of work as it is done today, dose, week and taper carried out.
     *
     * @param repetitions repetitions, runs or contacts a set, or null
     * @param seconds length of a repetition in seconds, or null
     * @param length length of a run in the sheet's unit, or null
     * @param runIn length of the run-in of a flying run, 0 for none
     * @param percentFrom least share of the best in per cent, or null
     * @param percentTo most share of the best in per cent, or null for no upper edge
     * @param restSeconds rest after each run, or each set of anything else; null where none is given
     * @param setRestSeconds rest between sets of runs, or null
     * @param inReserve repetitions that could still be done after a set, or null
     * @param stopPercent two runs in a row slower than the day's best by so much end the work; null for no such rule
     */
    public record Line(
            ContentKind kind,
            String label,
            int sets,
            @Nullable Integer repetitions,
            @Nullable Integer seconds,
            @Nullable Double length,
            double runIn,
            @Nullable SprintStart start,
            @Nullable Double percentFrom,
            @Nullable Double percentTo,
            @Nullable Integer restSeconds,
            @Nullable Integer setRestSeconds,
            @Nullable Integer inReserve,
            @Nullable Double stopPercent,
            @Nullable String note) {
        /** Whether it is a set that warms up for the first lift. */
        public boolean isWarmUpSet() {
            return kind == ContentKind.WARM_UP && repetitions != null;
        }
    }

    /**
     * The numbers of an athlete.
     *
     * @param targets one a line
     * @param remarks what is different for this athlete, or to know of the marks
     */
    public record Row(String athlete, String name, List<Target> targets, List<String> remarks) {
        public Row {
            targets = Ids.listed(targets);
            remarks = Ids.listed(remarks);
        }
    }

    /**
     * An athlete who does not take part.
     *
     * @param why whether the athlete is held back or elsewhere; never more than that
     * @param instead what is done instead, or null for nothing
     */
    public record Out(
            String athlete, String name, Why why, @Nullable Instead instead) {}

    /** Why an athlete does not take part, as far as a sheet says it. */
    public enum Why {
        /** Sits out. */
        SITS_OUT,
        /** Is somewhere else. */
        ELSEWHERE;

        /** The name as written in documents. */
        @JsonValue
        public String id() {
            return Ids.of(this);
        }
    }

    /** Work for another quality. */
    public record Instead(String family, String label, List<Line> lines, List<Target> targets) {
        public Instead {
            lines = Ids.listed(lines);
            targets = Ids.listed(targets);
        }
    }
}
