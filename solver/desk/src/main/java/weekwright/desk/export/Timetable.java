package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.engine.explain.TakingPart;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Travel;

/** What lies ahead of a group or an athlete, as entries of a calendar. Why somebody sits out is not in it. */
final class Timetable {
    private final Scenario scenario;
    private final Plan plan;
    private final Whose whose;
    private final Names names;
    private final TakingPart takingPart;

    private Timetable(Scenario scenario, Plan plan, Whose whose) {
        this.scenario = scenario;
        this.plan = plan;
        this.whose = whose;
        this.names = new Names(scenario);
        this.takingPart = TakingPart.of(scenario, plan);
    }

    /**
     * The entries, in order of start.
     *
     * @param plan a judged plan, so that each placement has its id and its minutes
     */
    static List<CalendarEntry> of(Scenario scenario, Plan plan, Whose whose) {
        Timetable table = new Timetable(scenario, plan, whose);
        return Stream.of(table.fixtures(), table.commitments(), table.sessions())
                .flatMap(entries -> entries)
                .sorted(Comparator.comparing(CalendarEntry::start).thenComparing(CalendarEntry::uid))
                .toList();
    }

    /** A name-free id of one thing in the calendar of one reader. */
    static UUID uid(Scenario scenario, Whose whose, String thing) {
        String key = String.join("\n", scenario.id(), whose.key(), thing);
        return UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8));
    }

    private boolean concerns(List<String> groups) {
        return whose instanceof Whose.OfAthlete of
                ? groups.stream().anyMatch(of.athlete().groups()::contains)
                : whose instanceof Whose.OfGroup group
                        && groups.contains(group.group().id());
    }

    private Stream<CalendarEntry> fixtures() {
        return scenario.fixtures().stream()
                .filter(fixture -> concerns(fixture.groups()))
                .map(this::entry);
    }

    private CalendarEntry entry(Fixture fixture) {
        Travel travel = fixture.travel();
        String note = travel.equals(Travel.NONE)
                ? null
                : "Travel " + travel.outMinutes() + " min out, " + travel.backMinutes() + " min back.";
        return entry("fixture/" + fixture.id(), fixture.start(), fixture.minutes(), fixture.label(), null, note, true);
    }

    private Stream<CalendarEntry> commitments() {
        return scenario.commitments().stream()
                .filter(commitment -> concerns(commitment.groups())
                        || (whose instanceof Whose.OfAthlete of
                                && commitment.athletes().contains(of.athlete().id())))
                .map(commitment -> entry(
                        "commitment/" + commitment.id(),
                        commitment.start(),
                        commitment.minutes(),
                        title(commitment),
                        names.facility(commitment.facility()),
                        null,
                        !sitsOut(commitment)));
    }

    private String title(Commitment commitment) {
        return sitsOut(commitment) ? Words.SITS_OUT + commitment.label() : commitment.label();
    }

    private boolean sitsOut(Commitment commitment) {
        return whose instanceof Whose.OfAthlete of
                && !takingPart.inCommitment(commitment.id(), of.athlete().id());
    }

    private Stream<CalendarEntry> sessions() {
        return plan.placements().stream()
                .filter(placement -> concerns(List.of(placement.group())))
                .filter(placement -> takesPart(placement) || Words.whom(placement) == null)
                .map(this::entry);
    }

    private boolean takesPart(Placement placement) {
        return !(whose instanceof Whose.OfAthlete of)
                || takingPart.inSession(id(placement), of.athlete().id());
    }

    private static String id(Placement placement) {
        return Objects.requireNonNull(placement.id(), "a judged plan has an id for each placement");
    }

    private CalendarEntry entry(Placement placement) {
        int minutes = Objects.requireNonNull(placement.minutes(), "a judged plan has its minutes");
        boolean busy = takesPart(placement);
        return entry(
                "session/" + id(placement),
                placement.start(),
                minutes,
                (busy ? "" : Words.SITS_OUT) + title(placement),
                names.facility(placement.facility()),
                note(placement),
                busy);
    }

    private String title(Placement placement) {
        return Stream.of(
                        names.family(placement.family()),
                        names.variant(placement.family(), placement.variant()),
                        Words.dose(placement.dose()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private @Nullable String note(Placement placement) {
        List<String> notes = new ArrayList<>();
        String whom = Words.whom(placement);
        if (whom != null && whose instanceof Whose.OfGroup) {
            notes.add(Character.toUpperCase(whom.charAt(0)) + whom.substring(1) + ".");
        }
        String lead = names.staff(placement.lead());
        if (lead != null) {
            notes.add("Led by " + lead + ".");
        }
        return notes.isEmpty() ? null : String.join("\n", notes);
    }

    private CalendarEntry entry(
            String thing,
            Moment start,
            int minutes,
            String title,
            @Nullable String place,
            @Nullable String note,
            boolean busy) {
        Instant begin = start.instant(scenario.zone());
        Instant end = begin.plusSeconds(60L * minutes);
        return new CalendarEntry(uid(scenario, whose, thing), begin, end, title, place, note, busy);
    }
}
