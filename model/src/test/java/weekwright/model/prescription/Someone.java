package weekwright.model.prescription;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** Marks, groups and sessions to try numbers on. */
final class Someone {
    static final LocalDate DAY = LocalDate.of(2027, 2, 9);

    private Someone() {}

    static Mark sprint(double metres, double seconds, SprintStart start, Timing timing, int daysAgo) {
        return new Mark(Measure.SPRINT, metres, seconds, start, timing, null, null, null, null, DAY.minusDays(daysAgo));
    }

    static Mark sprint(double metres, double seconds) {
        return sprint(metres, seconds, SprintStart.STANDING, Timing.ELECTRONIC, 10);
    }

    static Mark flying(double metres, double seconds) {
        return sprint(metres, seconds, SprintStart.FLYING, Timing.ELECTRONIC, 10);
    }

    static Mark lift(String lift, double kg, int repetitions, int daysAgo) {
        return new Mark(Measure.LIFT, null, null, null, null, lift, kg, repetitions, null, DAY.minusDays(daysAgo));
    }

    static Mark aerobic(double metresPerSecond) {
        return new Mark(
                Measure.AEROBIC_SPEED, null, null, null, null, null, null, null, metresPerSecond, DAY.minusDays(5));
    }

    static Marks marks(Mark... marks) {
        return new Marks(List.of(marks), DAY, RepMax.EPLEY);
    }

    static Group group(GroupKind kind, Phase phase, Level level) {
        return group("squad", kind, phase, level);
    }

    static Group group(String id) {
        return group(id, GroupKind.FIELD, Phase.IN_SEASON, Level.TRAINED);
    }

    private static Group group(String id, GroupKind kind, Phase phase, Level level) {
        return new Group(
                id, "Squad", kind, phase, level, 20, 0.8, List.of(), List.of(), null, List.of(), Map.of(), List.of());
    }

    static Work work(String family, Dose dose, double week, double most, @Nullable Aim aim, Group group) {
        return new Work(
                Catalogue.builtIn().family(family),
                group,
                dose,
                week,
                aim,
                null,
                RuleSettings.of(Rulebook.builtIn(), Map.of(), Map.of()),
                most,
                true);
    }

    static Work work(String family, Dose dose) {
        return work(family, dose, 1, 1, null, group(GroupKind.FIELD, Phase.IN_SEASON, Level.TRAINED));
    }
}
