package weekwright.engine.rules;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/**
 * The days of one cohort as far as it has been decided what it attends: all that is fixed, and the sessions that come
 * before the one in question. Days are worked out when they are asked for, and again once more is attended on them.
 */
final class SoFar {
    private final Problem problem;
    private final DayBook days;
    private final Visiting[] visiting;
    private final DayState[] states;
    private final int[] workedOut;
    private final DayState with = new DayState();
    private Stimulus[] things = new Stimulus[16];
    private int round = 1;

    private @Nullable OwnLine line;
    private @Nullable Stimulus next;

    SoFar(Problem problem, DayBook days, Visiting[] visiting) {
        this.problem = problem;
        this.days = days;
        this.visiting = visiting;
        states = new DayState[problem.calendar.days()];
        java.util.Arrays.setAll(states, day -> new DayState());
        workedOut = new int[states.length];
    }

    /** Begins with the sessions of a cohort's next group: all of the groups before are decided. */
    void begin(OwnLine of) {
        line = of;
        round++;
    }

    /** A session is decided on. */
    void passed(Stimulus session) {
        workedOut[session.day] = 0;
    }

    /** Says which session is decided on next. */
    void before(Stimulus session) {
        next = session;
    }

    private OwnLine line() {
        return java.util.Objects.requireNonNull(line);
    }

    private boolean attended(Stimulus session) {
        return line().attends(session) && line().before(session, java.util.Objects.requireNonNull(next));
    }

    /** A day without the session in question. */
    DayState day(int day) {
        if (day < 0 || day >= states.length) {
            return fixedDay(day);
        }
        if (workedOut[day] != round) {
            workedOut[day] = round;
            workOut(day, gather(day), states[day]);
        }
        return states[day];
    }

    /** A day with nothing placed. */
    DayState fixedDay(int day) {
        return days.fixedDay(line().cohort, day);
    }

    /** The day of the session in question, with it; the same object each time. */
    DayState with(Stimulus session) {
        int count = insert(session, gather(session.day));
        return workOut(session.day, count, with);
    }

    private DayState workOut(int day, int count, DayState into) {
        int cohort = line().cohort;
        into.of(things, count, cohort, visiting[cohort]);
        into.busy |= problem.longTravel(cohort, day);
        return into;
    }

    private int gather(int day) {
        int count = 0;
        for (int i = 0; i < line().count(day); i++) {
            if (attended(line().at(day, i))) {
                count = insert(line().at(day, i), count);
            }
        }
        for (Stimulus fixed : problem.fixed(line().cohort, day)) {
            count = insert(fixed, count);
        }
        return count;
    }

    private int insert(Stimulus thing, int count) {
        if (count == things.length) {
            things = java.util.Arrays.copyOf(things, 2 * count);
        }
        int place = count;
        while (place > 0 && Stimulus.inOrder(thing, things[place - 1]) < 0) {
            things[place] = things[place - 1];
            place--;
        }
        things[place] = thing;
        return count + 1;
    }

    /** The first thing attended on some days that is as asked for, or null. */
    @Nullable
    Stimulus first(int from, int to, Predicate<Stimulus> asked) {
        for (int day = from; day <= to; day++) {
            Stimulus found = first(day, asked);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private @Nullable Stimulus first(int day, Predicate<Stimulus> asked) {
        for (Stimulus fixed : problem.fixed(line().cohort, day)) {
            if (asked.test(fixed)) {
                return fixed;
            }
        }
        for (int i = 0; i < line().count(day); i++) {
            Stimulus session = line().at(day, i);
            if (attended(session) && asked.test(session)) {
                return session;
            }
        }
        return null;
    }

    boolean any(int from, int to, Predicate<Stimulus> asked) {
        return first(from, to, asked) != null;
    }

    /** Whether a thing is felt by the cohort: a session, or a fixture that it plays. */
    boolean felt(Stimulus thing) {
        return thing.family != null && (!thing.isFixture() || thing.playedBy(line().cohort));
    }

    /** Whether a fixture whose long journey touches one of some days is as asked for. */
    boolean anyJourney(int from, int to, Predicate<Stimulus> asked) {
        for (Stimulus fixture : problem.fixtures) {
            if (fixture.has(line().cohort)
                    && asked.test(fixture)
                    && problem.longTravel(fixture, line().cohort, from, to)) {
                return true;
            }
        }
        return false;
    }

    Problem problem() {
        return problem;
    }
}
