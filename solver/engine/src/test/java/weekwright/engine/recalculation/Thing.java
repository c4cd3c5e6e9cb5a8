package weekwright.engine.recalculation;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/**
 * Anything that takes somebody's time: a placement, a commitment, a fixture, or something already done.
 *
 * @param key name in the ledger, one for each thing
 * @param order place in the stable order among things of equal start and end
 * @param groups ids of the groups concerned, empty for a commitment of single athletes
 * @param family what is trained, or null for time that is only taken up
 * @param aim the aim that a placement serves, or null
 * @param date local date of the start; of a fixture that of its kick-off
 * @param occupiedFrom start, of a fixture less warm-up and journey out
 * @param occupiedTo end, of a fixture with the journey home
 * @param minutes whole minutes, of a fixture the minutes of play
 * @param warmUp minutes of warm-up; within the whole minutes, save those of a fixture
 * @param outMinutes journey to a fixture
 * @param backMinutes journey home
 * @param meant heads it is meant for, those who sit it out included
 * @param present who is there, the bench included
 * @param played minutes played of a fixture by name of the person, of those present
 */
record Thing(
        Kind kind,
        String key,
        int order,
        List<String> groups,
        @Nullable Family family,
        @Nullable Aim aim,
        Dose dose,
        Instant start,
        Instant end,
        LocalDate date,
        Instant occupiedFrom,
        Instant occupiedTo,
        int minutes,
        int warmUp,
        Fraction rpe,
        Fraction neural,
        Fraction tissue,
        FixtureWeight weight,
        int outMinutes,
        int backMinutes,
        @Nullable String facility,
        @Nullable String lead,
        int meant,
        List<Person> present,
        Map<String, Integer> played) {
    /** What kind of thing it is; the past ones stand in the history. */
    enum Kind {
        COMMITMENT,
        FIXTURE,
        PAST_SESSION,
        PAST_FIXTURE,
        PLACEMENT
    }

    /** Order along a day: start, end, then the order of the documents. */
    static final Comparator<Thing> IN_TIME =
            Comparator.comparing(Thing::start).thenComparing(Thing::end).thenComparing(Thing::order);

    boolean placed() {
        return kind == Kind.PLACEMENT;
    }

    boolean isFixture() {
        return kind == Kind.FIXTURE || kind == Kind.PAST_FIXTURE;
    }

    boolean past() {
        return kind == Kind.PAST_SESSION || kind == Kind.PAST_FIXTURE;
    }

    /** A session of any kind, done, fixed or placed: whatever trains and is no fixture. */
    boolean isSession() {
        return family != null && !isFixture();
    }

    /** Placements and commitments that train. */
    boolean isPlannedSession() {
        return isSession() && !past();
    }

    boolean isRecovery() {
        return family != null && family.role() == Role.RECOVERY;
    }

    boolean isPrimer() {
        return family != null && family.role() == Role.PRIMER;
    }

    /** What it trains, for things that train. */
    Family trains() {
        if (family == null) {
            throw new IllegalStateException(key + " trains nothing");
        }
        return family;
    }

    /** The one group of a placement. */
    String group() {
        return groups.get(0);
    }

    boolean holds(Person person) {
        return present.contains(person);
    }

    int minutesPlayed(Person person) {
        return played.getOrDefault(person.name(), 0);
    }

    /** Whether it lies on the person's timeline as a stimulus: in a session that is not sat out, or on the field. */
    boolean stimulates(Person person) {
        return family != null && holds(person) && (!isFixture() || minutesPlayed(person) > 0);
    }

    boolean isPlayedBy(Person person) {
        return isFixture() && stimulates(person);
    }

    boolean highOn(Pathway pathway) {
        return family != null && family.pathways().get(pathway) == Intensity.HIGH;
    }

    List<Pathway> highPathways() {
        return List.of(Pathway.values()).stream().filter(this::highOn).toList();
    }

    /** Hours that its dose asks for: all of them, but six tenths after a micro dose. */
    Fraction ofDose(Fraction hours) {
        return dose == Dose.MICRO ? hours.times(Fraction.of(6, 10)) : hours;
    }

    /** Elapsed hours from its end to the start of a later thing. */
    Fraction hoursTo(Thing later) {
        return Fraction.hours(end, later.start);
    }
}
