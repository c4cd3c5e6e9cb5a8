package weekwright.engine.recalculation;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Prefer;

/** What a coach would rather have: the fresh things first, the usual hours and places. */
final class Wishes extends Judge {
    Wishes(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(this::freshestFirst);
        the.placements().forEach(this::preferredTime);
        the.placements().forEach(this::preferredFacility);
    }

    /** Within a day what needs freshness comes first, and nothing new is learnt after tiring work. */
    private void freshestFirst(Person person) {
        List<Thing> sessions =
                the.line(person).stream().filter(Thing::isPlannedSession).toList();
        for (Thing earlier : sessions) {
            for (Thing later : sessions) {
                if (earlier.start().isBefore(later.start())
                        && earlier.date().equals(later.date())
                        && isOurs(earlier, later)
                        && !isLentTheStart(earlier, later)
                        && isInverted(earlier, later)) {
                    String group = groupOf(earlier, later);
                    Fraction points = number(
                            "freshest-first", isNewSkillTooLate(earlier, later) ? "newSkillPoints" : "points", group);
                    want("freshest-first", names(earlier.key(), later.key()), group, points, share(group));
                }
            }
        }
    }

    /** A practice that lends its start lets the other go first. */
    private static boolean isLentTheStart(Thing practice, Thing session) {
        Lends lends = practice.lends();
        return session.isLentBy(practice) && lends != null && lends.at() == LendsAt.START;
    }

    private static boolean isInverted(Thing earlier, Thing later) {
        Integer one = earlier.trains().order();
        Integer other = later.trains().order();
        return one != null && other != null && one > other;
    }

    private boolean isNewSkillTooLate(Thing earlier, Thing later) {
        Aim aim = later.aim();
        return aim != null
                && aim.learning()
                && !Fraction.of(Objects.requireNonNull(earlier.trains().order()))
                        .below(number("freshest-first", "tiringFromOrder", groupOf(earlier, later)));
    }

    /** A session lies in the hours that its aim prefers. */
    private void preferredTime(Thing placement) {
        Prefer prefer = preferences(placement);
        LocalDateTime start =
                LocalDateTime.ofInstant(placement.start(), the.scenario().zone());
        LocalDateTime end =
                LocalDateTime.ofInstant(placement.end(), the.scenario().zone());
        boolean early = prefer.from() != null && start.isBefore(prefer.from().on(placement.date()));
        boolean late = prefer.to() != null && end.isAfter(prefer.to().on(placement.date()));
        if (early || late) {
            wish("preferred-time", placement);
        }
    }

    /** And in the place that its aim prefers. */
    private void preferredFacility(Thing placement) {
        List<String> facilities = preferences(placement).facilities();
        if (!facilities.isEmpty() && facilities.stream().noneMatch(id -> id.equals(placement.facility()))) {
            wish("preferred-facility", placement);
        }
    }

    private static Prefer preferences(Thing placement) {
        Aim aim = placement.aim();
        return aim == null || aim.prefer() == null ? new Prefer(List.of(), null, null) : aim.prefer();
    }

    private void wish(String rule, Thing placement) {
        Fraction points = number(rule, "points", placement.group());
        want(rule, placement.key(), placement.group(), points, Fraction.ONE);
    }
}
