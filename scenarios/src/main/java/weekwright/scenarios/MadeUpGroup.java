package weekwright.scenarios;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Travel;

/** One made-up squad with its people, fixtures, practices and history. */
final class MadeUpGroup {
    private static final List<GroupKind> KINDS = List.of(
            GroupKind.FIELD, GroupKind.FIELD, GroupKind.COURT, GroupKind.SPRINT, GroupKind.FIELD, GroupKind.STRENGTH);

    private final String id;
    private final GroupKind kind;
    private final LocalDate firstDay;
    private final int days;
    private final Random random;
    private final Hours hours;
    private final List<Special> specials;
    private final int headcount;
    private final PerWeek highDays;
    private final List<Aim> aims;
    private final List<Athlete> athletes;
    private final List<Fixture> fixtures = new ArrayList<>();
    private final List<Commitment> commitments = new ArrayList<>();
    private final List<LogEntry> history = new ArrayList<>();

    private MadeUpGroup(
            int number, GroupKind kind, int specials, LocalDate firstDay, int days, List<Aim> aims, Random random) {
        this(
                number,
                kind,
                specials,
                firstDay,
                days,
                aims,
                Hours.CHOICE.get(random.nextInt(Hours.CHOICE.size())),
                random);
    }

    private MadeUpGroup(
            int number,
            GroupKind kind,
            int specials,
            LocalDate firstDay,
            int days,
            List<Aim> aims,
            Hours hours,
            Random random) {
        this.id = "g" + (number + 1);
        this.kind = kind;
        this.firstDay = firstDay;
        this.days = days;
        this.aims = aims;
        this.random = random;
        this.hours = hours;
        List<Special> shuffled = new ArrayList<>(List.of(Special.values()));
        Collections.shuffle(shuffled, random);
        this.specials = List.copyOf(shuffled.subList(0, specials));
        this.headcount = 12 + random.nextInt(12);
        this.highDays = new PerWeek(1, 3, 3 + random.nextInt(2));
        this.athletes = people();
    }

    /** A squad of 3 to 8 cohorts with so many sessions wanted a week. */
    static MadeUpGroup squad(int number, int sessions, LocalDate firstDay, int days, Random random) {
        GroupKind kind = number == 0 ? GroupKind.FIELD : KINDS.get(random.nextInt(KINDS.size()));
        List<Aim> aims = WishList.squad(sessions, plays(kind), random);
        MadeUpGroup group = new MadeUpGroup(number, kind, 2 + random.nextInt(6), firstDay, days, aims, random);
        LocalDate saturday = firstDay.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
        for (int week = -2; week <= days / 7; week++) {
            group.week(saturday.plusWeeks(week));
        }
        return group;
    }

    /** A small squad of one to three cohorts, with at most one fixture coming. */
    static MadeUpGroup tiny(int sessions, LocalDate firstDay, int days, Random random) {
        List<Aim> aims = WishList.small(sessions, random);
        MadeUpGroup group = new MadeUpGroup(0, GroupKind.FIELD, random.nextInt(3), firstDay, days, aims, random);
        group.match(firstDay.minusDays(1 + random.nextInt(5)), LocalTime.of(15, 0));
        group.train("max-velocity", firstDay.minusDays(6 + random.nextInt(3)), 65);
        if (random.nextInt(3) > 0) {
            group.match(firstDay.plusDays(2 + random.nextInt(days)), LocalTime.of(14, 30));
        }
        if (random.nextBoolean()) {
            group.practice(firstDay.plusDays(random.nextInt(days)), Effort.USUAL);
        }
        return group;
    }

    /** A small squad without anybody special, training on weekday evenings and Sunday mornings. */
    static MadeUpGroup small(int sessions, LocalDate firstDay, Random random) {
        List<Aim> aims = WishList.few(sessions, random);
        MadeUpGroup group = new MadeUpGroup(0, GroupKind.FIELD, 0, firstDay, 7, aims, Hours.EVENINGS, random);
        group.match(firstDay.minusDays(2 + random.nextInt(2)), LocalTime.of(15, 0));
        group.train("heavy-lower-knee", firstDay.minusDays(4), 60);
        group.train("max-velocity", firstDay.minusDays(4 + random.nextInt(3)), 65);
        group.match(firstDay.plusDays(5), LocalTime.of(14, 30));
        group.practice(firstDay.plusDays(1), random.nextBoolean() ? Effort.HARD : Effort.USUAL);
        if (random.nextBoolean()) {
            group.practice(firstDay.plusDays(3), Effort.USUAL);
        }
        return group;
    }

    Group group() {
        return Parts.group(id, "Squad " + id.substring(1), kind, headcount, hours.windows(), highDays, aims);
    }

    List<Athlete> athletes() {
        return athletes;
    }

    List<Fixture> fixtures() {
        return fixtures;
    }

    List<Commitment> commitments() {
        return commitments;
    }

    List<LogEntry> history() {
        return history;
    }

    private static boolean plays(GroupKind kind) {
        return kind == GroupKind.FIELD || kind == GroupKind.COURT;
    }

    private List<Athlete> people() {
        List<Athlete> people = new ArrayList<>();
        for (int i = 0; i < specials.size(); i++) {
            people.add(Parts.athlete(
                    athleteId(i), "Athlete " + (i + 1), id, specials.get(i).restrictions(firstDay, days, random)));
        }
        int named = specials.size() + 2;
        for (int i = specials.size(); i < named; i++) {
            people.add(Parts.athlete(athleteId(i), "Athlete " + (i + 1), id, List.of()));
        }
        return people;
    }

    private String athleteId(int i) {
        return id + "-a" + (i + 1);
    }

    /** The week that ends with this Saturday and the Sunday after it. */
    private void week(LocalDate saturday) {
        boolean past = saturday.isBefore(firstDay);
        boolean ahead = saturday.isAfter(firstDay.plusDays(days - 1L));
        boolean midweek = plays(kind) && random.nextInt(10) < 3;
        if (!ahead) {
            LocalDate monday = saturday.minusDays(5);
            if (past) {
                train("heavy-lower-knee", monday.plusDays(1), 60);
                train("max-velocity", monday.plusDays(2), 65);
                train("upper-strength", monday.plusDays(3), 45);
            }
            practices(monday, midweek);
        }
        if (midweek) {
            match(saturday.minusDays(4), LocalTime.of(19, 45));
        }
        if (plays(kind)) {
            match(saturday, LocalTime.of(14 + random.nextInt(4), random.nextBoolean() ? 0 : 30));
        }
    }

    private void practices(LocalDate monday, boolean midweek) {
        if (!plays(kind)) {
            return;
        }
        if (!midweek) {
            practice(monday.plusDays(1), random.nextInt(4) == 0 ? Effort.HARD : Effort.USUAL);
        }
        practice(monday.plusDays(3), null);
        if (random.nextBoolean()) {
            practice(monday.plusDays(4), Effort.EASY);
        }
    }

    private void practice(LocalDate day, @Nullable Effort effort) {
        int minutes = 60 + 5 * random.nextInt(6);
        LocalDateTime start = day.atTime(hours.practice());
        if (day.isBefore(firstDay)) {
            Double rpe = effort == null ? null : Double.valueOf(effort.rpe());
            history.add(Parts.done(id, "team-practice", start, minutes, Dose.FULL, rpe));
        } else {
            String place = kind == GroupKind.COURT ? "hall" : "pitch";
            commitments.add(Parts.practice(id + "-practice-" + day, id, start, minutes, place, effort));
        }
    }

    private void train(String family, LocalDate day, int minutes) {
        List<String> except = specials.contains(Special.MISSED) && !family.equals("upper-strength")
                ? List.of(athleteId(specials.indexOf(Special.MISSED)))
                : List.of();
        boolean done = random.nextInt(12) > 0;
        LocalDateTime start = day.atTime(hours.training().plusMinutes(15L * random.nextInt(5)));
        Double rpe = random.nextBoolean() ? null : 4 + random.nextInt(8) / 2.0;
        history.add(Parts.entry(id, family, start, minutes, Dose.FULL, rpe, done, except, List.of()));
    }

    private void match(LocalDate day, LocalTime start) {
        boolean court = kind == GroupKind.COURT;
        String family = court ? "court-fixture" : "fixture";
        if (day.isBefore(firstDay)) {
            history.add(played(family, day.atTime(start), court ? 90 : 110));
            return;
        }
        FixtureWeight weight = List.of(
                        FixtureWeight.REGULAR, FixtureWeight.REGULAR, FixtureWeight.KEY, FixtureWeight.MINOR)
                .get(random.nextInt(4));
        Travel travel = Travel.NONE;
        if (random.nextBoolean()) {
            int minutes = 15 * (2 + random.nextInt(9));
            travel = new Travel(minutes, minutes);
        }
        fixtures.add(Parts.fixture(
                id + "-match-" + day,
                "Match",
                id,
                family,
                day.atTime(start),
                court ? 90 : 110,
                weight,
                travel,
                expected()));
    }

    private List<Appearance> expected() {
        List<Appearance> expected = new ArrayList<>();
        for (int i = 0; i < specials.size(); i++) {
            if (!specials.get(i).playsInFull()) {
                expected.add(new Appearance(athleteId(i), specials.get(i).minutes()));
            }
        }
        return expected;
    }

    private LogEntry played(String family, LocalDateTime start, int minutes) {
        List<String> except = new ArrayList<>();
        List<PersonEntry> people = new ArrayList<>();
        for (int i = 0; i < specials.size(); i++) {
            int played = specials.get(i).minutes();
            if (played == 0) {
                except.add(athleteId(i));
            } else if (!specials.get(i).playsInFull()) {
                people.add(Parts.played(athleteId(i), played));
            }
        }
        return Parts.entry(id, family, start, minutes, Dose.FULL, 8.0, true, except, people);
    }
}
