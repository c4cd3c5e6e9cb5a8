package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PersonEntry;

/** When somebody met a quality at high intensity. */
final class Exposures {
    private final Case the;
    private final Person person;
    private final Pathway pathway;

    Exposures(Case the, Person person, Pathway pathway) {
        this.the = the;
        this.person = person;
        this.pathway = pathway;
    }

    /** From one time to the next. */
    record Link(LocalDate from, LocalDate to) {}

    /** From the last time before the plan, or its first day, from time to time, to its last day. */
    List<Link> links() {
        List<LocalDate> met = dates();
        LocalDate start = met.stream()
                .filter(date -> date.isBefore(the.weeks().firstDay()))
                .max(LocalDate::compareTo)
                .orElse(the.weeks().firstDay());
        List<LocalDate> stations = Stream.concat(
                        Stream.of(start, the.weeks().lastDay()), met.stream().filter(the.weeks()::contains))
                .sorted()
                .toList();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i + 1 < stations.size(); i++) {
            links.add(new Link(stations.get(i), stations.get(i + 1)));
        }
        return links;
    }

    /** Dates of sessions of any dose, and of past fixtures where they count. */
    List<LocalDate> dates() {
        Stream<LocalDate> sessions = the.sessions(person).stream()
                .filter(thing -> thing.highOn(pathway))
                .map(Thing::date);
        return Stream.concat(sessions, pathway == Pathway.MAX_VELOCITY_SPRINT ? measured() : playedInFull())
                .distinct()
                .sorted()
                .toList();
    }

    private Stream<LocalDate> playedInFull() {
        return the.line(person).stream()
                .filter(thing -> thing.kind() == Thing.Kind.PAST_FIXTURE && thing.highOn(pathway))
                .filter(thing -> MinutesPlayed.of(thing, person) == MinutesPlayed.FULL)
                .map(Thing::date);
    }

    private Stream<LocalDate> measured() {
        return the.scenario().history().stream()
                .filter(this::isMeasuredTopSpeed)
                .map(entry -> entry.start().date());
    }

    private boolean isMeasuredTopSpeed(LogEntry entry) {
        return entry.done()
                && person.groups().contains(entry.group())
                && the.catalogue().family(entry.family()).role() == Role.FIXTURE
                && the.catalogue().family(entry.family()).high(Pathway.MAX_VELOCITY_SPRINT)
                && entry.people().stream()
                        .filter(report -> report.athlete().equals(person.name()))
                        .anyMatch(this::isTopSpeed);
    }

    private boolean isTopSpeed(PersonEntry report) {
        double share = the.settings().get(person.mainGroup()).number("speed-exposure", "sharePercent");
        return report.topSpeedShare() != null
                && !Fraction.of(report.topSpeedShare()).times(100).below(Fraction.of(share));
    }

    /** Whether a clinician's limit on the quality holds between the dates, both included. */
    boolean isBarred(LocalDate from, LocalDate to) {
        return person.athlete() != null
                && person.athlete().restrictions().stream()
                        .filter(limit -> limit.pathways().contains(pathway))
                        .anyMatch(limit ->
                                !limit.from().isAfter(to) && !limit.to().isBefore(from));
    }
}
