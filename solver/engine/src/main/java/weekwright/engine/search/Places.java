package weekwright.engine.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** A session's options on the coarse grid, by day and clock time. */
final class Places {
    private static final int DAYS = 7;

    private final Stimulus[] options;
    private final @Nullable Stimulus before;
    private final int firstDay;
    private final int[] dayStarts = new int[DAYS + 1];
    private final int[] clock;

    Places(Judge judge, Problem problem, Session session) {
        options = worthTrying(judge, session);
        Arrays.sort(options, Comparator.comparingInt((Stimulus o) -> o.start).thenComparingInt(o -> o.option));
        boolean goesBack = problem.stayClose != null && Arrays.asList(options).contains(session.before);
        before = goesBack ? session.before : null;
        firstDay = 7 * session.week;
        clock = new int[options.length];
        int at = 0;
        for (int day = 0; day < DAYS; day++) {
            dayStarts[day] = at;
            while (at < options.length && options[at].day <= firstDay + day) {
                clock[at] = problem.calendar.clockMinutes(options[at].start);
                at++;
            }
        }
        dayStarts[DAYS] = at;
    }

    /** Options that break no must by themselves; all where there is none such. */
    static Stimulus[] worthTrying(Judge judge, Session session) {
        Stimulus[] some = Arrays.stream(session.coarse)
                .filter(option -> !judge.breaksMustAlone(session, option))
                .toArray(Stimulus[]::new);
        return some.length > 0 ? some : session.coarse.clone();
    }

    /** Where it lay in the plan to stay close to, or null where it may lie there no more or lay nowhere. */
    @Nullable
    Stimulus before() {
        return before;
    }

    Stimulus any(RandomGenerator random) {
        return options[random.nextInt(options.length)];
    }

    /** Any option on a day, or null. */
    @Nullable
    Stimulus onDay(int day, RandomGenerator random) {
        int from = from(day);
        int to = to(day);
        return from >= to ? null : options[from + random.nextInt(to - from)];
    }

    /** The option most like another on a day and clock time: same place and dose if there is one; null if none. */
    @Nullable
    Stimulus like(Stimulus other, int day, int clockMinutes) {
        Stimulus found = null;
        for (int i = from(day); i < to(day); i++) {
            if (clock[i] == clockMinutes) {
                Stimulus option = options[i];
                if (option.facility == other.facility && option.dose == other.dose) {
                    return option;
                }
                if (found == null || option.dose == other.dose) {
                    found = option;
                }
            }
        }
        return found;
    }

    /** The first option on another's day that begins no earlier than a minute, at best with the same dose and place; or null. */
    @Nullable
    Stimulus from(Stimulus other, int minute) {
        Stimulus found = null;
        for (int i = from(other.day); i < to(other.day); i++) {
            Stimulus option = options[i];
            if (found != null && option.start > found.start) {
                break;
            }
            if (option.start >= minute) {
                found = closer(found, option, other);
            }
        }
        return found;
    }

    /** The last option on another's day that is over by a minute, at best with the same dose and place; or null. */
    @Nullable
    Stimulus until(Stimulus other, int minute) {
        Stimulus found = null;
        for (int i = to(other.day) - 1; i >= from(other.day); i--) {
            Stimulus option = options[i];
            if (found != null && option.start < found.start) {
                break;
            }
            if (option.end <= minute) {
                found = closer(found, option, other);
            }
        }
        return found;
    }

    private static Stimulus closer(@Nullable Stimulus found, Stimulus option, Stimulus other) {
        return found == null || likeness(option, other) > likeness(found, other) ? option : found;
    }

    private static int likeness(Stimulus option, Stimulus other) {
        return (option.dose == other.dose ? 2 : 0) + (option.facility == other.facility ? 1 : 0);
    }

    /** An option at the same start as another, with another place or dose, or null. */
    @Nullable
    Stimulus sibling(Stimulus other, RandomGenerator random) {
        int from = from(other.day);
        int to = to(other.day);
        if (from >= to) {
            return null;
        }
        int start = random.nextInt(to - from);
        for (int i = 0; i < to - from; i++) {
            Stimulus option = options[from + (start + i) % (to - from)];
            if (option.start == other.start && option != other) {
                return option;
            }
        }
        return null;
    }

    private int from(int day) {
        int of = day - firstDay;
        return of < 0 || of >= DAYS ? 0 : dayStarts[of];
    }

    private int to(int day) {
        int of = day - firstDay;
        return of < 0 || of >= DAYS ? 0 : dayStarts[of + 1];
    }
}
