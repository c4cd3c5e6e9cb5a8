package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** The days that a long way to a fixture or home lies on. */
final class Journeys {
    private Journeys() {}

    /** Whether a leg of more than so many minutes touches the local date. */
    static boolean touch(Thing fixture, LocalDate date, Fraction minutes, ZoneId zone) {
        long out = fixture.travel().outMinutes();
        long back = fixture.travel().backMinutes();
        Instant away = fixture.occupiedFrom();
        return (Fraction.of(out).above(minutes) && touches(away, away.plus(Duration.ofMinutes(out)), date, zone))
                || (Fraction.of(back).above(minutes) && touches(fixture.end(), fixture.occupiedTo(), date, zone));
    }

    private static boolean touches(Instant from, Instant to, LocalDate date, ZoneId zone) {
        Instant dayStart = date.atStartOfDay(zone).toInstant();
        Instant dayEnd = date.plusDays(1).atStartOfDay(zone).toInstant();
        return from.isBefore(dayEnd) && dayStart.isBefore(to);
    }
}
