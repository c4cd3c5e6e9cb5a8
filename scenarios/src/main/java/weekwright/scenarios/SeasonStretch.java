package weekwright.scenarios;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** Puts an invented squad, grounds, practices and training history round a stretch of real matches. */
final class SeasonStretch {
    /** Elapsed minutes of a match, half-time and stoppages included (common practice, no source). */
    static final int MATCH_MINUTES = 110;

    private static final String SQUAD = "squad";
    private static final int FULL_MATCH = 90;
    private static final List<Weekday> EVERY_DAY = List.of(Weekday.values());
    private static final List<String> NAMES = List.of(
            "R. Ashlane",
            "T. Brockweir",
            "S. Caldmoor",
            "D. Elverby",
            "M. Farrowdale",
            "J. Gristhorn",
            "L. Hexley-Orme",
            "P. Inskerry");

    private final SeasonFile season;
    private final LocalDate firstDay;
    private final LocalDate lastDay;
    private final int days;

    SeasonStretch(SeasonFile season, LocalDate firstDay, int days) {
        this.season = season;
        this.firstDay = firstDay;
        this.lastDay = firstDay.plusDays(days - 1L);
        this.days = days;
    }

    Scenario scenario() {
        return new Scenario(
                Scenario.VERSION,
                season.club() + "-from-" + firstDay,
                "The matches of " + season.club() + " from " + firstDay + ", the rest invented",
                SeasonFile.ZONE,
                firstDay,
                days,
                15,
                List.of(group()),
                athletes(),
                fixtures(),
                practices(),
                facilities(),
                List.of(new Transfer(List.of("pitch", "gym"), 5), new Transfer(List.of("pitch", "pool"), 15)),
                List.of(
                        new StaffMember("c1", "K. Wolderby, speed", List.of("*"), 1, List.of(), List.of()),
                        new StaffMember("c2", "A. Tharncliffe, strength", List.of("*"), 1, List.of(), List.of())),
                history(),
                List.of(),
                Map.of(),
                List.of());
    }

    private static Group group() {
        List<Window> windows = List.of(Parts.window(EVERY_DAY, "09:30", "17:00"));
        return Parts.group(SQUAD, "First squad", GroupKind.FIELD, 24, windows, new PerWeek(1, 3, 4), aims());
    }

    private static List<Aim> aims() {
        List<Dose> all = List.of(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        List<Dose> full = List.of(Dose.FULL);
        PerWeek one = new PerWeek(1, 1, 1);
        PerWeek wanted = new PerWeek(0, 1, 2);
        return List.of(
                Parts.aim("max-velocity", one, Priority.KEY, all),
                Parts.aim("heavy-lower-knee", one, Priority.KEY, all),
                Parts.aim("upper-strength", one, Priority.MAIN, List.of(Dose.FULL, Dose.REDUCED)),
                Parts.aim("acceleration", new PerWeek(0, 1, 1), Priority.MAIN, full),
                Parts.aim("tempo-run", wanted, Priority.SPARE, full),
                Parts.aim("primer", wanted, Priority.SPARE, full),
                Parts.aim("trunk-and-balance", wanted, Priority.SPARE, full),
                Parts.aim("pool-recovery", wanted, Priority.SPARE, full),
                topUp());
    }

    private static Aim topUp() {
        PerWeek wanted = new PerWeek(0, 1, 1);
        return new Aim(
                "top-up-run",
                Share.NOT_PLAYED,
                wanted,
                Priority.SPARE,
                List.of(),
                null,
                false,
                false,
                false,
                List.of(),
                null,
                null);
    }

    private List<Athlete> athletes() {
        List<Athlete> athletes = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            List<Restriction> restrictions = i == NAMES.size() - 1 ? List.of(restriction()) : List.of();
            athletes.add(Parts.athlete(athleteId(i), NAMES.get(i), SQUAD, restrictions));
        }
        return athletes;
    }

    private static String athleteId(int i) {
        return "a0" + (i + 1);
    }

    private Restriction restriction() {
        return new Restriction(
                List.of(Pathway.MAX_VELOCITY_SPRINT, Pathway.HIP_DOMINANT),
                RestrictionLimit.LIGHT,
                firstDay.minusDays(4),
                firstDay.plusDays(5),
                "clinician");
    }

    /** Minutes by turns, so that the squad falls into a handful of cohorts; whom a clinician restricts does not play. */
    private int minutes(int athlete, SeasonFile.Match match) {
        int number = season.matches().indexOf(match);
        return switch (athlete) {
            case 1 -> number % 3 == 0 ? 0 : FULL_MATCH;
            case 2 -> number % 2 == 0 ? 30 : FULL_MATCH;
            case 3 -> match.competition().equals("league") ? 20 : FULL_MATCH;
            case 4 -> 0;
            case 7 -> restriction().holdsOn(match.date()) ? 0 : FULL_MATCH;
            default -> FULL_MATCH;
        };
    }

    private List<Fixture> fixtures() {
        return season.between(firstDay, lastDay.plusDays(Scenario.EDGE_DAYS)).stream()
                .map(this::fixture)
                .toList();
    }

    private Fixture fixture(SeasonFile.Match match) {
        List<Appearance> expected = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            if (minutes(i, match) < FULL_MATCH) {
                expected.add(new Appearance(athleteId(i), minutes(i, match)));
            }
        }
        return Parts.fixture(
                "match-" + match.date(),
                match.competition() + (match.home() ? ", home" : ", away"),
                SQUAD,
                "fixture",
                match.date().atTime(match.kickOff()),
                MATCH_MINUTES,
                FixtureWeight.REGULAR,
                travel(match),
                expected);
    }

    /** Invented, but of the size that such a journey has. */
    private static Travel travel(SeasonFile.Match match) {
        if (match.home()) {
            return Travel.NONE;
        }
        int minutes = match.competition().equals("continental-cup") ? 240 : 110;
        return new Travel(minutes, minutes);
    }

    private List<Commitment> practices() {
        List<Commitment> practices = new ArrayList<>();
        for (LocalDate day = firstDay; !day.isAfter(lastDay); day = day.plusDays(1)) {
            if (practised(day)) {
                boolean easy = season.daysUntil(day) == 1;
                practices.add(Parts.practice(
                        "practice-" + day,
                        SQUAD,
                        day.atTime(11, 0),
                        easy ? 60 : 75,
                        "pitch",
                        easy ? Effort.EASY : Effort.USUAL));
            }
        }
        return practices;
    }

    /** A run-through the day before a match, nothing the day after, the second day off where there is time for it. */
    private boolean practised(LocalDate day) {
        long since = season.daysSince(day);
        long until = season.daysUntil(day);
        if (until == 0 || (since == 1 && until > 1)) {
            return false;
        }
        return until == 1 || (since > 2 && day.getDayOfWeek() != DayOfWeek.SUNDAY);
    }

    private List<Facility> facilities() {
        return List.of(
                Parts.facility("pitch", "Training pitch", FacilityKind.FIELD, 100, 2, List.of()),
                Parts.facility("gym", "Weights room", FacilityKind.GYM, null, 1, List.of()),
                Parts.facility(
                        "pool",
                        "Pool",
                        FacilityKind.POOL,
                        null,
                        1,
                        List.of(Parts.window(EVERY_DAY, "09:00", "15:00"))));
    }

    private List<LogEntry> history() {
        List<LogEntry> history = new ArrayList<>();
        for (LocalDate day = firstDay.minusDays(Scenario.EDGE_DAYS); day.isBefore(firstDay); day = day.plusDays(1)) {
            season.between(day, day).forEach(match -> history.add(played(match)));
            if (practised(day)) {
                trained(day, history);
            }
        }
        return history;
    }

    private LogEntry played(SeasonFile.Match match) {
        List<String> except = new ArrayList<>();
        List<PersonEntry> people = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            int minutes = minutes(i, match);
            if (minutes == 0) {
                except.add(athleteId(i));
            } else if (minutes < FULL_MATCH) {
                people.add(Parts.played(athleteId(i), minutes));
            }
        }
        return Parts.entry(
                SQUAD,
                "fixture",
                match.date().atTime(match.kickOff()),
                MATCH_MINUTES,
                Dose.FULL,
                8.0,
                true,
                except,
                people);
    }

    /** A plain training week by the distance to the next match: strength four days before, speed three days before. */
    private void trained(LocalDate day, List<LogEntry> history) {
        long until = season.daysUntil(day);
        List<String> out = restriction().holdsOn(day) ? List.of(athleteId(NAMES.size() - 1)) : List.of();
        if (until == 3) {
            history.add(speed(day.atTime(9, 45), 65, Dose.FULL, out));
        } else if (until == 2 && !practised(day.minusDays(1))) {
            history.add(speed(day.atTime(10, 15), 40, Dose.MICRO, out));
        }
        boolean easy = until == 1;
        history.add(Parts.done(SQUAD, "team-practice", day.atTime(11, 0), easy ? 60 : 75, Dose.FULL, easy ? 3.0 : 5.0));
        if (until == 4) {
            history.add(Parts.done(SQUAD, "heavy-lower-knee", day.atTime(12, 30), 60, Dose.FULL, 7.0));
        } else if (until == 3) {
            history.add(Parts.done(SQUAD, "upper-strength", day.atTime(12, 30), 45, Dose.FULL, 6.0));
        }
    }

    private static LogEntry speed(LocalDateTime start, int minutes, Dose dose, List<String> out) {
        return Parts.entry(SQUAD, "max-velocity", start, minutes, dose, 5.0, true, out, List.of());
    }
}
