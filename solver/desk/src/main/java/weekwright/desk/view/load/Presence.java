package weekwright.desk.view.load;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.answer.DaySheet.Why;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.prescription.Limits;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** Who takes part in a session of a judged plan. */
public final class Presence {
    private final Scenario scenario;
    private final Plan plan;
    private final Map<String, Set<String>> sessions = new HashMap<>();
    private final Catalogue catalogue;

    /**
     * People and a plan.
     *
     * @param people what the plan means for each athlete
     */
    public Presence(Scenario scenario, Plan plan, List<PersonPicture> people) {
        this.scenario = scenario;
        this.plan = plan;
        people.forEach(person -> sessions.put(person.athlete(), person.sessions()));
        this.catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    /** Those for whom a session is meant, in the order of the scenario. */
    public List<Athlete> meant(Placement placement) {
        Share share = share(placement);
        return scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(placement.group()))
                .filter(athlete -> share == Share.ALL || (share == Share.PLAYED) == played(athlete, placement))
                .toList();
    }

    /** For whom the aim of a placement is; it is named in its id, {@code group/family+whom/week/n}. */
    public static Share share(Placement placement) {
        String id = placement.id() == null ? "" : placement.id();
        if (id.contains("+" + Share.NOT_PLAYED.id() + "/")) {
            return Share.NOT_PLAYED;
        }
        return id.contains("+" + Share.PLAYED.id() + "/") ? Share.PLAYED : Share.ALL;
    }

    /** Why an athlete does not take part, or null. */
    @Nullable
    public Why out(Athlete athlete, Placement placement) {
        Family family = catalogue.family(placement.family());
        boolean heldBack = athlete.restrictions().stream()
                .anyMatch(restriction -> Limits.keepsOut(
                        restriction, family, placement.dose(), placement.start().date()));
        if (heldBack) {
            return Why.SITS_OUT;
        }
        return isElsewhere(athlete, placement) || isAbsent(athlete, placement) ? Why.ELSEWHERE : null;
    }

    private boolean isElsewhere(Athlete athlete, Placement placement) {
        Instant start = instant(placement.start());
        Instant end = end(placement);
        boolean away = athlete.away().stream()
                .anyMatch(span ->
                        instant(span.from()).isBefore(end) && instant(span.to()).isAfter(start));
        return away
                || scenario.commitments().stream()
                        .filter(commitment -> commitment.athletes().contains(athlete.id()))
                        .anyMatch(commitment -> instant(commitment.start()).isBefore(end)
                                && after(commitment.start(), commitment.minutes())
                                        .isAfter(start));
    }

    /** Somebody for whom the plan says that this session is not theirs, whatever the reason. */
    private boolean isAbsent(Athlete athlete, Placement placement) {
        Set<String> own = sessions.get(athlete.id());
        return own != null && placement.id() != null && !own.contains(placement.id());
    }

    /** Whether an athlete played in the group's latest fixture before a session. */
    private boolean played(Athlete athlete, Placement placement) {
        Instant before = instant(placement.start());
        Stream<Appeared> coming = scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(placement.group()))
                .map(fixture -> new Appeared(instant(fixture.start()), plays(fixture, athlete.id())));
        Stream<Appeared> past = scenario.history().stream()
                .filter(entry -> entry.done() && entry.group().equals(placement.group()))
                .filter(entry -> catalogue.family(entry.family()).role() == Role.FIXTURE)
                .map(entry -> new Appeared(instant(entry.start()), playedIn(entry, athlete.id())));
        return Stream.concat(coming, past)
                .filter(fixture -> fixture.start().isBefore(before))
                .max(Comparator.comparing(Appeared::start))
                .map(Appeared::did)
                .orElse(false);
    }

    private record Appeared(Instant start, boolean did) {}

    /** Whether an athlete plays in a fixture; who is not named does. */
    static boolean plays(Fixture fixture, String athlete) {
        return Stream.concat(fixture.played().stream(), fixture.expected().stream())
                .filter(appearance -> appearance.athlete().equals(athlete))
                .map(Appearance::minutes)
                .findFirst()
                .map(minutes -> minutes > 0)
                .orElse(true);
    }

    private static boolean playedIn(LogEntry entry, String athlete) {
        return !entry.except().contains(athlete)
                && entry.people().stream()
                        .noneMatch(person ->
                                person.athlete().equals(athlete) && person.minutes() != null && person.minutes() == 0);
    }

    /** Hours from the end of a session to the next fixture in which an athlete plays. */
    public double hoursToFixture(Athlete athlete, Placement placement) {
        Instant end = end(placement);
        return scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().stream().anyMatch(athlete.groups()::contains))
                .filter(fixture -> plays(fixture, athlete.id()))
                .map(fixture -> instant(fixture.start()))
                .filter(start -> !start.isBefore(end))
                .mapToDouble(start -> (start.getEpochSecond() - end.getEpochSecond()) / 3600.0)
                .min()
                .orElse(Double.MAX_VALUE);
    }

    /**
     * Whether other work instead of a session leaves an athlete's other sessions the hours that they need: nothing twice on
     * a day, and the hours that must lie between two sessions for the same quality.
     */
    public boolean fits(Family other, Athlete athlete, Placement instead) {
        return plan.placements().stream()
                .filter(placement ->
                        !placement.equals(instead) && meant(placement).contains(athlete))
                .filter(placement -> out(athlete, placement) == null)
                .noneMatch(placement -> isTwice(other, placement, instead) || isTooClose(other, placement, instead));
    }

    private static boolean isTwice(Family other, Placement placement, Placement instead) {
        return placement.family().equals(other.id())
                && placement.start().date().equals(instead.start().date());
    }

    private boolean isTooClose(Family other, Placement placement, Placement instead) {
        Family family = catalogue.family(placement.family());
        boolean same =
                other.pathways().keySet().stream().anyMatch(pathway -> other.high(pathway) && family.high(pathway));
        boolean before = instant(placement.start()).isBefore(instant(instead.start()));
        Instant end = before ? end(placement) : end(instead);
        Instant start = instant(before ? instead.start() : placement.start());
        double must = (before ? family : other).againHours().must();
        return same && Duration.between(end, start).toMinutes() < 60 * must;
    }

    /** When a placement ends; one without minutes where it starts. */
    public Instant end(Placement placement) {
        Integer minutes = placement.minutes();
        return after(placement.start(), minutes == null ? 0 : minutes);
    }

    private Instant after(Moment start, int minutes) {
        return instant(start).plusSeconds(60L * minutes);
    }

    private Instant instant(Moment moment) {
        return moment.instant(scenario.zone());
    }
}
