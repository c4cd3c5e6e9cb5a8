package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Prefer;

/** What a coach would rather have: the fresh things first, the usual hours and places, top speed met every week. */
final class Wishes extends Judge {
    Wishes(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        the.people().forEach(this::freshestFirst);
        the.placements().forEach(this::preferredTime);
        the.placements().forEach(this::preferredFacility);
        the.people().stream().filter(this::aimsAtTopSpeed).forEach(this::speedExposure);
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
                        && isInverted(earlier, later)) {
                    String group = groupOf(earlier, later);
                    Fraction points = number(
                            "freshest-first", isNewSkillTooLate(earlier, later) ? "newSkillPoints" : "points", group);
                    want("freshest-first", names(earlier.key(), later.key()), group, points, share(group));
                }
            }
        }
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

    private boolean aimsAtTopSpeed(Person person) {
        return the.mainGroup(person).aims().stream()
                .anyMatch(aim -> the.catalogue().family(aim.family()).high(Pathway.MAX_VELOCITY_SPRINT));
    }

    /** Top speed is met every seven days; each day beyond costs, to a limit. */
    private void speedExposure(Person person) {
        List<LocalDate> met = exposures(person);
        LocalDate start = met.stream()
                .filter(date -> date.isBefore(the.weeks().firstDay()))
                .max(LocalDate::compareTo)
                .orElse(the.weeks().firstDay());
        List<LocalDate> stations = Stream.concat(
                        Stream.of(start, the.weeks().lastDay()), met.stream().filter(the.weeks()::contains))
                .sorted()
                .toList();
        for (int i = 0; i + 1 < stations.size(); i++) {
            judgeLink(person, stations.get(i), stations.get(i + 1));
        }
    }

    private void judgeLink(Person person, LocalDate from, LocalDate to) {
        String group = person.mainGroup();
        Fraction beyond = Fraction.of(ChronoUnit.DAYS.between(from, to))
                .minus(number("speed-exposure", "days", group))
                .max(Fraction.ZERO);
        Fraction points = beyond.times(number("speed-exposure", "pointsADay", group))
                .min(number("speed-exposure", "mostPoints", group));
        if (!isBarred(person, from, to)) {
            want("speed-exposure", names(group, from, to), group, points, share(group));
        }
    }

    private static boolean isBarred(Person person, LocalDate from, LocalDate to) {
        return person.athlete() != null
                && person.athlete().restrictions().stream()
                        .filter(limit -> limit.pathways().contains(Pathway.MAX_VELOCITY_SPRINT))
                        .anyMatch(limit ->
                                !limit.from().isAfter(to) && !limit.to().isBefore(from));
    }

    /** Dates of top speed: sessions of any dose, and fixtures where it was measured. */
    private List<LocalDate> exposures(Person person) {
        Stream<LocalDate> sessions = the.sessions(person).stream()
                .filter(thing -> thing.highOn(Pathway.MAX_VELOCITY_SPRINT))
                .map(Thing::date);
        Stream<LocalDate> measured = the.scenario().history().stream()
                .filter(entry -> isMeasuredTopSpeed(entry, person))
                .map(entry -> entry.start().date());
        return Stream.concat(sessions, measured).distinct().sorted().toList();
    }

    private boolean isMeasuredTopSpeed(LogEntry entry, Person person) {
        return entry.done()
                && person.groups().contains(entry.group())
                && the.catalogue().family(entry.family()).high(Pathway.MAX_VELOCITY_SPRINT)
                && entry.people().stream()
                        .filter(report -> report.athlete().equals(person.name()))
                        .anyMatch(report -> isTopSpeed(report, person.mainGroup()));
    }

    private boolean isTopSpeed(PersonEntry report, String group) {
        return report.topSpeedShare() != null
                && !Fraction.of(report.topSpeedShare())
                        .times(100)
                        .below(number("speed-exposure", "sharePercent", group));
    }
}
