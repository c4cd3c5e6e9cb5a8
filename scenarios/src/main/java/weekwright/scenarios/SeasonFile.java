package weekwright.scenarios;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * The matches of one real professional football club in a season, in order. Source: openfootball public football data
 * (CC0 1.0), clubs and competitions replaced by codes.
 *
 * @param club code of the club
 */
public record SeasonFile(String club, List<Match> matches) {
    /** The zone of the kick-off times. */
    public static final ZoneId ZONE = ZoneId.of("Europe/London");

    /** Seasons that come with the program. */
    public static final int CLUBS = 6;

    private static final String HEADER = "date,kickoff_local,competition,venue";

    public SeasonFile {
        matches = List.copyOf(matches);
    }

    /** One match, kick-off in local time. */
    public record Match(LocalDate date, LocalTime kickOff, String competition, boolean home) {
        /** When it kicks off. */
        public Moment start() {
            return Moment.of(date.atTime(kickOff));
        }
    }

    /**
     * Reads one of the seasons that come with the program.
     *
     * @param number 1 to 6
     * @throws IllegalArgumentException when it is another number
     */
    public static SeasonFile club(int number) {
        if (number < 1 || number > CLUBS) {
            throw new IllegalArgumentException("there is no season of club [" + number + "]: there are 1 to " + CLUBS);
        }
        return parse("club-" + number, new String(table(number), StandardCharsets.UTF_8));
    }

    /** The table of one of the seasons, 1 to 6, as it lies with the program. */
    public static byte[] table(int number) {
        return Scenarios.resource("seasons/season-club-" + number + ".csv");
    }

    /**
     * Changes of dates and kick-offs during a season, with the day on which each was listed: competition, home, away, date
     * and time before and after. Twelve rows carry a wrong year.
     */
    public static byte[] reschedules() {
        return Scenarios.resource("seasons/reschedules.csv");
    }

    /**
     * Reads rows of date, kick-off, competition and venue below a heading.
     *
     * @throws IllegalArgumentException when a row is not of that form; the message names its line
     */
    public static SeasonFile parse(String club, String csv) {
        List<String> lines = csv.lines().toList();
        if (lines.isEmpty() || !lines.get(0).equals(HEADER)) {
            throw new IllegalArgumentException("line 1 of a season must be [" + HEADER + "]");
        }
        List<Match> matches = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            matches.add(match(lines.get(i), i + 1));
        }
        return new SeasonFile(club, matches);
    }

    private static Match match(String line, int number) {
        List<String> cells = List.of(line.split(",", -1));
        if (cells.size() != 4 || !List.of("home", "away").contains(cells.get(3))) {
            throw new IllegalArgumentException(
                    "line " + number + " [" + line + "] must hold " + HEADER + ", the venue being home or away");
        }
        return new Match(
                LocalDate.parse(cells.get(0)),
                LocalTime.parse(cells.get(1)),
                cells.get(2),
                cells.get(3).equals("home"));
    }

    /** The elapsed times from each kick-off to the next. */
    public List<Duration> gaps() {
        List<Duration> gaps = new ArrayList<>();
        for (int i = 1; i < matches.size(); i++) {
            gaps.add(Duration.between(
                    matches.get(i - 1).start().instant(ZONE),
                    matches.get(i).start().instant(ZONE)));
        }
        return List.copyOf(gaps);
    }

    /** The matches on the dates from the first to the last, both included. */
    public List<Match> between(LocalDate first, LocalDate last) {
        return matches.stream()
                .filter(match -> !match.date().isBefore(first) && !match.date().isAfter(last))
                .toList();
    }

    /** The most matches that fall into so many days running. */
    public int busiest(int days) {
        return matches.stream()
                .mapToInt(match ->
                        between(match.date(), match.date().plusDays(days - 1L)).size())
                .max()
                .orElse(0);
    }

    /**
     * The first Monday, with all of the 28 days before it in the season, from which two weeks hold one match each, a
     * week or more after the match before.
     *
     * @throws IllegalStateException when the season has no such fortnight
     */
    public LocalDate quietFortnight() {
        LocalDate last = matches.get(matches.size() - 1).date();
        LocalDate monday =
                matches.get(0).date().plusDays(Scenario.EDGE_DAYS).with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
        for (LocalDate day = monday; !day.isAfter(last); day = day.plusWeeks(1)) {
            if (quietWeek(day) && quietWeek(day.plusDays(7))) {
                return day;
            }
        }
        throw new IllegalStateException("the season of " + club + " has no fortnight of one match a week");
    }

    private boolean quietWeek(LocalDate monday) {
        List<Match> week = between(monday, monday.plusDays(6));
        return week.size() == 1 && daysSince(week.get(0).date()) >= 7;
    }

    /** The Monday of the week that holds the second match of the shortest turnaround, less one week. */
    public LocalDate fortnightOfShortestGap() {
        List<Duration> gaps = gaps();
        int shortest = gaps.indexOf(gaps.stream().min(Duration::compareTo).orElseThrow());
        return matches.get(shortest + 1)
                .date()
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                .minusWeeks(1);
    }

    /**
     * A scenario of so many days with these matches, and an invented squad and invented grounds round them; the 28 days
     * before it are its history.
     */
    public Scenario stretch(LocalDate firstDay, int days) {
        return new SeasonStretch(this, firstDay, days).scenario();
    }

    /** The days from the latest match before a date to that date, or many. */
    long daysSince(LocalDate date) {
        return matches.stream()
                .map(Match::date)
                .filter(day -> day.isBefore(date))
                .reduce((earlier, later) -> later)
                .map(day -> ChronoUnit.DAYS.between(day, date))
                .orElse(Long.MAX_VALUE);
    }

    /** The days from a date to the next match, 0 on a day of a match, or many. */
    long daysUntil(LocalDate date) {
        return matches.stream()
                .map(Match::date)
                .filter(day -> !day.isBefore(date))
                .findFirst()
                .map(day -> ChronoUnit.DAYS.between(date, day))
                .orElse(Long.MAX_VALUE);
    }
}
