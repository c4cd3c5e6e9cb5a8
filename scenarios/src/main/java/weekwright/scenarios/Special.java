package weekwright.scenarios;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;

/** What sets one athlete of a made-up squad apart from the rest, so that the squad falls into several cohorts. */
enum Special {
    /** Plays no fixture. */
    OUT(0),
    /** Comes on late. */
    SHORT(20),
    /** Plays a half. */
    PART(45),
    /** Restricted to light work on some pathways. */
    LIGHT(90),
    /** Restricted to micro doses. */
    MICRO(90),
    /** Restricted to nothing on some pathways, and plays no fixture. */
    NONE(0),
    /** Missed some of the training before the plan. */
    MISSED(90);

    private static final List<List<Pathway>> RESTRICTED = List.of(
            List.of(Pathway.MAX_VELOCITY_SPRINT),
            List.of(Pathway.KNEE_DOMINANT, Pathway.JUMP_LANDING),
            List.of(Pathway.HIP_DOMINANT, Pathway.MAX_VELOCITY_SPRINT),
            List.of(Pathway.UPPER_PUSH));

    private final int minutes;

    Special(int minutes) {
        this.minutes = minutes;
    }

    /** Minutes of each fixture played. */
    int minutes() {
        return minutes;
    }

    /** Whether fixtures are played in full, like everybody else. */
    boolean playsInFull() {
        return minutes == 90;
    }

    /** The restriction that this athlete carries for some days of the plan or before it, if any. */
    List<Restriction> restrictions(LocalDate firstDay, int days, Random random) {
        RestrictionLimit limit = switch (this) {
            case LIGHT -> RestrictionLimit.LIGHT;
            case MICRO -> RestrictionLimit.MICRO;
            case NONE -> RestrictionLimit.NONE;
            case OUT, SHORT, PART, MISSED -> null;
        };
        if (limit == null) {
            return List.of();
        }
        List<Pathway> pathways = RESTRICTED.get(random.nextInt(RESTRICTED.size()));
        LocalDate from = firstDay.plusDays(random.nextInt(days + 3) - 3L);
        return List.of(new Restriction(pathways, limit, from, from.plusDays(random.nextInt(10)), "clinician"));
    }
}
