package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Share;

/** No quality is left alone too long, and none comes back all at once. */
final class Constancy extends Judge {
    Constancy(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Person person : the.people()) {
            if (aimsAtTopSpeed(person)) {
                Exposures topSpeed = new Exposures(the, person, Pathway.MAX_VELOCITY_SPRINT);
                topSpeed.links().forEach(link -> speedExposure(person, topSpeed, link));
                returnDose(person, topSpeed);
            }
            for (Pathway pathway : pathwaysAimedAt(person)) {
                Exposures exposures = new Exposures(the, person, pathway);
                exposures.links().forEach(link -> pathwayNeglected(person, pathway, exposures, link));
            }
        }
    }

    private boolean aimsAtTopSpeed(Person person) {
        return the.mainGroup(person).aims().stream()
                .anyMatch(aim -> the.catalogue().family(aim.family()).high(Pathway.MAX_VELOCITY_SPRINT));
    }

    private List<Pathway> pathwaysAimedAt(Person person) {
        return Stream.of(Pathway.values())
                .filter(pathway -> the.mainGroup(person).aims().stream()
                        .filter(aim -> aim.whom() == Share.ALL)
                        .map(Aim::family)
                        .anyMatch(family -> the.catalogue().family(family).high(pathway)))
                .toList();
    }

    private static Fraction days(Exposures.Link link) {
        return Fraction.of(ChronoUnit.DAYS.between(link.from(), link.to()));
    }

    /** Top speed is met every seven days; each day beyond costs, to a limit. */
    private void speedExposure(Person person, Exposures exposures, Exposures.Link link) {
        String group = person.mainGroup();
        Fraction points = days(link)
                .minus(number("speed-exposure", "days", group))
                .max(Fraction.ZERO)
                .times(number("speed-exposure", "pointsADay", group))
                .min(number("speed-exposure", "mostPoints", group));
        if (!exposures.isBarred(link.from(), link.to())) {
            want("speed-exposure", names(group, link), group, points, share(group));
        }
    }

    /** Each quality with an aim is met every ten days. */
    private void pathwayNeglected(Person person, Pathway pathway, Exposures exposures, Exposures.Link link) {
        String group = person.mainGroup();
        Fraction points = days(link)
                .minus(number("pathway-neglected", "days", group))
                .times(number("pathway-neglected", "pointsADay", group));
        if (!exposures.isBarred(link.from(), link.to())) {
            want("pathway-neglected", names(group, pathway, link), group, points, share(group));
        }
    }

    /** After more than two weeks without top speed it comes back at half the volume or less. */
    private void returnDose(Person person, Exposures exposures) {
        List<LocalDate> dates = exposures.dates();
        boolean known =
                dates.stream().anyMatch(date -> date.isBefore(the.weeks().firstDay()));
        if (!known) {
            return;
        }
        String group = person.mainGroup();
        List<Thing> line = the.sessions(person).stream()
                .filter(thing -> thing.highOn(Pathway.MAX_VELOCITY_SPRINT))
                .toList();
        for (Thing placement : line.stream().filter(Thing::placed).toList()) {
            boolean anotherOnTheDay = line.stream()
                    .takeWhile(thing -> !thing.equals(placement))
                    .anyMatch(thing -> thing.date().equals(placement.date()));
            LocalDate before = dates.stream()
                    .filter(date -> date.isBefore(placement.date()))
                    .max(LocalDate::compareTo)
                    .orElseThrow();
            long away = ChronoUnit.DAYS.between(before, placement.date());
            if (!anotherOnTheDay
                    && Fraction.of(away).above(number("return-dose", "days", group))
                    && volume(placement.dose()).above(number("return-dose", "share", group))
                    && !exposures.isBarred(before, placement.date())) {
                Fraction points = number("return-dose", "points", group);
                want("return-dose", names(group, placement.key()), group, points, share(group));
            }
        }
    }

    private static Fraction volume(Dose dose) {
        return switch (dose) {
            case FULL -> Fraction.ONE;
            case REDUCED -> Fraction.of(2, 3);
            case MICRO -> Fraction.of(1, 3);
        };
    }
}
