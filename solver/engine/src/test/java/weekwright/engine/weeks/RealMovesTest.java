package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Comparisons;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.change.FixtureMoved;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SeasonFile;
import weekwright.scenarios.SeasonFile.Match;

/**
 * 79 matches that really moved, each in the fortnight of an invented squad that was planned for the old date. What has to
 * move moves, and hardly anything else.
 */
class RealMovesTest {
    private static final long MOVES = 3_000;
    private static final int DAYS = 14;

    /**
     * A move and what came of it.
     *
     * @param sessions sessions that no longer lie as they were, or not at all
     */
    private record Moved(RealMove move, Plan before, Plan after, int sessions, int fewest, int mustsOfPins) {}

    private static final Map<Moment, Plan> PLANNED = new LinkedHashMap<>();
    private static List<Moved> moved = List.of();

    @BeforeAll
    static void each_move_is_met_with_another_plan() {
        Map<RealMove, Moved> known = new LinkedHashMap<>();
        List<Moved> all = new ArrayList<>();
        for (RealMove move : RealMove.all()) {
            if (move.kind() == RealMove.Kind.MOVE) {
                all.add(known.computeIfAbsent(move, RealMovesTest::met));
            }
        }
        moved = all;
    }

    /** Matches on Saturdays at three, but for the days round the one that moves. */
    private static Scenario scenario(Moment kickOff) {
        List<Match> matches = new ArrayList<>();
        LocalDate saturday = kickOff.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.SATURDAY));
        for (int week = -6; week <= 4; week++) {
            LocalDate day = saturday.plusWeeks(week);
            if (Math.abs(day.toEpochDay() - kickOff.date().toEpochDay()) > 2) {
                matches.add(new Match(day, LocalTime.of(15, 0), "league-1", week % 2 == 0));
            }
        }
        matches.add(new Match(kickOff.date(), kickOff.local().toLocalTime(), "league-1", true));
        matches.sort(java.util.Comparator.comparing(Match::date));
        LocalDate monday = kickOff.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new SeasonFile("made-up", matches).stretch(monday, DAYS);
    }

    private static Moved met(RealMove move) {
        Scenario old = scenario(move.from());
        Plan before = PLANNED.computeIfAbsent(move.from(), kickOff -> pinned(planned(old, null)));
        Scenario now = new FixtureMoved("match-" + move.before(), move.to()).after(old);
        Plan after = planned(now, before);
        int sessions = (int) Comparisons.of(now, before, after).sessions().stream()
                .filter(change -> change.before() != null)
                .filter(change -> !List.of("led", "varied").containsAll(change.what()))
                .count();
        Taken taken = new Taken(ProblemBuilder.of(now, before, PlanUse.START));
        return new Moved(move, before, after, sessions, taken.fewest(musts(after), before), taken.mustsOfPins());
    }

    /** The plan before, under the new kick-off, with some of its sessions taken out. */
    private record Taken(Problem problem) {
        int mustsOfPins() {
            return musts(session -> session.stays);
        }

        /**
         * The fewest sessions that have to go from where they are, so that no more musts are broken: all sets of those that
         * are named where one is broken, the smallest first. Fewer cannot move, whatever is owed then.
         */
        int fewest(int musts, Plan before) {
            if (musts(session -> true) <= musts) {
                return 0;
            }
            List<Session> suspects = suspects(musts, before);
            return IntStream.range(0, 1 << suspects.size())
                    .filter(set -> musts(session -> !isIn(suspects, set, session)) <= musts)
                    .map(Integer::bitCount)
                    .min()
                    .orElseThrow();
        }

        /** Those named where a must is broken; where one is broken without them too, those named then as well. */
        private List<Session> suspects(int musts, Plan before) {
            Set<String> named = new HashSet<>();
            Plan left = before;
            boolean more;
            do {
                more = named.addAll(namedByMusts(left));
                left = left.withPlacements(left.placements().stream()
                        .filter(placed -> !named.contains(placed.id()))
                        .toList());
            } while (more && musts(session -> !named.contains(session.id)) > musts);
            return problem.sessions.stream()
                    .filter(session -> named.contains(session.id) && !session.stays)
                    .toList();
        }

        private List<String> namedByMusts(Plan plan) {
            return Engine.judgeWithoutRemedies(problem.scenario, plan).plan().findings().stream()
                    .filter(finding -> finding.level() == RuleLevel.MUST)
                    .flatMap(finding -> finding.placements().stream())
                    .toList();
        }

        private static boolean isIn(List<Session> suspects, int set, Session session) {
            int index = suspects.indexOf(session);
            return index >= 0 && (set & 1 << index) != 0;
        }

        private int musts(Predicate<Session> kept) {
            @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
            problem.sessions.stream().filter(kept).forEach(session -> at[session.index] = session.before);
            return (int) Judge.of(problem, at).total().must / 10;
        }
    }

    private static Plan planned(Scenario scenario, Plan from) {
        return Engine.propose(new Proposal(scenario, from, Budget.moves(MOVES), 1, 2, null), Progress.SILENT)
                .plan();
    }

    /** The coach holds the first strength session and the last of all. */
    private static Plan pinned(Plan plan) {
        List<Placement> sessions = plan.placements();
        Placement strength = sessions.stream()
                .filter(session -> session.family().equals("upper-strength"))
                .findFirst()
                .orElseThrow();
        Placement last = sessions.get(sessions.size() - 1);
        return plan.withPlacements(sessions.stream()
                .map(session -> session == strength || session == last ? held(session) : session)
                .toList());
    }

    private static Placement held(Placement p) {
        return p.withPin(new Pin(true, false, false, false, false, false, false, List.of()));
    }

    private static int musts(Plan plan) {
        return (int) Objects.requireNonNull(plan.totals()).must();
    }

    // --- the rows ---

    @Test
    void the_rows_are_79_moves_and_three_kinds_that_are_none() {
        Map<RealMove.Kind, Long> kinds =
                RealMove.all().stream().collect(Collectors.groupingBy(RealMove::kind, Collectors.counting()));
        assertThat(kinds)
                .containsOnly(
                        Map.entry(RealMove.Kind.MOVE, 79L),
                        Map.entry(RealMove.Kind.FIRST_TIME, 146L),
                        Map.entry(RealMove.Kind.WRONG_YEAR, 12L),
                        Map.entry(RealMove.Kind.MONTH_BACK, 1L));
        assertThat(moved).hasSize(79);
    }

    // --- what comes of them ---

    /** What is held may break something by itself; nothing besides is broken. */
    @Test
    void nothing_is_broken_that_need_not_be() {
        assertThat(moved)
                .allSatisfy(one ->
                        assertThat(musts(one.after())).as("%s", one.move()).isEqualTo(one.mustsOfPins()));
    }

    @Test
    void what_is_pinned_stays() {
        assertThat(moved)
                .allSatisfy(one -> one.before().placements().stream()
                        .filter(session -> session.pin() != null)
                        .forEach(session -> assertThat(one.after().placements())
                                .as("%s", one.move())
                                .anySatisfy(now -> {
                                    assertThat(now.id()).isEqualTo(session.id());
                                    assertThat(now.start()).isEqualTo(session.start());
                                })));
    }

    /** Of 18 sessions, pinned ones included; see DEVELOPERS.md. */
    @Test
    void one_session_moves_as_a_rule_and_six_at_worst() {
        int[] sessions = moved.stream().mapToInt(Moved::sessions).sorted().toArray();
        assertThat(sessions[sessions.length / 2]).as("median").isLessThanOrEqualTo(1);
        assertThat(sessions[sessions.length - 1]).as("worst").isLessThanOrEqualTo(6);
    }

    @Test
    void at_most_one_session_moves_that_need_not() {
        assertThat(moved)
                .allSatisfy(one ->
                        assertThat(one.sessions()).as("%s", one.move()).isBetween(one.fewest(), one.fewest() + 1));
    }

    @Test
    void nothing_moves_where_a_match_stays_where_it_is() {
        RealMove move = moved.get(0).move();
        Scenario same = new FixtureMoved("match-" + move.before(), move.from()).after(scenario(move.from()));
        Plan before = Objects.requireNonNull(PLANNED.get(move.from()));
        assertThat(planned(same, before).placements()).isEqualTo(before.placements());
    }
}
