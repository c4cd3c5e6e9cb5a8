package weekwright.engine.explain;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.DayState;
import weekwright.engine.rules.Judge;

/** Says what a plan means for each athlete who is known by name. */
public final class People {
    private final Problem problem;
    private final Judge judge;

    /** People in a plan: each session at its place, by session. */
    public People(Problem problem, @Nullable Stimulus[] at) {
        this.problem = problem;
        judge = Judge.of(problem, at);
    }

    /** Each athlete's picture, in the order of the scenario. */
    public List<PersonPicture> all() {
        return problem.scenario.athletes().stream()
                .map(athlete -> picture(athlete.id()))
                .toList();
    }

    private PersonPicture picture(String athlete) {
        Cohort cohort = problem.cohorts.stream()
                .filter(one -> one.athletes().contains(athlete))
                .findFirst()
                .orElseThrow();
        Set<String> sessions = problem.sessions.stream()
                .filter(session -> comes(cohort, judge.attended(session)))
                .map(session -> session.id)
                .collect(Collectors.toUnmodifiableSet());
        GroupInfo group = problem.groups.get(cohort.mainGroup());
        List<DayPicture> days = IntStream.range(0, problem.calendar.days())
                .mapToObj(day -> day(group, cohort.index(), day))
                .toList();
        return new PersonPicture(athlete, sessions, days);
    }

    private static boolean comes(Cohort cohort, @Nullable Stimulus placed) {
        return placed != null && placed.has(cohort.index());
    }

    /** A cohort's day at a glance. */
    private DayPicture day(GroupInfo group, int cohort, int day) {
        DayState state = judge.day(cohort, day);
        return new DayPicture(
                group.group.id(),
                problem.calendar.date(day),
                MatchDays.of(group, day),
                state.demand(),
                state.loadTenths() / 10.0,
                state.dayClass());
    }
}
