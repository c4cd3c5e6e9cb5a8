package weekwright.scenarios;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Variant;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/**
 * A made-up club in which everything happens at once: three small groups that share athletes, shifts, second clubs,
 * clinicians' limits, lent minutes, learners, rotating lifts, tapers, long journeys, packs and a night with a clock change.
 */
final class MadeUpClub {
    /** Zones of both hemispheres, each with a Monday some ten days before its clocks change (IANA time zone database). */
    private static final List<Map.Entry<ZoneId, LocalDate>> BEFORE_CLOCK_CHANGES = List.of(
            Map.entry(ZoneId.of("Europe/Dublin"), LocalDate.of(2027, 3, 15)),
            Map.entry(ZoneId.of("Europe/Dublin"), LocalDate.of(2027, 10, 18)),
            Map.entry(ZoneId.of("Australia/Hobart"), LocalDate.of(2027, 3, 22)),
            Map.entry(ZoneId.of("Australia/Hobart"), LocalDate.of(2027, 9, 20)),
            Map.entry(ZoneId.of("America/Chicago"), LocalDate.of(2027, 3, 1)));

    private static final List<Weekday> EVERY_DAY = List.of(Weekday.values());

    private final long seed;
    private final Random random;
    private final ZoneId zone;
    private final LocalDate firstDay;
    private final int days;
    private final List<Group> groups;
    private final List<Athlete> athletes = new ArrayList<>();
    private final List<Fixture> fixtures = new ArrayList<>();
    private final List<Commitment> commitments = new ArrayList<>();
    private final List<LogEntry> history = new ArrayList<>();

    private MadeUpClub(long seed) {
        this.seed = seed;
        this.random = new Random(seed);
        Map.Entry<ZoneId, LocalDate> start = BEFORE_CLOCK_CHANGES.get((int) Math.floorMod(seed, 5L));
        this.zone = start.getKey();
        this.firstDay = start.getValue();
        this.days = 14 + random.nextInt(12);
        this.groups = ClubGroups.of(random);
    }

    static Scenario of(long seed) {
        MadeUpClub club = new MadeUpClub(seed);
        club.people();
        for (int week = -4; week <= club.days / 7; week++) {
            club.week(week);
        }
        return club.scenario();
    }

    private Scenario scenario() {
        List<String> packs =
                random.nextInt(3) == 0 ? List.of("college-out-of-season", "rest-between-fixtures") : List.of();
        return new Scenario(
                Scenario.VERSION,
                "club-" + Long.toUnsignedString(seed),
                "Made-up club of seed " + seed,
                zone,
                firstDay,
                days,
                15,
                groups,
                athletes,
                fixtures,
                commitments,
                facilities(),
                List.of(
                        new Transfer(List.of("gym", "pitch"), 10),
                        new Transfer(List.of("hall", "pitch"), 15),
                        new Transfer(List.of("gym", "hall"), 5)),
                staff(),
                history,
                List.of(),
                rules(),
                packs);
    }

    private LocalDate day(int week, int weekday) {
        return firstDay.plusDays(7L * week + weekday);
    }

    private static Athlete athlete(
            String id,
            List<String> groups,
            @Nullable LocalDate born,
            List<Mark> marks,
            List<Window> windows,
            List<Away> away,
            List<Restriction> restrictions) {
        return new Athlete(id, "Athlete " + id, groups, null, born, marks, windows, away, restrictions);
    }

    /** Somebody of every sort; whoever is not named is one of many. */
    private void people() {
        LocalDate exam = day(random.nextInt(2), random.nextInt(5));
        Away away = new Away(Moment.of(exam.atTime(12, 0)), Moment.of(exam.atTime(20, 0)), "exam");
        List<Window> evenings = List.of(Parts.window(EVERY_DAY, "16:00", "22:00"));
        LocalDate from = firstDay.plusDays(random.nextInt(12));
        Restriction limit = new Restriction(
                List.of(random.nextBoolean() ? Pathway.MAX_VELOCITY_SPRINT : Pathway.KNEE_DOMINANT),
                RestrictionLimit.values()[random.nextInt(3)],
                from,
                from.plusDays(random.nextInt(9)),
                "clinician");
        athletes.add(athlete("a1", List.of("squad"), null, marks(), List.of(), List.of(), List.of()));
        athletes.add(athlete("a2", List.of("squad"), null, List.of(), evenings, List.of(away), List.of()));
        athletes.add(athlete("a3", List.of("squad"), null, List.of(), List.of(), List.of(), List.of(limit)));
        athletes.add(athlete("a4", List.of("squad", "lifters"), null, marks(), List.of(), List.of(), List.of()));
        athletes.add(athlete("a5", List.of("lifters", "squad"), null, marks(), List.of(), List.of(), List.of()));
        athletes.add(athlete("b1", List.of("lifters"), null, List.of(), evenings, List.of(), List.of()));
        LocalDate born = LocalDate.of(2013, 1 + random.nextInt(12), 10);
        athletes.add(athlete("c1", List.of("young"), born, marks(), List.of(), List.of(), List.of()));
        athletes.add(athlete(
                "c2", List.of("young", "squad"), born.plusYears(1), List.of(), List.of(), List.of(), List.of()));
        if (random.nextBoolean()) {
            athletes.add(athlete(
                    "c3", List.of("squad", "young", "lifters"), null, List.of(), List.of(), List.of(away), List.of()));
        }
    }

    private List<Mark> marks() {
        LocalDate date = firstDay.minusDays(random.nextInt(150));
        return List.of(
                new Mark(Measure.SPRINT, 30.0, 4.2, null, null, null, null, null, null, date),
                new Mark(Measure.LIFT, null, null, null, null, "back-squat", 100.0, 1, null, date.plusDays(30)));
    }

    private void week(int week) {
        boolean match = random.nextInt(4) > 0;
        for (Group group : groups) {
            if (group.id().equals("lifters")) {
                shift(week);
            } else {
                practices(week, group.id());
            }
            if (match && group.id().equals("squad")) {
                match(week, List.of("squad"), "fixture", day(week, 5).atTime(14, 30), 105);
            }
            if (group.id().equals("young") && random.nextInt(3) == 0) {
                List<String> who = random.nextInt(4) == 0 ? List.of("young", "lifters") : List.of("young");
                match(week, who, "court-fixture", day(week, random.nextInt(7)).atTime(18, 0), 90);
            }
            if (week < 0) {
                trained(week, group);
            }
        }
    }

    /** Work and a second club keep single athletes from what the rest can do. */
    private void shift(int week) {
        if (week < 0) {
            return;
        }
        LocalDateTime work = day(week, random.nextInt(5)).atTime(15, 30);
        commit("shift-" + week, List.of("a4"), null, work, 240, null, null);
        LocalDateTime club = day(week, random.nextInt(7)).atTime(9 + random.nextInt(10), 0);
        commit("club-" + week, List.of("a1"), "heavy-lower-knee", club, 60, null, null);
        commit("school-" + week, List.of("c1"), "small-sided-games", club.plusHours(2), 50, null, Effort.HARD);
    }

    private void practices(int week, String group) {
        LocalDateTime tuesday = day(week, 1).atTime(18, 0);
        LocalDateTime thursday = day(week, 3).atTime(19, 0);
        if (week < 0) {
            history.add(Parts.done(group, "team-practice", tuesday, 75, Dose.FULL, null));
            return;
        }
        String place = group.equals("young") ? "hall" : "pitch";
        LendsAt at = random.nextBoolean() ? LendsAt.START : LendsAt.END;
        String id = group + "-" + week;
        Effort effort = Effort.values()[random.nextInt(3)];
        commitments.add(practice(id + "-tue", group, "team-practice", tuesday, place, effort, new Lends(45, at)));
        commitments.add(practice(id + "-thu", group, "team-practice", thursday, place, null, null));
        if (random.nextInt(3) == 0) {
            LocalDateTime learn = day(week, 2).atTime(17, 0);
            commitments.add(practice(id + "-wed", group, "technique", learn, null, null, null));
        }
    }

    private static Commitment practice(
            String id,
            String group,
            String family,
            LocalDateTime start,
            @Nullable String place,
            @Nullable Effort effort,
            @Nullable Lends lends) {
        return new Commitment(
                id, "Practice", List.of(group), List.of(), family, Moment.of(start), 90, place, effort, lends);
    }

    private void commit(
            String id,
            List<String> people,
            @Nullable String family,
            LocalDateTime start,
            int minutes,
            @Nullable String place,
            @Nullable Effort effort) {
        commitments.add(new Commitment(
                id, "Elsewhere", List.of(), people, family, Moment.of(start), minutes, place, effort, null));
    }

    private void match(int week, List<String> who, String family, LocalDateTime start, int minutes) {
        List<String> bench = random.nextBoolean() ? List.of("a1", "c1") : List.of("a2", "a4", "c2");
        List<String> concerned = athletes.stream()
                .filter(athlete -> athlete.groups().stream().anyMatch(who::contains))
                .map(Athlete::id)
                .toList();
        if (week < 0) {
            List<PersonEntry> people = new ArrayList<>();
            for (String id : concerned) {
                Double share = random.nextInt(3) == 0 ? 0.9 + random.nextInt(8) / 100.0 : null;
                people.add(new PersonEntry(id, null, bench.contains(id) ? 0 : null, List.of(), share, null, null));
            }
            history.add(Parts.entry(who.get(0), family, start, minutes, Dose.FULL, null, true, List.of(), people));
            return;
        }
        List<Appearance> expected = concerned.stream()
                .filter(bench::contains)
                .map(id -> new Appearance(id, random.nextInt(3) == 0 ? 20 + random.nextInt(30) : 0))
                .toList();
        int way = 30 * random.nextInt(7);
        fixtures.add(new Fixture(
                family + "-" + who.get(0) + "-" + week,
                "Match",
                who,
                family,
                Moment.of(start),
                minutes,
                null,
                FixtureWeight.values()[random.nextInt(3)],
                new Travel(way, way),
                random.nextInt(3) == 0 ? 7 + random.nextInt(6) : null,
                expected,
                List.of()));
    }

    /** Some of the aims were met before the plan, in one variant or another, and not always by everybody. */
    private void trained(int week, Group group) {
        for (var aim : group.aims()) {
            if (random.nextInt(5) < 2) {
                List<Variant> variants =
                        Catalogue.builtIn().family(aim.family()).variants();
                boolean known = !variants.isEmpty() && random.nextInt(6) > 0;
                String variant = known
                        ? variants.get(random.nextInt(4) > 0 ? 0 : random.nextInt(variants.size()))
                                .id()
                        : null;
                LocalTime time = LocalTime.of(9 + random.nextInt(10), 0);
                history.add(new LogEntry(
                        null,
                        null,
                        null,
                        group.id(),
                        aim.family(),
                        Moment.of(day(week, random.nextInt(7)).atTime(time)),
                        60,
                        random.nextInt(5) == 0 ? Dose.REDUCED : Dose.FULL,
                        variant,
                        null,
                        random.nextInt(8) > 0,
                        missedBySomebody(group.id()),
                        List.of(),
                        null));
            }
        }
    }

    private List<String> missedBySomebody(String group) {
        return athletes.stream()
                .filter(athlete -> athlete.groups().contains(group))
                .map(Athlete::id)
                .filter(id -> random.nextInt(12) == 0)
                .toList();
    }

    private List<Facility> facilities() {
        List<Window> open = List.of(Parts.window(EVERY_DAY, "07:00", "21:30"));
        LocalDate shut = firstDay.plusDays(random.nextInt(7));
        Away closed = new Away(Moment.of(shut.atTime(13, 0)), Moment.of(shut.atTime(18, 0)), "maintenance");
        return List.of(
                Parts.facility("pitch", "Pitch", FacilityKind.FIELD, 100, 2, List.of()),
                new Facility("gym", "Gym", List.of(FacilityKind.GYM), null, new Room(null, 16), open, List.of(closed)),
                Parts.facility("hall", "Hall", FacilityKind.HALL, 45, 1, open));
    }

    private List<StaffMember> staff() {
        LocalDate off = firstDay.plusDays(random.nextInt(7));
        Away away = new Away(Moment.of(off.atTime(8, 0)), Moment.of(off.atTime(20, 0)), null);
        List<String> speed = List.of("max-velocity", "acceleration", "technique", "intensive-plyometrics");
        return List.of(
                new StaffMember("c1", "Speed coach", speed, 1, List.of(), List.of(away)),
                new StaffMember(
                        "c2",
                        "Strength coach",
                        List.of("*"),
                        2,
                        List.of(Parts.window(EVERY_DAY, "09:00", "20:00")),
                        List.of()));
    }

    /** Facts that cost something here, and a few rules that weigh more or less than usual. */
    private Map<String, RuleSetting> rules() {
        Map<String, RuleSetting> rules = new LinkedHashMap<>();
        for (String fact : List.of("week-load", "load-spread", "load-ratio", "marks-old", "sits-out")) {
            if (random.nextBoolean()) {
                rules.put(fact, new RuleSetting(RuleLevel.WANT, null, Map.of()));
            }
        }
        if (random.nextInt(3) == 0) {
            rules.put("no-middle-day", new RuleSetting(null, 0.5, Map.of()));
            rules.put("variant-churn", new RuleSetting(null, 1.5, Map.of("exposures", 3)));
            rules.put("visits-per-day", new RuleSetting(RuleLevel.WANT, null, Map.of()));
        }
        return rules;
    }
}
