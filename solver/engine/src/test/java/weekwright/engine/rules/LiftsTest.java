package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.LiftLine;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.testing.Squad;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;

/** Lifts are filled in by what costs least along their line: found at once, and the same as by trying them all. */
class LiftsTest {
    private static final String FAMILY = "heavy-lower-knee";
    private static final List<String> LIFTS = List.of("back", "front", "box", "pause");

    /** Lines of up to seven sessions, some held, with a history, short limits and long ones. */
    @Test
    void what_is_filled_costs_the_least_of_all_and_comes_first_among_equals() {
        int choices = 0;
        int dear = 0;
        for (int seed = 1; seed <= 150; seed++) {
            Squad squad = random(new Random(seed));
            Problem problem = ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START);
            Stimulus[] at = standing(problem);
            List<Stimulus> placed = Arrays.stream(at).sorted(Stimulus::inOrder).toList();
            int[] filled = Lifts.of(problem, at);
            Slow slow = new Slow(problem, placed);
            int[] best = slow.leastAndFirst();
            List<Integer> exposures = new ArrayList<>();
            List<Integer> expected = new ArrayList<>();
            for (int i = 0; i < placed.size(); i++) {
                if (placed.get(i).dose != Dose.MICRO) {
                    exposures.add(filled[placed.get(i).index]);
                    expected.add(best[i]);
                }
            }
            assertThat(exposures).as("seed %d", seed).isEqualTo(expected);
            choices += exposures.size();
            dear += slow.cost(best) > 0 ? 1 : 0;
        }
        assertThat(choices).as("sessions filled").isGreaterThan(400);
        assertThat(dear).as("lines that cannot be filled for nothing").isBetween(30, 120);
    }

    @Test
    void a_micro_dose_keeps_to_the_lift_before_it() {
        Squad squad = squad().done(FAMILY, "2027-02-23T10:00")
                .lift("front-squat")
                .placed(FAMILY, "2027-03-02T10:00")
                .dose(Dose.MICRO)
                .placed(FAMILY, "2027-03-04T10:00");
        assertThat(lifts(squad)).containsExactly("front-squat", "front-squat");
        Squad held = squad().done(FAMILY, "2027-02-23T10:00")
                .lift("front-squat")
                .placed(FAMILY, "2027-03-02T10:00")
                .dose(Dose.MICRO)
                .lift("back-squat")
                .held("variant");
        assertThat(lifts(held)).containsExactly("back-squat");
    }

    @Test
    void novices_keep_to_the_first_lift_or_to_what_is_held() {
        Squad squad = squad().level(Level.NOVICE)
                .done(FAMILY, "2027-02-23T10:00")
                .lift("front-squat")
                .placed(FAMILY, "2027-03-02T10:00")
                .placed(FAMILY, "2027-03-04T10:00")
                .lift("box-squat")
                .held("variant");
        assertThat(lifts(squad)).containsExactly("back-squat", "box-squat");
    }

    @Test
    void what_is_judged_as_written_may_be_changed_by_a_search_unless_it_is_held() {
        Squad squad = squad().placed(FAMILY, "2027-03-02T10:00").lift("box-squat");
        assertThat(squad.judged().judged().plan().placements())
                .extracting(Placement::variant)
                .containsExactly("box-squat");
        assertThat(lifts(squad)).containsExactly("back-squat");
        assertThat(lifts(squad.held("variant"))).containsExactly("box-squat");
    }

    @Test
    void only_a_session_that_has_lifts_is_given_one() {
        Squad squad = squad().placed(FAMILY, "2027-03-02T10:00").placed("tempo-run", "2027-03-04T10:00");
        Problem problem = ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START);
        assertThat(Lifts.of(problem, standing(problem))).containsExactlyInAnyOrder(0, Lifts.NONE);
    }

    /** What would be if another lift took the place of the one that is held. */
    @Test
    void a_lift_that_is_tried_stands_in_for_the_one_that_is_held() {
        Squad squad =
                squad().placed(FAMILY, "2027-03-02T10:00").lift("box-squat").held("variant");
        Problem problem = ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START);
        for (int lift : new int[] {0, 1}) {
            Stimulus tried = standing(problem)[0].with(-1, lift);
            assertThat(Lifts.of(problem, new Stimulus[] {tried})).containsExactly(lift);
        }
    }

    /** A second week running costs 10, to leave a lift after one session 6 (expert proposals), unless that must not be. */
    @Test
    void what_must_be_weighs_more_than_what_is_wanted() {
        assertThat(lifts(secondWeek())).containsExactly("front-squat");
        assertThat(lifts(secondWeek().level("variant-churn", RuleLevel.MUST))).containsExactly("back-squat");
    }

    private static Squad secondWeek() {
        return squad().number("maximum-repeated", "trainedWeeks", 1)
                .done(FAMILY, "2027-02-23T10:00")
                .lift("back-squat")
                .placed(FAMILY, "2027-03-02T10:00");
    }

    /** In two thirds of a session, which count for no week: front squat stands where box squat does, but was not lifted last. */
    @Test
    void a_lift_that_was_just_begun_is_kept() {
        Squad squad = squad().done(FAMILY, "2027-02-23T10:00")
                .dose(Dose.REDUCED)
                .lift("box-squat")
                .placed(FAMILY, "2027-03-02T10:00");
        assertThat(lifts(squad)).containsExactly("box-squat");
    }

    /** Front squat and back squat filled last week; a second week running is one too many. */
    @Test
    void what_was_lifted_last_week_makes_room_for_what_was_not() {
        Squad squad = squad().number("maximum-repeated", "trainedWeeks", 1)
                .number("variant-churn", "exposures", 1)
                .done(FAMILY, "2027-02-23T10:00")
                .lift("front-squat")
                .done(FAMILY, "2027-02-26T10:00")
                .lift("back-squat")
                .placed(FAMILY, "2027-03-02T10:00");
        assertThat(lifts(squad)).containsExactly("box-squat");
    }

    @Test
    void a_line_that_stands_as_it_stood_is_known_again() {
        Squad squad = squad().placed(FAMILY, "2027-03-02T10:00");
        LiftLine line = ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START)
                .liftLines
                .get(0);
        LiftCount count = new LiftCount(line, new LiftCount.Limits(3, 2, LiftCount.Limits.NEVER));
        assertThat(count.copy().key(1)).isEqualTo(count.key(1)).isNotEqualTo(count.key(2));
    }

    /** Within seven days of 1 March, of 7 March and of 14 March, though front is held between. */
    @Test
    void the_tested_lift_comes_while_it_is_due() {
        Squad squad = squad().days(21)
                .aim(FAMILY, 0, 0, 0)
                .family(patch(List.of(new Variant("front", "front", false), new Variant("back", "back", true))))
                .rule("variant-churn", null, null, Map.of("exposures", 1, "testedWeeks", 1));
        for (String day : List.of("03", "07", "08", "14")) {
            squad.placed(FAMILY, "2027-03-" + day + "T10:00").dose(Dose.REDUCED);
            if (day.equals("08")) {
                squad.lift("front").held("variant");
            }
        }
        assertThat(lifts(squad)).containsExactly("front", "back", "front", "back");
    }

    /** The lifts that a search would give, in order of start. */
    private static List<String> lifts(Squad squad) {
        Problem problem = ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START);
        Stimulus[] at = standing(problem);
        int[] filled = Lifts.of(problem, at);
        return Arrays.stream(at)
                .sorted(Stimulus::inOrder)
                .map(placed -> java.util.Objects.requireNonNull(placed.family)
                        .family
                        .variants()
                        .get(filled[placed.index])
                        .id())
                .toList();
    }

    private static Stimulus[] standing(Problem problem) {
        return problem.sessions.stream().map(session -> session.before).toArray(Stimulus[]::new);
    }

    private static Squad random(Random random) {
        int lifts = 2 + random.nextInt(3);
        List<Variant> variants = new ArrayList<>();
        for (String lift : LIFTS.subList(0, lifts)) {
            variants.add(new Variant(lift, lift, random.nextInt(3) == 0));
        }
        int weeks = 1 + random.nextInt(4);
        Squad squad = squad().days(7 * weeks)
                .level(random.nextBoolean() ? Level.ADVANCED : Level.TRAINED)
                .family(patch(variants));
        if (random.nextInt(5) > 0) {
            squad.aim(FAMILY, 0, 0, 0);
        }
        squad.rule(
                "maximum-repeated",
                null,
                null,
                Map.of("trainedWeeks", 1 + random.nextInt(4), "advancedWeeks", 1 + random.nextInt(2)));
        squad.rule(
                "variant-churn",
                null,
                random.nextBoolean() ? null : 2.0,
                Map.of(
                        "exposures",
                        1 + random.nextInt(4),
                        "advancedExposures",
                        1 + random.nextInt(2),
                        "testedWeeks",
                        1 + random.nextInt(3)));
        for (int i = random.nextInt(4); i > 0; i--) {
            squad.done(FAMILY, day(random, -28, -1)).dose(dose(random));
            if (random.nextInt(4) > 0) {
                squad.lift(LIFTS.get(random.nextInt(lifts)));
            }
        }
        int most = lifts == 2 ? 7 : lifts == 3 ? 6 : 5;
        for (int i = 1 + random.nextInt(most); i > 0; i--) {
            squad.placed(FAMILY, day(random, 0, 7 * weeks - 1)).dose(dose(random));
            if (random.nextInt(5) == 0) {
                squad.lift(LIFTS.get(random.nextInt(lifts))).held("variant");
            }
        }
        return squad;
    }

    private static String day(Random random, int from, int to) {
        int day = from + random.nextInt(to - from + 1);
        return LocalDate.parse("2027-03-01").plusDays(day) + "T" + (10 + random.nextInt(8)) + ":00";
    }

    private static Dose dose(Random random) {
        return random.nextInt(3) > 0 ? Dose.FULL : Dose.values()[random.nextInt(3)];
    }

    private static FamilyPatch patch(List<Variant> variants) {
        return new FamilyPatch(
                FAMILY, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                variants, null, null, null);
    }

    /** Tries everything, and counts each way through from the rules' own words. */
    private static final class Slow {
        private record Exposure(int day, boolean full, boolean placed, int lift) {
            int week() {
                return Math.floorDiv(day, 7);
            }
        }

        private final Problem problem;
        private final LiftLine line;
        private final List<Stimulus> placed;

        Slow(Problem problem, List<Stimulus> placed) {
            this.problem = problem;
            this.placed = placed;
            line = problem.liftLines.get(0);
        }

        int[] leastAndFirst() {
            int[] now = new int[placed.size()];
            int[] best = null;
            long least = Long.MAX_VALUE;
            do {
                if (allowed(now) && cost(now) < least) {
                    least = cost(now);
                    best = now.clone();
                }
            } while (next(now));
            return java.util.Objects.requireNonNull(best);
        }

        /** The next way through; the last session turns fastest, so that earlier sessions take the first lifts first. */
        private boolean next(int[] now) {
            for (int i = now.length - 1; i >= 0; i--) {
                now[i] = (now[i] + 1) % line.variants();
                if (now[i] > 0) {
                    return true;
                }
            }
            return false;
        }

        private boolean allowed(int[] now) {
            for (int i = 0; i < now.length; i++) {
                Session session = problem.sessions.get(placed.get(i).index);
                boolean held = session.heldVariant >= 0 && session.heldVariant != now[i];
                // A micro dose counts nowhere: one lift stands for all.
                boolean twin = placed.get(i).dose == Dose.MICRO && session.heldVariant < 0 && now[i] > 0;
                if (held || twin) {
                    return false;
                }
            }
            return true;
        }

        long cost(int[] lifts) {
            List<Exposure> line = exposures(lifts);
            double churnWeight = this.line.group.settings.weightMilli("variant-churn") / 1000.0;
            return Math.round(10 * repeated(line)
                    + churnWeight * (6 * leftTooSoon(line) + (this.line.aim() == null ? 0 : 8 * untested(line))));
        }

        private List<Exposure> exposures(int[] lifts) {
            List<Exposure> all = new ArrayList<>();
            for (int i = 0; i < line.past.size(); i++) {
                Stimulus past = line.past.get(i);
                all.add(new Exposure(past.day, past.dose == Dose.FULL, false, line.pastVariants[i]));
            }
            for (int i = 0; i < lifts.length; i++) {
                Stimulus one = placed.get(i);
                if (one.dose != Dose.MICRO) {
                    all.add(new Exposure(one.day, one.dose == Dose.FULL, true, lifts[i]));
                }
            }
            return all;
        }

        private int repeated(List<Exposure> all) {
            int most = number("maximum-repeated", advanced() ? "advancedWeeks" : "trainedWeeks");
            List<Integer> weeks = new ArrayList<>(
                    new TreeSet<>(all.stream().map(Exposure::week).toList()));
            int beyond = 0;
            for (int lift = 0; lift < line.variants(); lift++) {
                for (int w = 0; w < weeks.size(); w++) {
                    int running = 0;
                    while (running <= w && atFullDose(all, weeks.get(w - running), lift)) {
                        running++;
                    }
                    beyond += weeks.get(w) >= 0 && running > most ? 1 : 0;
                }
            }
            return beyond;
        }

        private static boolean atFullDose(List<Exposure> all, int week, int lift) {
            return all.stream().anyMatch(one -> one.week() == week && one.full() && one.lift() == lift);
        }

        private int leftTooSoon(List<Exposure> all) {
            int fewest = number("variant-churn", advanced() ? "advancedExposures" : "exposures");
            int left = 0;
            for (int i = 1; i < all.size(); i++) {
                int before = all.get(i - 1).lift();
                if (all.get(i).lift() < 0 || before < 0 || all.get(i).lift() == before) {
                    continue;
                }
                int length = 0;
                boolean ours = all.get(i).placed();
                for (int j = i - 1; j >= 0 && all.get(j).lift() == before; j--) {
                    length++;
                    ours |= all.get(j).placed();
                }
                left += ours && length < fewest ? 1 : 0;
            }
            return left;
        }

        private int untested(List<Exposure> all) {
            boolean any = false;
            for (boolean one : line.tested) {
                any |= one;
            }
            int since = 0;
            int late = 0;
            for (Exposure one : all) {
                if (one.lift() >= 0 && line.tested[one.lift()]) {
                    late += one.placed() && one.day() - since > 7 * number("variant-churn", "testedWeeks") ? 1 : 0;
                    since = one.day();
                }
            }
            late += problem.calendar.days() - 1 - since > 7 * number("variant-churn", "testedWeeks") ? 1 : 0;
            return any ? late : 0;
        }

        private boolean advanced() {
            return line.group.group.level() == Level.ADVANCED;
        }

        private int number(String rule, String name) {
            return (int) line.group.settings.number(rule, name);
        }
    }
}
