package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** Room is made for a session: tried with every session of a placed week and every option of it. */
class GivingWayTest {
    /** A placed week, and where its sessions lie after a move. */
    private static final class Week {
        final Problem problem;
        final @Nullable Stimulus[] before;
        final List<Seat> seats;
        final GivingWay way;

        Week(String scenario) {
            this(ProblemBuilder.of(Scenarios.read(scenario)));
        }

        Week(Problem problem) {
            this.problem = problem;
            before = new Construction(problem, Watch.NONE).build();
            seats = Seat.of(problem.sessions, before);
            Judge judge = Judge.of(problem, before);
            Places[] places = problem.sessions.stream()
                    .map(session -> new Places(judge, problem, session))
                    .toArray(Places[]::new);
            way = new GivingWay(problem, new ByGroupAndWeek<>(problem, seats, Seat::session), places);
        }

        /** What one try leads to. */
        interface Look {
            void at(Session session, Stimulus to, @Nullable Stimulus[] after);
        }

        void everyMove(Look look) {
            for (Seat seat : seats) {
                for (Stimulus to : seat.session().coarse) {
                    way.putting(seat, to).take();
                    Session session = seat.session();
                    look.at(session, to, seats.stream().map(Seat::getOption).toArray(Stimulus[]::new));
                    seats.forEach(each -> each.setOption(before[each.session().index]));
                }
            }
        }

        boolean together(Session one, Session other) {
            return Arrays.stream(problem.related[one.group.index]).anyMatch(group -> group == other.group.index);
        }
    }

    private static boolean overlap(Stimulus one, Stimulus other) {
        return one.start < other.end && other.start < one.end;
    }

    @ParameterizedTest
    @ValueSource(strings = {"one-match", "two-groups"})
    void it_lies_there_and_none_of_the_same_people_overlaps_it(String scenario) {
        Week week = new Week(scenario);
        week.everyMove((session, to, after) -> {
            assertThat(after[session.index]).isSameAs(to);
            for (Session other : week.problem.sessions) {
                Stimulus its = after[other.index];
                if (other != session && its != null && !other.stays && week.together(session, other)) {
                    assertThat(overlap(its, to)).as("%s beside %s", its, to).isFalse();
                }
            }
        });
    }

    @Test
    void the_others_keep_their_day_and_their_order_or_are_left_out() {
        Week week = new Week("one-match");
        List<Session> sessions = new ArrayList<>(week.problem.sessions);
        sessions.removeIf(session -> week.before[session.index] == null);
        sessions.sort(Comparator.comparingInt(session -> start(week.before, session)));
        week.everyMove((moved, to, after) -> {
            int last = Integer.MIN_VALUE;
            for (Session session : sessions) {
                Stimulus now = after[session.index];
                if (session != moved && now != null) {
                    assertThat(now.day).isEqualTo(Objects.requireNonNull(week.before[session.index]).day);
                    assertThat(now.start).isGreaterThanOrEqualTo(last);
                    last = now.start;
                }
            }
        });
    }

    @Test
    void what_is_held_to_its_time_stays() {
        Scenario scenario = Scenarios.read("one-match");
        Plan plan = Engine.propose(new Proposal(scenario, null, Budget.moves(100), 1, 1, null), Progress.SILENT)
                .plan();
        Pin time = new Pin(true, false, false, false, false, false, false, List.of());
        List<Placement> sessions = new ArrayList<>(plan.placements());
        for (int i = 0; i < sessions.size(); i += 2) {
            sessions.set(i, sessions.get(i).withPin(time));
        }
        Plan pinned = plan.withPlacements(sessions);
        Week week = new Week(ProblemBuilder.of(scenario, pinned, PlanUse.START));
        List<Session> held =
                week.problem.sessions.stream().filter(session -> session.stays).toList();
        assertThat(held).isNotEmpty();
        week.everyMove((moved, to, after) -> {
            for (Session session : held) {
                if (session != moved) {
                    assertThat(after[session.index]).isSameAs(week.before[session.index]);
                }
            }
        });
    }

    private static int start(@Nullable Stimulus[] at, Session session) {
        return Objects.requireNonNull(at[session.index]).start;
    }
}
