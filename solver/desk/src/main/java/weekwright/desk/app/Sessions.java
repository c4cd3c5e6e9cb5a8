package weekwright.desk.app;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
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
        return all.stream()
                .filter(known -> known.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new InputFault("no session is called \"" + id + "\": "
                        + Nearest.of(id, all.stream().map(known -> known.id).toList())
                                .map(near -> "did you mean " + near + "?")
                                .orElse("check --json lists them")));
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
