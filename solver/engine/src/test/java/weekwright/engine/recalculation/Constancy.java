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
        forEachCohort(person -> {
            if (aimsAtTopSpeed(person)) {
                Exposures topSpeed = new Exposures(the, person, Pathway.MAX_VELOCITY_SPRINT);
                topSpeed.links().forEach(link -> speedExposure(person, topSpeed, link));
                returnDose(person, topSpeed);
            }
            for (Pathway pathway : pathwaysAimedAt(person)) {
                Exposures exposures = new Exposures(the, person, pathway);
                exposures.links().forEach(link -> pathwayNeglected(person, pathway, exposures, link));
            }
        });
    }

    private boolean aimsAtTopSpeed(Person person) {
        return the.mainGroup(person).aims().stream()
                .anyMatch(aim -> the.catalogue().family(aim.family()).high(Pathway.MAX_VELOCITY_SPRINT));
    }

    private List<Pathway> pathwaysAimedAt(Person person) {
        return Stream.of(Pathway.values())
                .filter(pathway -> pathway != Pathway.MAX_VELOCITY_SPRINT)
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

    /** After more than two weeks without top speed it comes back at half the volume or less, by the day. */
    private void returnDose(Person person, Exposures exposures) {
        String group = person.mainGroup();
        List<LocalDate> dates = exposures.dates();
        for (LocalDate date : dates) {
            Fraction largest = the.sessions(person).stream()
                    .filter(thing -> thing.placed() && thing.date().equals(date))
                    .filter(thing -> thing.highOn(Pathway.MAX_VELOCITY_SPRINT))
                    .map(thing -> volume(thing.dose()))
                    .reduce(Fraction.ZERO, Fraction::max);
            boolean longAway = dates.stream()
                    .filter(before -> before.isBefore(date))
                    .max(LocalDate::compareTo)
                    .filter(before -> Fraction.of(ChronoUnit.DAYS.between(before, date))
                            .above(number("return-dose", "days", group)))
                    .isPresent();
            if (longAway && largest.above(number("return-dose", "share", group))) {
                want("return-dose", names(group, date), group, number("return-dose", "points", group), share(group));
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
