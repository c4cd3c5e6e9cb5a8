package weekwright.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/** The demo weeks are what their notes say. Where no source stands beside a check, it is common practice, no source. */
class ScenariosTest {
    private static Stream<String> names() {
        return Scenarios.all().stream().map(Demo::name);
    }

    @Test
    void theDemosAreListedInTheOrderInWhichTheyAreShown() {
        assertThat(names())
                .containsExactly(
                        "one-match",
                        "two-matches",
                        "sprint-week",
                        "two-evenings",
                        "clash",
                        "hurdle-learners",
                        "sprint-month",
                        "rotating-lifts",
                        "academy",
                        "court-week",
                        "clocks-forward",
                        "clocks-back",
                        "two-groups",
                        "four-evenings",
                        "bench-sunday",
                        "under-15",
                        "twelve-weeks");
    }

    @ParameterizedTest
    @MethodSource("names")
    void aDemoReadsWithoutProblemsAndBearsTheTitleOfItsFile(String name) {
        Demo demo = Scenarios.all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();

        assertThat(Scenarios.read(name).title()).isEqualTo(demo.title());
        assertThat(demo.note()).endsWith(".").hasSizeBetween(80, 400);
    }

    @Test
    void anUnknownDemoIsRefusedWithTheNamesThatThereAre() {
        assertThatThrownBy(() -> Scenarios.read("three-matches"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no demo scenario is called \"three-matches\": did you mean two-matches?");
        assertThatThrownBy(() -> Scenarios.read("x"))
                .hasMessage("no demo scenario is called \"x\": known are " + names().collect(Collectors.joining(", ")));
    }

    @Test
    void theFileOfADemoIsGivenAsItWasWritten() {
        assertThat(new String(Scenarios.bytes("two-matches"), StandardCharsets.UTF_8))
                .startsWith("{\n  \"weekwright\": 1,\n  \"id\": \"valdorre-two-matches\"")
                .contains("V. Núñera")
                .endsWith("}\n");
    }

    @ParameterizedTest
    @MethodSource("names")
    void allDatesOfADemoAreFixedIn2027(String name) {
        Scenario scenario = Scenarios.read(name);

        assertThat(scenario.firstDay().getYear()).isEqualTo(2027);
        assertThat(scenario.fixtures())
                .allMatch(fixture -> fixture.start().date().getYear() == 2027);
    }

    @Test
    void theDemosLieInZonesAllOverTheWorld() {
        assertThat(names().map(name -> Scenarios.read(name).zone().getId()).distinct())
                .contains("Europe/Dublin", "Europe/Madrid", "Australia/Hobart", "Pacific/Auckland", "America/Chicago");
    }

    @ParameterizedTest
    @MethodSource("names")
    void idsAreUniqueInTheirListAndDemosShareNone(String name) {
        Scenario scenario = Scenarios.read(name);

        assertThat(scenario.groups()).extracting(Group::id).doesNotHaveDuplicates();
        assertThat(scenario.athletes()).extracting(Athlete::id).doesNotHaveDuplicates();
        assertThat(scenario.athletes()).extracting(Athlete::name).doesNotHaveDuplicates();
        assertThat(scenario.fixtures()).extracting(Fixture::id).doesNotHaveDuplicates();
        assertThat(scenario.commitments()).extracting(Commitment::id).doesNotHaveDuplicates();
        assertThat(scenario.facilities()).extracting(Facility::id).doesNotHaveDuplicates();
        assertThat(scenario.staff()).extracting(StaffMember::id).doesNotHaveDuplicates();
        assertThat(names().map(other -> Scenarios.read(other).id())).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyAimCouldBeMetByTheFacilitiesAndTheStaffThatThereAre(String name) {
        Scenario scenario = Scenarios.read(name);
        Catalogue catalogue = Catalogue.builtIn().with(scenario.catalogue());

        for (Group group : scenario.groups()) {
            for (Aim aim : group.aims()) {
                Family family = catalogue.family(aim.family());
                assertThat(family.facility().isEmpty()
                                || scenario.facilities().stream().anyMatch(place -> serves(place, family)))
                        .as("a place for " + aim.family())
                        .isTrue();
                assertThat(scenario.staff())
                        .as("a lead for " + aim.family())
                        .anyMatch(member ->
                                member.leads(aim.family()) || group.id().equals("jumpers"));
            }
        }
    }

    private static boolean serves(Facility place, Family family) {
        Integer straight = family.straightMetres();
        return place.offers().stream().anyMatch(family.facility()::contains)
                && (straight == null || place.straightMetres() == null || place.straightMetres() >= straight);
    }

    @ParameterizedTest
    @MethodSource("names")
    void theHistoryReachesBackFourWeeksWithoutTwoThingsAtOnce(String name) {
        Scenario scenario = Scenarios.read(name);
        for (Group group : scenario.groups()) {
            List<LogEntry> own = scenario.history().stream()
                    .filter(entry -> entry.group().equals(group.id()))
                    .toList();
            assertThat(own.get(0).start().date()).isBefore(scenario.firstDay().minusDays(21));
            for (int i = 1; i < own.size(); i++) {
                LogEntry before = own.get(i - 1);
                Instant end = before.start().instant(scenario.zone()).plus(Duration.ofMinutes(before.minutes()));
                assertThat(own.get(i).start().instant(scenario.zone()))
                        .as(own.get(i).family() + " on " + own.get(i).start())
                        .isAfterOrEqualTo(end);
            }
        }
    }

    @Test
    void whoIsKeptFromRunningFastByAClinicianIsNotExpectedToPlay() {
        names().map(Scenarios::read).forEach(scenario -> {
            for (Athlete athlete : scenario.athletes()) {
                for (Fixture fixture : scenario.fixtures()) {
                    boolean restricted = athlete.restrictions().stream()
                            .anyMatch(one -> one.holdsOn(fixture.start().date()));
                    assertThat(!restricted
                                    || fixture.expected().stream()
                                            .anyMatch(one -> one.athlete().equals(athlete.id()) && one.minutes() == 0))
                            .as(athlete.name() + " in " + fixture.label())
                            .isTrue();
                }
            }
        });
    }

    @Test
    void theOneMatchWeekRunsFromMondayWithTheMatchOnSaturdayAndALightPracticeBeforeIt() {
        Scenario scenario = Scenarios.read("one-match");
        Group squad = scenario.groups().get(0);
        Fixture match = scenario.fixtures().get(0);

        assertThat(scenario.firstDay().getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(scenario.days()).isEqualTo(7);
        assertThat(match.start().date().getDayOfWeek()).isEqualTo(DayOfWeek.SATURDAY);
        assertThat(scenario.history())
                .anyMatch(entry -> entry.family().equals("fixture")
                        && entry.start().date().equals(match.start().date().minusDays(7)));
        assertThat(squad.headcount()).isBetween(18, 24);
        assertThat(scenario.athletes())
                .hasSizeBetween(8, 10)
                .allMatch(athlete -> !athlete.marks().isEmpty());
        assertThat(scenario.athletes().stream()
                        .filter(athlete -> !athlete.restrictions().isEmpty()))
                .hasSize(1);
        assertThat(scenario.commitments()).hasSizeBetween(2, 3);
        Commitment last = scenario.commitments().get(scenario.commitments().size() - 1);
        assertThat(last.start().date()).isEqualTo(match.start().date().minusDays(1));
        assertThat(last.effort()).isEqualTo(Effort.EASY);
        assertThat(squad.highDays().target()).isEqualTo(3);
        assertThat(squad.highDays().most()).isEqualTo(3);
    }

    @Test
    void betweenTwoMatchesNoHourIsFarEnoughFromBothForAFullHeavySquat() {
        // Sat-Tue-Sat: at most a micro exposure on the second day before (expert proposal): 40 h after, 64 h before
        Scenario scenario = Scenarios.read("two-matches");
        Instant saturday = lastFixtureBefore(scenario);
        Instant tuesday = kickOff(scenario, 0);
        Instant nextSaturday = kickOff(scenario, 1);

        assertThat(hours(saturday, tuesday)).isLessThan(40 + 1 + 64);
        assertThat(hours(tuesday.plus(Duration.ofMinutes(110)), nextSaturday)).isLessThan(40 + 1 + 64);
        assertThat(aim(scenario, "heavy-lower-knee").doses()).containsExactly(Dose.FULL, Dose.REDUCED);
        assertThat(aim(scenario, "max-velocity").doses()).contains(Dose.MICRO);
        assertThat(aim(scenario, "max-velocity").microCounts()).isTrue();
    }

    @Test
    void theSprintWeekHasNoFixtureAndTwoGroupsThatTakeTurnsInTheGym() {
        Scenario scenario = Scenarios.read("sprint-week");
        Facility gym = scenario.facilities().stream()
                .filter(place -> place.id().equals("gym"))
                .findFirst()
                .orElseThrow();

        assertThat(scenario.fixtures()).isEmpty();
        assertThat(scenario.groups()).extracting(Group::id).containsExactly("sprinters", "jumpers");
        assertThat(scenario.groups())
                .allMatch(group -> group.highDays() != null && group.highDays().target() == 3);
        assertThat(gym.room().groups()).isEqualTo(1);
    }

    @Test
    void twoEveningsHaveRoomForStrengthAfterOnePracticeAndForSpeedBeforeTheOther() {
        Scenario scenario = Scenarios.read("two-evenings");
        Commitment tuesday = scenario.commitments().get(0);
        Commitment thursday = scenario.commitments().get(1);
        Catalogue catalogue = Catalogue.builtIn();
        int strength = Demands.wholeMinutes(catalogue.family("full-body-strength"), null, Dose.FULL, 1);
        int speed = Demands.wholeMinutes(catalogue.family("max-velocity"), null, Dose.MICRO, 1);
        int walk = scenario.transfers().get(0).minutes();

        // 18:30 to 21:00 on both evenings
        int tuesdayEnd = minuteOfDay(tuesday) + tuesday.minutes();
        int toTheHourGrid = (tuesdayEnd + walk + 14) / 15 * 15;
        assertThat(toTheHourGrid + strength).isLessThanOrEqualTo(21 * 60);
        assertThat(18 * 60 + 30 + speed).isLessThanOrEqualTo(minuteOfDay(thursday));
        assertThat(scenario.groups().get(0).windows()).hasSize(1);
        assertThat(tuesday.lends()).isNotNull();
        assertThat(thursday.lends()).isNotNull();
    }

    @Test
    void inTheClashNeitherKeyAimCanBeReachedAtAll() {
        Scenario scenario = Scenarios.read("clash");

        assertThat(scenario.groups().get(0).aims())
                .filteredOn(aim -> aim.priority() == Priority.KEY)
                .extracting(Aim::family)
                .containsExactly("heavy-lower-knee", "max-velocity");
        assertThat(startsThatTheMatchesAllow(scenario, 40, 64, true))
                .as("heavy squat")
                .isEmpty();
        assertThat(startsThatTheMatchesAllow(scenario, 64, 40, false))
                .as("maximal speed")
                .isEmpty();
        assertThat(startsThatTheMatchesAllow(scenario, 40, 40, false))
                .as("acceleration")
                .isNotEmpty();
    }

    /** Quarter hours in the windows (and, of the weights room, in its open hours) with so many hours round all matches. */
    private static List<Instant> startsThatTheMatchesAllow(Scenario scenario, int after, int before, boolean gym) {
        List<Instant> ends = new ArrayList<>(List.of(lastFixtureBefore(scenario).plus(Duration.ofMinutes(110))));
        List<Instant> kickOffs = new ArrayList<>();
        for (int i = 0; i < scenario.fixtures().size(); i++) {
            kickOffs.add(kickOff(scenario, i));
            ends.add(kickOff(scenario, i).plus(Duration.ofMinutes(110)));
        }
        List<Instant> starts = new ArrayList<>();
        Group squad = scenario.groups().get(0);
        Facility room = scenario.facilities().get(1);
        for (LocalDate day = scenario.firstDay(); !day.isAfter(scenario.lastDay()); day = day.plusDays(1)) {
            LocalDate date = day;
            for (int minute = 0; minute < 1440; minute += 15) {
                int at = minute;
                Instant start = date.atStartOfDay()
                        .plusMinutes(minute)
                        .atZone(scenario.zone())
                        .toInstant();
                boolean inWindow = squad.windows().stream()
                        .anyMatch(w -> w.holdsOn(date) && w.from().minutes() <= at && at < w.to().minutes());
                boolean away = squad.away().stream()
                        .anyMatch(a -> !start.isBefore(a.from().instant(scenario.zone()))
                                && start.isBefore(a.to().instant(scenario.zone())));
                boolean shut = gym
                        && room.closed().stream()
                                .anyMatch(a -> !start.isBefore(a.from().instant(scenario.zone()))
                                        && start.isBefore(a.to().instant(scenario.zone())));
                boolean tooSoon = ends.stream().anyMatch(end -> !end.isAfter(start) && hours(end, start) < after);
                boolean tooLate = kickOffs.stream().anyMatch(k -> k.isAfter(start) && hours(start, k) < before);
                if (inWindow && !away && !shut && !tooSoon && !tooLate) {
                    starts.add(start);
                }
            }
        }
        return starts;
    }

    private static Instant lastFixtureBefore(Scenario scenario) {
        return scenario.history().stream()
                .filter(entry -> entry.family().equals("fixture"))
                .map(entry -> entry.start().instant(scenario.zone()))
                .max(Instant::compareTo)
                .orElseThrow();
    }

    private static Instant kickOff(Scenario scenario, int fixture) {
        return scenario.fixtures().get(fixture).start().instant(scenario.zone());
    }

    private static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / 60.0;
    }

    private static int minuteOfDay(Commitment commitment) {
        return commitment.start().local().getHour() * 60
                + commitment.start().local().getMinute();
    }

    private static Aim aim(Scenario scenario, String family) {
        return scenario.groups().get(0).aims().stream()
                .filter(aim -> aim.family().equals(family))
                .findFirst()
                .orElseThrow();
    }
}
