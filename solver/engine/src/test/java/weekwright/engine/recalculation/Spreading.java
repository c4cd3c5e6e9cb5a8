package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/** How the sessions of an aim share a week, and lifting and endurance a day. */
final class Spreading extends Judge {
    private final Map<String, String> leads;

    /** @param leads who leads which placement, by key, where anybody is known to */
    Spreading(Case the, Ledger ledger, Map<String, String> leads) {
        super(the, ledger);
        this.leads = leads;
    }

    @Override
    void judge() {
        forEachCohort(this::strengthEnduranceApart);
        for (Group group : the.scenario().groups()) {
            for (Aim aim : group.aims()) {
                for (int week : the.weeks().numbers()) {
                    neighbours(group, aim, week);
                }
            }
        }
    }

    /** Lifting and hard endurance work on one day have hours between them, more where the lifting is for power. */
    private void strengthEnduranceApart(Person person) {
        List<Thing> sessions =
                the.line(person).stream().filter(Thing::isPlannedSession).toList();
        for (int i = 0; i < sessions.size(); i++) {
            for (Thing later : sessions.subList(i + 1, sessions.size())) {
                Thing earlier = sessions.get(i);
                boolean both = (lifts(earlier) && endures(later)) || (endures(earlier) && lifts(later));
                if (both && earlier.date().equals(later.date()) && isOurs(earlier, later)) {
                    String rule = "strength-endurance-apart";
                    String group = groupOf(earlier, later);
                    String limit = isForPower(earlier) || isForPower(later) ? "powerHours" : "hours";
                    Fraction gap = earlier.hoursTo(later).max(Fraction.ZERO);
                    Fraction points = number(rule, limit, group).minus(gap).times(number(rule, "pointsAnHour", group));
                    want(rule, names(earlier.key(), later.key()), group, points, share(group));
                }
            }
        }
    }

    static boolean lifts(Thing thing) {
        Family family = thing.trains();
        return family.facility().equals(List.of(FacilityKind.GYM))
                && Stream.of(Pathway.KNEE_DOMINANT, Pathway.HIP_DOMINANT, Pathway.UPPER_PUSH, Pathway.UPPER_PULL)
                        .anyMatch(family.pathways()::containsKey);
    }

    private static boolean endures(Thing thing) {
        return thing.trains().pathways().get(Pathway.AEROBIC) == Intensity.HIGH
                && !thing.highOn(Pathway.MAX_VELOCITY_SPRINT)
                && !thing.highOn(Pathway.ACCELERATION);
    }

    private static boolean isForPower(Thing thing) {
        return thing.aim() != null && thing.aim().power();
    }

    private void neighbours(Group group, Aim aim, int week) {
        List<Thing> placed = the.placements().stream()
                .filter(thing -> thing.group().equals(group.id()) && aim.equals(thing.aim()))
                .filter(thing -> the.weeks().datesOf(week).contains(thing.date()))
                .toList();
        for (int i = 0; i + 1 < placed.size(); i++) {
            evenSpread(placed.get(i), placed.get(i + 1), placed.size(), week);
            sameLead(placed.get(i), placed.get(i + 1));
        }
    }

    /** The sessions of an aim are spread over the week. */
    private void evenSpread(Thing earlier, Thing later, int sessions, int week) {
        Role role = earlier.trains().role();
        if (role == Role.PRACTICE || role == Role.RECOVERY) {
            return;
        }
        String group = later.group();
        long hours = 24L * (the.weeks().datesOf(week).size() / sessions);
        Fraction between = Fraction.of(
                Duration.between(wallClock(earlier.start()), wallClock(later.start()))
                        .toMinutes(),
                60);
        Fraction points = Fraction.of(hours).minus(between).times(number("even-spread", "pointsAnHour", group));
        want("even-spread", names(earlier.key(), later.key()), group, points, Fraction.ONE);
    }

    private LocalDateTime wallClock(Instant instant) {
        return LocalDateTime.ofInstant(instant, the.scenario().zone());
    }

    /** And have the same lead. */
    private void sameLead(Thing earlier, Thing later) {
        String one = leads.get(earlier.key());
        String other = leads.get(later.key());
        if (one != null && other != null && !Objects.equals(one, other)) {
            String group = later.group();
            want(
                    "same-lead",
                    names(earlier.key(), later.key()),
                    group,
                    number("same-lead", "points", group),
                    Fraction.ONE);
        }
    }
}
