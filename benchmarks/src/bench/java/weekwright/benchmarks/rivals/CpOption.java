package weekwright.benchmarks.rivals;

import com.google.ortools.sat.BoolVar;
import java.util.Objects;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;

/** Whether a session of an aim lies at an option in a week; which of the aim's sessions it is makes no difference. */
final class CpOption {
    private final AimWeek aim;
    private final Stimulus at;
    private final BoolVar placed;

    CpOption(AimWeek aim, Stimulus at, BoolVar placed) {
        this.aim = aim;
        this.at = at;
        this.placed = placed;
    }

    AimWeek aim() {
        return aim;
    }

    Stimulus at() {
        return at;
    }

    BoolVar placed() {
        return placed;
    }

    FamilyInfo family() {
        return Objects.requireNonNull(at.family);
    }
}
