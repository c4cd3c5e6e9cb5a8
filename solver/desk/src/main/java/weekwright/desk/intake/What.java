package weekwright.desk.intake;

import java.util.Arrays;
import java.util.List;
import weekwright.desk.app.InputFault;
import weekwright.model.Ids;
import weekwright.model.Nearest;

/** What the entries of a file are to be taken as. */
public enum What {
    /** Matches and meets of a group. */
    FIXTURES,
    /** Hours in which a group or an athlete is free, a staff member is there, or a facility is open. */
    WINDOWS,
    /** Spans in which a facility is closed. */
    CLOSURES,
    /** Spans in which a group or an athlete is away. */
    AWAY,
    /** People of the squad. */
    ATHLETES,
    /** Measured bests of athletes. */
    MARKS,
    /** Minutes that athletes have played in fixtures. */
    MINUTES,
    /** Minutes that athletes are expected to play in fixtures. */
    EXPECTED;

    /** The name as it is given. */
    public String id() {
        return Ids.of(this);
    }

    /** Whether it lies in a calendar, and not only in tables. */
    public boolean isInCalendars() {
        return compareTo(AWAY) <= 0;
    }

    /**
     * What a name stands for.
     *
     * @throws InputFault when it stands for nothing
     */
    public static What named(String name) {
        List<String> known = Arrays.stream(values()).map(What::id).toList();
        return Arrays.stream(values())
                .filter(what -> what.id().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new InputFault("nothing is taken as \"" + name + "\": " + Nearest.hint(name, known)));
    }
}
