package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.model.prescription.Someone.aerobic;
import static weekwright.model.prescription.Someone.flying;
import static weekwright.model.prescription.Someone.lift;
import static weekwright.model.prescription.Someone.marks;
import static weekwright.model.prescription.Someone.sprint;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.prescription.Target.Kind;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** The numbers of an athlete. */
class TargetsTest {
    private static final SprintStart STANDING = SprintStart.STANDING;

    private static Content line(
            ContentKind kind, Double metres, Integer seconds, SprintStart start, Double from, Double to, String lift) {
        return new Content(
                kind, "line", List.of(), List.of(), List.of(), List.of(), 3, 4, seconds, metres, 0, start, from, to,
                null, null, 2, lift, null, null, null, null);
    }

    private static Content run(double metres, double from) {
        return line(ContentKind.SPRINT, metres, null, STANDING, from, null, null);
    }

    private static Content squat(double from, double to) {
        return line(ContentKind.LIFT, null, null, null, from, to, "back-squat");
    }

    private static Targets metric(Level level, Mark... marks) {
        return new Targets(marks(marks), level, Units.METRIC);
    }

    /** By definition time = best / share: 4.12 / 0.95 = 4.3368, / 0.90 = 4.5778. */
    @Test
    void a_window_never_lets_a_run_in_that_is_too_slow() {
        Target target = metric(Level.TRAINED, sprint(30, 4.12)).of(run(30, 95), null);

        assertThat(target.kind()).isEqualTo(Kind.SECONDS);
        assertThat(target.from()).isNull();
        assertThat(target.to()).isEqualTo(4.33);
        assertThat(target.limit()).isEqualTo(4.57);
        assertThat(target.basis()).isEqualTo("30 m 4.12 s");
    }

    /** 0.98 / 0.95 = 1.0316. */
    @Test
    void a_flying_window() {
        Content fly = line(ContentKind.SPRINT, 10.0, null, SprintStart.FLYING, 95.0, null, null);

        assertThat(metric(Level.TRAINED, flying(10, 0.98)).of(fly, null).to()).isEqualTo(1.03);
    }

    /** Top speed 10 m/s: 100 m in 10 s; / 0.70 = 14.2857, / 0.60 = 16.6667. */
    @Test
    void a_tempo_run_goes_by_top_speed_and_asks_for_nothing_faster() {
        Content tempo = line(ContentKind.RUN, 100.0, null, null, 60.0, 70.0, null);

        Target target = metric(Level.TRAINED, flying(10, 1.00)).of(tempo, null);

        assertThat(target.from()).isEqualTo(14.29);
        assertThat(target.to()).isEqualTo(16.66);
        assertThat(target.limit()).isNull();
    }

    /** 4.4 m/s for 15 s: 72.6 m at 110 %, 79.2 m at 120 % (Baker, UKSCA, seen in secondary pages). */
    @Test
    void a_run_by_aerobic_speed_is_as_long_as_the_share_allows_and_never_longer() {
        Content shuttle = line(ContentKind.RUN, null, 15, null, 110.0, 120.0, null);

        Target target = metric(Level.TRAINED, aerobic(4.4)).of(shuttle, null);

        assertThat(target.kind()).isEqualTo(Kind.LENGTH);
        assertThat(target.from()).isEqualTo(73);
        assertThat(target.to()).isEqualTo(79);
        Target yards = new Targets(marks(aerobic(4.4)), Level.TRAINED, Units.IMPERIAL).of(shuttle, null);
        assertThat(yards.to()).as("79.2 m are 86.6 yd").isEqualTo(86);
    }

    /** 142.5 kg at 85 % is 121.125 kg. Nearest, ties down: expert proposal. */
    @Test
    void kilograms_are_what_the_bar_makes() {
        Mark maximum = lift("back-squat", 142.5, 1, 3);

        Target target = metric(Level.TRAINED, maximum).of(squat(85, 85), "back-squat");

        assertThat(target.from()).isEqualTo(120.0);
        assertThat(target.to()).isEqualTo(120.0);
        assertThat(Units.METRIC.plates().side(120)).isEqualTo(50.0);
        assertThat(metric(Level.TRAINED, lift("back-squat", 125, 1, 3))
                        .of(squat(85, 85), "back-squat")
                        .to())
                .as("106.25 kg lies between 105 and 107.5")
                .isEqualTo(105.0);
    }

    @Test
    void below_the_bar_there_are_words() {
        Target target = metric(Level.NOVICE, lift("back-squat", 22, 1, 3)).of(squat(80, 82.5), "back-squat");

        assertThat(target.kind()).isEqualTo(Kind.WORDS);
        assertThat(target.words()).isEqualTo("lighter than the bar: dumbbells, by feel: 2 more could be done");
    }

    @Test
    void without_a_mark_there_are_words() {
        Targets none = metric(Level.TRAINED);

        assertThat(none.of(run(30, 95), null).words()).isEqualTo("full speed, relaxed");
        assertThat(none.of(run(30, 90), null).words()).isEqualTo("fast, a little held back");
        assertThat(none.of(squat(80, 85), "back-squat").words()).isEqualTo("by feel: 2 more could be done");
        assertThat(none.of(line(ContentKind.RUN, null, 15, null, 110.0, 120.0, null), null)
                        .words())
                .isEqualTo("hard: a few words only");
        assertThat(none.of(run(30, 95), null).flags()).containsExactly(Target.NO_MARK);
    }

    @Test
    void what_is_old_estimated_or_timed_by_hand_says_so() {
        assertThat(metric(Level.TRAINED, sprint(30, 4.12, STANDING, Timing.HAND, 100))
                        .of(run(30, 95), null)
                        .flags())
                .containsExactly("old mark", "by hand: time by hand");
        assertThat(metric(Level.TRAINED, lift("back-squat", 100, 8, 3))
                        .of(squat(80, 85), "back-squat")
                        .flags())
                .containsExactly("rough estimate");
        Target tooOld = metric(Level.TRAINED, sprint(30, 4.12, STANDING, Timing.ELECTRONIC, 300))
                .of(run(30, 95), null);
        assertThat(tooOld.words()).isEqualTo("full speed, relaxed");
        assertThat(tooOld.flags()).containsExactly("mark too old");
    }

    @Test
    void a_faster_best_never_makes_a_target_easier() {
        Random random = new Random(42);
        for (int i = 0; i < 3_000; i++) {
            double best = Math.round((3.8 + 2 * random.nextDouble()) * 100) / 100.0;
            double from = 80 + random.nextInt(19);
            double faster = Math.round((best - 0.01 * random.nextInt(10)) * 100) / 100.0;
            assertThat(slowest(faster, from))
                    .as("%s against %s at %s", faster, best, from)
                    .isLessThanOrEqualTo(slowest(best, from));
        }
    }

    private static double slowest(double best, double from) {
        return Objects.requireNonNull(
                metric(Level.TRAINED, sprint(30, best)).of(run(30, from), null).to());
    }

    @Test
    void a_hand_timed_best_never_makes_a_target_easier_than_the_electronic_one() {
        Random random = new Random(7);
        for (int i = 0; i < 2_000; i++) {
            Mark electronic = sprint(30, Math.round((3.8 + random.nextDouble()) * 100) / 100.0);
            Mark hand = sprint(30, Math.round((3.6 + 2 * random.nextDouble()) * 100) / 100.0, STANDING, Timing.HAND, 1);
            Target alone = metric(Level.TRAINED, electronic).of(run(30, 95), null);

            assertThat(metric(Level.TRAINED, electronic, hand).of(run(30, 95), null))
                    .isEqualTo(alone);
        }
    }

    @ParameterizedTest
    @EnumSource
    void weights_can_always_be_loaded_and_never_pass_the_share(Units units) {
        Random random = new Random(11);
        for (int i = 0; i < 3_000; i++) {
            double kg = 40 + 260 * random.nextDouble();
            double from = 60 + random.nextInt(30);
            double to = from + random.nextInt(10);
            Level level = Level.values()[random.nextInt(3)];
            Target target =
                    new Targets(marks(lift("back-squat", kg, 1, 3)), level, units).of(squat(from, to), "back-squat");
            if (target.kind() == Kind.WORDS) {
                assertThat(units.ofKilograms(kg) * to / 100)
                        .isLessThan(units.plates().bar());
                continue;
            }
            assertThat(units.plates().makes(Objects.requireNonNull(target.from())))
                    .isTrue();
            assertThat(units.plates().makes(Objects.requireNonNull(target.to())))
                    .isTrue();
            assertThat(target.to()).isLessThanOrEqualTo(units.ofKilograms(kg) * to / 100 + 1e-9);
            assertThat(target.from()).isLessThanOrEqualTo(target.to());
            if (level == Level.NOVICE || from > 85) {
                assertThat(target.from()).isLessThanOrEqualTo(units.ofKilograms(kg) * from / 100 + 1e-9);
            }
        }
    }

    @Test
    void a_stronger_athlete_never_gets_less() {
        for (double kg = 60; kg < 250; kg += 0.5) {
            double less = heaviest(kg);
            assertThat(heaviest(kg + 0.5)).isGreaterThanOrEqualTo(less);
        }
    }

    private static double heaviest(double kg) {
        return Objects.requireNonNull(metric(Level.TRAINED, lift("back-squat", kg, 1, 3))
                .of(squat(80, 85), "back-squat")
                .to());
    }

    /** 150 kg at 82.5 to 87.5 %: 122.5 to 130; of 130 kg 50 % 65, 70 % 91, 80 % 104. */
    @Test
    void warm_up_sets_rise_to_the_day_s_weight() {
        List<Target> targets =
                metric(Level.TRAINED, lift("back-squat", 150, 1, 3)).of(Someone.work("heavy-lower-knee", Dose.FULL));

        assertThat(targets.stream()
                        .filter(target -> target.kind() == Kind.WEIGHT)
                        .map(Target::to))
                .containsExactly(20.0, 65.0, 90.0, 105.0, 130.0);
    }

    /** 105 kg at 85 % are 89.25: 90 is nearest, 87.5 the next below; at 90 % 94.5: 92.5. */
    @Test
    void at_85_per_cent_a_weight_is_the_nearest_and_above_it_and_for_novices_the_next_below() {
        Mark single = lift("back-squat", 105, 1, 10);

        assertThat(metric(Level.TRAINED, single).of(squat(85, 90), "back-squat").from())
                .isEqualTo(90);
        assertThat(metric(Level.TRAINED, single).of(squat(85, 90), "back-squat").to())
                .isEqualTo(92.5);
        assertThat(metric(Level.NOVICE, single).of(squat(85, 90), "back-squat").from())
                .isEqualTo(87.5);
        assertThat(metric(Level.TRAINED, single).of(squat(86, 90), "back-squat").from())
                .as("90.3")
                .isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource({
        "95, 'full speed, relaxed'", "94.9, 'fast, a little held back'", "88, 'fast, a little held back'",
        "87.9, quick and smooth", "75, quick and smooth", "74.9, easy: able to talk after it"
    })
    void how_fast_a_share_of_the_best_feels(double percent, String words) {
        assertThat(Targets.speedWords(percent)).isEqualTo(words);
    }

    @Test
    void without_aerobic_speed_a_run_at_all_of_it_is_hard_and_one_below_steady() {
        Content all = line(ContentKind.RUN, null, 60, null, 100.0, null, null);
        Content less = line(ContentKind.RUN, null, 60, null, 99.0, null, null);

        assertThat(metric(Level.TRAINED).of(all, null).words()).isEqualTo("hard: a few words only");
        assertThat(metric(Level.TRAINED).of(less, null).words()).isEqualTo("steady: short sentences");
    }

    @Test
    void without_a_weight_of_the_day_warm_up_sets_have_none_either() {
        List<Target> unknown = metric(Level.TRAINED).of(Someone.work("heavy-lower-knee", Dose.FULL));

        assertThat(unknown).noneMatch(target -> target.kind() == Kind.WEIGHT);
    }
}
