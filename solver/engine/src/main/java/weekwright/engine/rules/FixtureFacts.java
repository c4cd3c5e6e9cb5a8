package weekwright.engine.rules;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;

/** Fixtures that lie close together. The fixture list decides: these are facts, and nothing is ever paid for them. */
final class FixtureFacts {
    private FixtureFacts() {}

    /** Two fixtures, one after the other, that the same people play. */
    private abstract static class Close extends RuleOn<GroupView> {
        Close(String id, RuleSettings settings) {
            super(id, settings);
        }

        @Override
        final void judge(GroupView view, Sink sink) {
            Stimulus next = view.fixture();
            if (next.day < 0) {
                return;
            }
            @Nullable
            Stimulus[] before = Arrays.stream(view.cohorts())
                    .mapToObj(cohort -> before(view, next, cohort))
                    .toArray(Stimulus[]::new);
            Arrays.stream(before)
                    .filter(Objects::nonNull)
                    .distinct()
                    .forEach(earlier -> judge(view, sink, Objects.requireNonNull(earlier), before));
        }

        private void judge(GroupView view, Sink sink, Stimulus earlier, @Nullable Stimulus[] before) {
            int gap = view.fixture().start - earlier.end;
            int limit = limit(gap);
            if (gap >= limit || earlier.day >= view.calendar().days()) {
                return;
            }
            int form = form(limit);
            Breach breach = view.breach()
                    .days(earlier.day, view.fixture().day)
                    .about(earlier, view.fixture())
                    .detail(form);
            for (int i = 0; i < before.length; i++) {
                if (earlier.equals(before[i])) {
                    int cohort = view.cohorts()[i];
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), gap, limit);
                }
            }
            breach.told();
            report(sink, view, breach);
        }

        /** The last fixture that a cohort plays before one that it plays, or null. */
        private static @Nullable Stimulus before(GroupView view, Stimulus next, int cohort) {
            Stimulus last = null;
            for (Stimulus fixture : view.problem.fixtures) {
                if (fixture.start < next.start && fixture.playedBy(cohort) && next.playedBy(cohort)) {
                    last = fixture;
                }
            }
            return last;
        }

        /** The minutes that a gap falls short of, or those that it has where it is long enough. */
        abstract int limit(int gap);

        abstract int form(int limit);
    }

    /** Two fixtures of one player lie closer than published guidance has it. */
    static final class FixturesClose extends Close {
        /** Closer than the closest that is named. */
        static final int VERY = 1;

        private final int close = minutes("closeHours");
        private final int veryClose = minutes("veryCloseHours");
        private final int spokenFor;

        FixturesClose(RuleSettings settings) {
            super("fixtures-close", settings);
            boolean pack = settings.level("rest-between-fixtures") != RuleLevel.OFF;
            spokenFor = pack ? (int) Math.round(60 * settings.number("rest-between-fixtures", "preferredHours")) : 0;
        }

        /** Where the pack about rest between fixtures speaks, this is silent. */
        @Override
        int limit(int gap) {
            return gap < spokenFor ? gap : gap < veryClose ? veryClose : close;
        }

        @Override
        int form(int limit) {
            return limit == veryClose ? VERY : 0;
        }
    }

    /** Between two fixtures of one player lie the hours that players' unions ask for. */
    static final class RestBetweenFixtures extends Close {
        private final int hours = minutes("hours");
        private final int preferred = minutes("preferredHours");

        RestBetweenFixtures(RuleSettings settings) {
            super("rest-between-fixtures", settings);
        }

        @Override
        int limit(int gap) {
            return gap < hours ? hours : preferred;
        }

        @Override
        int form(int limit) {
            return limit == hours ? FixturesClose.VERY : 0;
        }
    }
}
