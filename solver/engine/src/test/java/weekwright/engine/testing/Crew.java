package weekwright.engine.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Metres;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.Window;

/** A group and its aims, as they are told. */
final class Crew {
    /** An aim in the making. */
    static final class Goal {
        final String family;
        final PerWeek perWeek;
        Priority priority = Priority.KEY;
        Share whom = Share.ALL;
        List<Dose> doses = List.of(Dose.FULL);

        @Nullable
        Prefer prefer;

        boolean microCounts;
        boolean learning;
        boolean power;
        List<Double> weeks = List.of();

        @Nullable
        Metres metres;

        @Nullable
        Integer minutes;

        Goal(String family, PerWeek perWeek) {
            this.family = family;
            this.perWeek = perWeek;
        }

        Aim aim(Naming naming) {
            Prefer preferred =
                    prefer == null ? null : new Prefer(naming.ids(prefer.facilities()), prefer.from(), prefer.to());
            return new Aim(
                    family,
                    whom,
                    perWeek,
                    priority,
                    doses,
                    preferred,
                    microCounts,
                    learning,
                    power,
                    weeks,
                    minutes,
                    metres);
        }
    }

    final String id;
    int heads = 10;
    double quorum = Group.USUAL_QUORUM;
    GroupKind kind = GroupKind.FIELD;
    Phase phase = Phase.IN_SEASON;
    Level level = Level.TRAINED;

    @Nullable
    PerWeek highDays;

    final List<Window> windows = new ArrayList<>();
    final List<Away> away = new ArrayList<>();
    final List<Goal> goals = new ArrayList<>();
    final Map<String, RuleSetting> rules = new TreeMap<>();
    final List<String> packs = new ArrayList<>();

    Crew(String id) {
        this.id = id;
    }

    Group group(Naming naming) {
        return new Group(
                naming.id(id),
                Naming.label(id),
                kind,
                phase,
                level,
                heads,
                quorum,
                windows,
                away,
                highDays,
                naming.listed(goals, goal -> goal.aim(naming)),
                rules,
                packs);
    }
}
