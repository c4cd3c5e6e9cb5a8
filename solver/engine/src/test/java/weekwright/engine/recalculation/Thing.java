package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Travel;

/**
 * Anything that takes somebody's time: a placement, a commitment, a fixture, or something already done.
 *
 * @param key name in the ledger, one for each thing
 * @param order place in the stable order among things of equal start and end
 * @param groups ids of the groups concerned, empty for a commitment of single athletes
 * @param family what is trained, or null for time that is only taken up
 * @param aim the aim that a placement serves, or null
 * @param date local date of the start; of a fixture that of its kick-off
 * @param minutes whole minutes, of a fixture the minutes of play
 * @param warmUp minutes of warm-up; within the whole minutes, save those of a fixture
 * @param toll what it asks of the body at full dose, the metabolic part apart
 * @param travel journey to a fixture and home, else none
 * @param who whom it is for, and who is there
 * @param played minutes played of a fixture by name of the person, of those present
 * @param variant id of the variant as written, or null
 * @param lends minutes of a practice that micro sessions may use, or null
 * @param lentBy key of the practice in whose lent minutes a placement lies, or null
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
        int minutes,
        int warmUp,
        Toll toll,
        FixtureWeight weight,
        Travel travel,
        @Nullable String facility,
        @Nullable String lead,
        Who who,
        Map<String, Integer> played,
        @Nullable String variant,
        @Nullable Lends lends,
        @Nullable String lentBy) {
    /** What kind of thing it is; the past ones stand in the history. */
    enum Kind {
        COMMITMENT,
        FIXTURE,
        PAST_SESSION,
        PAST_FIXTURE,
        PLACEMENT
    }

    /**
     * Whom a thing is for.
     *
     * @param heads that it is booked for
     * @param meant names of all that it is for, those who sit it out included
     * @param allowed those of them whom no clinician keeps from it
     * @param present those who are there, the bench included
     */
    record Who(int heads, Set<String> meant, Set<String> allowed, Set<String> present) {
        /** All that a thing is for. */
        static Who all(Set<String> people) {
            return new Who(people.size(), people, people, people);
        }

        /** Those who could be there and are not. */
        Set<String> missing() {
            Set<String> missing = new LinkedHashSet<>(allowed);
            missing.removeAll(present);
            return missing;
        }
    }

    /** Rating of perceived exertion, and neural and tissue demand, each 0 to 10. */
    record Toll(Fraction rpe, Fraction neural, Fraction tissue) {
        static Toll of(Family family, double rpe) {
            return new Toll(
                    Fraction.of(rpe),
                    Fraction.of(family.demand().neural()),
                    Fraction.of(family.demand().tissue()));
        }
    }

    /** Order along a day: start, end, then the order of the documents. */
    static final Comparator<Thing> IN_TIME = Comparator.comparing(Thing::start)
            .thenComparing(Thing::end)
            .thenComparing(thing -> thing.family == null ? "" : thing.family.id())
            .thenComparing(Thing::order);

    /** Start; of a fixture that of the journey out, or of its warm-up. */
    Instant occupiedFrom() {
        return isFixture() ? start.minus(Duration.ofMinutes(warmUp + (long) travel.outMinutes())) : start;
    }

    /** End, of a fixture when everybody is home. */
    Instant occupiedTo() {
        return end.plus(Duration.ofMinutes(travel.backMinutes()));
    }

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

    Set<String> present() {
        return who.present();
    }

    /** Minutes after the warm-up. */
    int mainMinutes() {
        return isFixture() ? minutes : minutes - warmUp;
    }

    boolean isLentBy(Thing practice) {
        return practice.key.equals(lentBy);
    }

    /** The same with others present. */
    Thing attendedBy(Set<String> people) {
        return new Thing(
                kind,
                key,
                order,
                groups,
                family,
                aim,
                dose,
                start,
                end,
                date,
                minutes,
                warmUp,
                toll,
                weight,
                travel,
                facility,
                lead,
                new Who(who.heads(), who.meant(), who.allowed(), people),
                played,
                variant,
                lends,
                lentBy);
    }

    boolean holds(Person person) {
        return present().contains(person.name());
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
