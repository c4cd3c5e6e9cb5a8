package weekwright.scenarios;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** Makes up squads and their weeks for tests and measurements: the same seed always gives the same scenario. */
public final class SquadGenerator {
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("Europe/Dublin"),
            ZoneId.of("Europe/Madrid"),
            ZoneId.of("America/Chicago"),
            ZoneId.of("Australia/Hobart"));
    private static final LocalDate FIRST_MONDAY = LocalDate.of(2027, 1, 4);
    private static final int WEEKS_OF_THE_YEAR = 44;
    private static final List<Weekday> MON_TO_SAT =
            List.of(Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU, Weekday.FRI, Weekday.SAT);
    private static final List<Weekday> EVERY_DAY = List.of(Weekday.values());

    private SquadGenerator() {}

    /**
     * Some weeks of one or more squads that share facilities and staff, from a Monday.
     *
     * @param seed decides everything else
     * @param groups squads, at least 1
     * @param sessionsAbout sessions wanted in a week over all squads, about (the sum of all targets); up to 35 a squad
     * @param weeks length of the plan, 1 to 12
     * @throws IllegalArgumentException when a number lies outside
     */
    public static Scenario squad(long seed, int groups, int sessionsAbout, int weeks) {
        if (groups < 1 || sessionsAbout < groups || weeks < 1 || weeks > 12) {
            throw new IllegalArgumentException(
                    "a generated scenario has at least 1 group, a session for each and 1 to 12 weeks, not [" + groups
                            + ", " + sessionsAbout + ", " + weeks + "]");
        }
        Random random = new Random(seed);
        ZoneId zone = ZONES.get(random.nextInt(ZONES.size()));
        LocalDate firstDay = FIRST_MONDAY.plusWeeks(random.nextInt(WEEKS_OF_THE_YEAR));
        List<MadeUpGroup> squads = new ArrayList<>();
        for (int i = 0; i < groups; i++) {
            int share = sessionsAbout * (i + 1) / groups - sessionsAbout * i / groups;
            squads.add(MadeUpGroup.squad(i, share, firstDay, weeks * 7, random));
        }
        List<Facility> facilities = facilities(groups, firstDay, random);
        String id = "squad-" + Long.toUnsignedString(seed) + "-" + groups + "-" + sessionsAbout + "-" + weeks;
        return scenario(id, zone, firstDay, weeks * 7, 15, squads, facilities, staff(groups));
    }

    /**
     * A club of three small groups for two to four weeks in which everything that the rules know of happens: athletes of
     * several groups, shifts, second clubs, limits, lent minutes, learners, rotating lifts, tapers, journeys, packs, and
     * clocks that change.
     */
    public static Scenario club(long seed) {
        return MadeUpClub.of(seed);
    }

    /** One small squad with 3 to 5 sessions in 4 to 7 days on a grid of an hour, small enough to try everything. */
    public static Scenario tiny(long seed) {
        Random random = new Random(seed);
        ZoneId zone = ZONES.get(random.nextInt(ZONES.size()));
        LocalDate firstDay = FIRST_MONDAY.plusDays(random.nextInt(7 * WEEKS_OF_THE_YEAR));
        int days = 4 + random.nextInt(4);
        MadeUpGroup squad = MadeUpGroup.tiny(3 + random.nextInt(3), firstDay, days, random);
        List<Facility> facilities = List.of(
                Parts.facility("pitch", "Pitch", FacilityKind.FIELD, 100, 1, List.of()),
                Parts.facility("gym", "Gym", FacilityKind.GYM, null, 1, List.of(window("08:00", "19:00"))));
        List<StaffMember> staff = random.nextBoolean() ? staff(1) : List.of();
        String id = "tiny-" + Long.toUnsignedString(seed);
        return scenario(id, zone, firstDay, days, 60, List.of(squad), facilities, staff);
    }

    /**
     * One squad of equals with up to 8 sessions in a week of evenings, on a grid of an hour: small enough for a proof of the
     * best plan, crowded enough that it is not plain to see.
     */
    public static Scenario small(long seed) {
        Random random = new Random(seed);
        ZoneId zone = ZONES.get(random.nextInt(ZONES.size()));
        LocalDate firstDay = FIRST_MONDAY.plusWeeks(random.nextInt(WEEKS_OF_THE_YEAR));
        MadeUpGroup squad = MadeUpGroup.small(6 + random.nextInt(3), firstDay, random);
        List<Facility> facilities = List.of(
                Parts.facility("pitch", "Pitch", FacilityKind.FIELD, 100, 1, List.of()),
                Parts.facility("gym", "Gym", FacilityKind.GYM, null, 1, List.of(window("09:00", "20:00"))));
        String id = "small-" + Long.toUnsignedString(seed);
        return scenario(id, zone, firstDay, 7, 60, List.of(squad), facilities, List.of());
    }

    private static Scenario scenario(
            String id,
            ZoneId zone,
            LocalDate firstDay,
            int days,
            int gridMinutes,
            List<MadeUpGroup> squads,
            List<Facility> facilities,
            List<StaffMember> staff) {
        List<Group> groups = new ArrayList<>();
        List<Athlete> athletes = new ArrayList<>();
        List<Fixture> fixtures = new ArrayList<>();
        List<Commitment> commitments = new ArrayList<>();
        List<LogEntry> history = new ArrayList<>();
        for (MadeUpGroup squad : squads) {
            groups.add(squad.group());
            athletes.addAll(squad.athletes());
            fixtures.addAll(squad.fixtures());
            commitments.addAll(squad.commitments());
            history.addAll(squad.history());
        }
        return new Scenario(
                Scenario.VERSION,
                id,
                "Made-up squads, seed and size " + id,
                zone,
                firstDay,
                days,
                gridMinutes,
                groups,
                athletes,
                fixtures,
                commitments,
                facilities,
                transfers(facilities),
                staff,
                history,
                List.of(),
                Map.of(),
                List.of());
    }

    private static List<Facility> facilities(int groups, LocalDate firstDay, Random random) {
        List<Window> day = List.of(Parts.window(MON_TO_SAT, "07:00", "21:30"));
        List<Facility> facilities = new ArrayList<>();
        facilities.add(
                Parts.facility("pitch", "Training pitches", FacilityKind.FIELD, 100, Math.max(2, groups), List.of()));
        facilities.add(gym(groups, firstDay, day, random));
        facilities.add(Parts.facility("hall", "Hall", FacilityKind.HALL, 45, Math.max(1, groups / 4), day));
        facilities.add(Parts.facility(
                "track", "Track", FacilityKind.TRACK, 110, Math.max(1, groups / 2), List.of(window("08:00", "21:00"))));
        facilities.add(Parts.facility("pool", "Pool", FacilityKind.POOL, null, 2, List.of(window("09:00", "20:00"))));
        return facilities;
    }

    private static Facility gym(int groups, LocalDate firstDay, List<Window> open, Random random) {
        LocalDate shut = firstDay.plusDays(random.nextInt(5));
        Facility gym =
                Parts.facility("gym", "Weights room", FacilityKind.GYM, null, Math.max(1, (groups + 1) / 3), open);
        Away closed = new Away(Moment.of(shut.atTime(13, 0)), Moment.of(shut.atTime(18, 0)), "maintenance");
        return new Facility(
                gym.id(), gym.label(), gym.offers(), gym.straightMetres(), gym.room(), gym.open(), List.of(closed));
    }

    private static Window window(String from, String to) {
        return Parts.window(EVERY_DAY, from, to);
    }

    private static List<Transfer> transfers(List<Facility> facilities) {
        List<Transfer> transfers = new ArrayList<>();
        for (int i = 0; i < facilities.size(); i++) {
            for (int j = i + 1; j < facilities.size(); j++) {
                List<String> between =
                        List.of(facilities.get(i).id(), facilities.get(j).id());
                transfers.add(new Transfer(between, 5 * (i + j)));
            }
        }
        return transfers;
    }

    private static List<StaffMember> staff(int groups) {
        List<StaffMember> staff = new ArrayList<>();
        for (int i = 1; i <= groups + 1; i++) {
            List<String> leads = i % 3 == 2 ? List.of("max-velocity", "acceleration", "tempo-run") : List.of("*");
            staff.add(new StaffMember("c" + i, "Coach " + i, leads, 1 + i % 2, List.of(), List.of()));
        }
        return staff;
    }
}
