package weekwright.desk.app;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.model.Nearest;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Finds the session that somebody names, and the days on which it can lie. */
final class Sessions {
    private Sessions() {}

    /**
     * The session of an id, placed or left out.
     *
     * @throws InputFault when there is none
     */
    static Session named(String id, Scenario scenario, Plan plan) {
        List<Session> all = ProblemBuilder.of(scenario, plan, PlanUse.CHECK).sessions;
        return all.stream().filter(known -> known.id.equals(id)).findFirst().orElseThrow(() -> unknown(id, all));
    }

    /** The nearest id, or where none is near those that hold what was said, or all of them. */
    private static InputFault unknown(String said, List<Session> all) {
        String none = "no session is called \"" + said + "\": ";
        Optional<String> near =
                Nearest.of(said, all.stream().map(known -> known.id).toList());
        if (near.isPresent()) {
            return new InputFault(none + "did you mean " + near.get() + "?");
        }
        List<String> like = listed(all.stream().filter(one -> isLike(one, said)).toList());
        List<String> problems = new ArrayList<>(List.of(none + "those that there are follow"));
        problems.addAll(like.isEmpty() ? listed(all) : like);
        return new InputFault(problems);
    }

    private static boolean isLike(Session session, String said) {
        String small = said.toLowerCase(Locale.ROOT);
        return session.id.contains(small)
                || session.family.family.label().toLowerCase(Locale.ROOT).contains(small);
    }

    private static List<String> listed(List<Session> sessions) {
        return sessions.stream()
                .map(session -> "  " + session.id + "  " + session.family.family.label())
                .toList();
    }

    /** First date of a session's week. */
    static LocalDate firstDay(Session session, Scenario scenario) {
        return scenario.firstDay().plusDays(7L * session.week);
    }

    /**
     * A date as it was given.
     *
     * @throws InputFault when it is none
     */
    static LocalDate date(String option, String value, LocalDate example) {
        try {
            return LocalDate.parse(value);
        } catch (DateTimeParseException e) {
            throw new InputFault(option + " is \"" + value + "\": give a date, such as " + example);
        }
    }

    /**
     * A day, if it lies in a session's week.
     *
     * @throws InputFault when it does not
     */
    static LocalDate inWeek(Session session, LocalDate day, Scenario scenario) {
        LocalDate first = firstDay(session, scenario);
        LocalDate sunday = first.plusDays(6);
        LocalDate last = sunday.isAfter(scenario.lastDay()) ? scenario.lastDay() : sunday;
        if (day.isBefore(first) || day.isAfter(last)) {
            throw new InputFault(session.id + " cannot lie on " + day
                    + ", as a session stays in its week: give a day from " + first + " to " + last);
        }
        return day;
    }
}
