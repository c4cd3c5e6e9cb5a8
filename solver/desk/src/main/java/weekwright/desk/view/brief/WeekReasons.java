package weekwright.desk.view.brief;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.PlanPage.Day;
import weekwright.desk.view.plan.PlanPage.Lane;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demands;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Why a group's week looks as it does, in three sentences: its high work, its free and light days, what gives way. */
final class WeekReasons {
    /** A fixture further off has nothing to do with where the high work of a week lies. */
    private static final Duration RUN_UP = Duration.ofDays(7);
    /** Points below which a wish is not worth a head coach's time; expert proposal. */
    private static final double WORTH_TELLING = 2;

    private static final double MOST_OF_A_GROUP = 0.8;
    /** Missing sessions and small doses stand among what was given up. */
    private static final List<String> TOLD_ELSEWHERE = List.of("aim-least", "aim-target", "dose-kept");

    private final Scenario scenario;
    private final Plan plan;
    private final Group group;
    private final Lane lane;
    private final Catalogue catalogue;

    WeekReasons(Scenario scenario, Plan plan, Group group, Lane lane) {
        this.scenario = scenario;
        this.plan = plan;
        this.group = group;
        this.lane = lane;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    List<String> sentences() {
        return List.of(highWork(), freeAndLight(), givesWay());
    }

    // --- the high work ---

    private String highWork() {
        List<Day> high = lane.days().stream()
                .filter(day -> day.dayClass() == DayClass.HIGH
                        && fixturesOn(day.date()).isEmpty())
                .toList();
        if (high.isEmpty()) {
            List<Fixture> played = lane.days().stream()
                    .flatMap(day -> fixturesOn(day.date()).stream())
                    .toList();
            return played.isEmpty()
                    ? "No day of this week is high."
                    : "No day is high but " + (played.size() == 1 ? "that of " : "those of ") + and(labels(played))
                            + ".";
        }
        return "The high work lies on " + and(days(high)) + distance(high) + ".";
    }

    private static List<String> labels(List<Fixture> fixtures) {
        return fixtures.stream().map(Fixture::label).toList();
    }

    /** How far it lies from the next fixture, or where none is near how far one high day from the next. */
    private String distance(List<Day> high) {
        Optional<Instant> end = end(high.get(high.size() - 1));
        Optional<Fixture> next = end.flatMap(this::fixtureSoonAfter);
        if (next.isPresent()) {
            Duration gap = Duration.between(
                    end.orElseThrow(), instant(next.orElseThrow().start()));
            return "; the last of it ends " + hours(gap) + " before "
                    + next.orElseThrow().label();
        }
        return closest(high)
                .map(gap -> "; at least " + hours(gap) + " lie between one and the next")
                .orElse("");
    }

    private Optional<Fixture> fixtureSoonAfter(Instant end) {
        return scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group.id()))
                .filter(fixture -> instant(fixture.start()).isAfter(end))
                .filter(fixture -> !instant(fixture.start()).isAfter(end.plus(RUN_UP)))
                .min(Comparator.comparing(fixture -> instant(fixture.start())));
    }

    private Optional<Duration> closest(List<Day> high) {
        List<Duration> gaps = new ArrayList<>();
        for (int i = 1; i < high.size(); i++) {
            Optional<Instant> start = start(high.get(i));
            end(high.get(i - 1)).ifPresent(end -> start.ifPresent(next -> gaps.add(Duration.between(end, next))));
        }
        return gaps.stream().min(Comparator.naturalOrder());
    }

    /** What lies on a date: the hard sessions, or where none is hard by itself all of it. */
    private List<Lying> hardOn(LocalDate date) {
        List<Lying> all = Stream.concat(
                        plan.placements().stream().map(this::lying),
                        scenario.commitments().stream().map(this::lying))
                .filter(Objects::nonNull)
                .filter(one -> one.start().date().equals(date))
                .toList();
        List<Lying> hard =
                all.stream().filter(one -> one.demand() > Demands.LOW_TO).toList();
        return hard.isEmpty() ? all : hard;
    }

    /** A session or practice of the group. */
    private record Lying(Moment start, int minutes, int demand) {}

    private @Nullable Lying lying(Placement one) {
        Integer minutes = one.minutes();
        boolean strength = group.kind() == GroupKind.STRENGTH;
        return one.group().equals(group.id()) && minutes != null
                ? new Lying(
                        one.start(),
                        minutes,
                        Demands.sessionDemand(catalogue.family(one.family()), one.dose(), strength))
                : null;
    }

    private @Nullable Lying lying(Commitment one) {
        boolean trains = one.groups().contains(group.id()) && one.family() != null;
        return trains ? new Lying(one.start(), one.minutes(), 0) : null;
    }

    private Optional<Instant> end(Day day) {
        return hardOn(day.date()).stream()
                .map(one -> instant(one.start()).plus(Duration.ofMinutes(one.minutes())))
                .max(Comparator.naturalOrder());
    }

    private Optional<Instant> start(Day day) {
        return hardOn(day.date()).stream().map(one -> instant(one.start())).min(Comparator.naturalOrder());
    }

    private Instant instant(Moment moment) {
        return moment.instant(scenario.zone());
    }

    private static String hours(Duration gap) {
        long minutes = gap.toMinutes();
        return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }

    // --- free and light days ---

    private String freeAndLight() {
        List<Day> free = lane.days().stream()
                .filter(day -> day.dayClass() == DayClass.FREE)
                .toList();
        List<String> parts = new ArrayList<>();
        parts.add(free.isEmpty() ? "no day is free" : and(days(free)) + (free.size() == 1 ? " is free" : " are free"));
        for (Day day : lane.days()) {
            List<Fixture> next = fixturesOn(day.date().plusDays(1));
            if (!next.isEmpty()
                    && day.dayClass() != DayClass.FREE
                    && fixturesOn(day.date()).isEmpty()) {
                parts.add("the day before " + next.get(0).label() + " is "
                        + day.dayClass().id());
            }
        }
        String sentence = Words.joined(parts, ", and ");
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".";
    }

    // --- what gives way ---

    private String givesWay() {
        List<Finding> broken = plan.findings().stream()
                .filter(finding -> finding.groups().contains(group.id()) && ofThisWeek(finding))
                .filter(finding -> finding.level().compareTo(RuleLevel.TOLD) < 0)
                .filter(finding -> !TOLD_ELSEWHERE.contains(finding.rule()))
                .sorted(Comparator.comparing(Finding::level).thenComparing(finding -> -finding.cost()))
                .toList();
        long musts =
                broken.stream().filter(one -> one.level() == RuleLevel.MUST).count();
        if (musts > 0) {
            return (musts == 1
                            ? "One thing that must hold does not: "
                            : musts + " things that must hold do not, first: ")
                    + said(broken.get(0));
        }
        if (broken.isEmpty() || broken.get(0).cost() < WORTH_TELLING) {
            return "All that must hold holds, and "
                    + (broken.isEmpty() ? "no wish gives way." : "only small wishes give way.");
        }
        Finding most = broken.get(0);
        return "All that must hold holds; what gives way most" + forSome(most) + ": " + said(most);
    }

    /** Whom it is about, where that is not most of the group. */
    private String forSome(Finding finding) {
        long listed = scenario.athletes().stream()
                .filter(athlete -> athlete.groups().contains(group.id()))
                .count();
        Integer headcount = group.headcount();
        long all = Math.max(headcount == null ? 1 : headcount, listed);
        return finding.heads() < MOST_OF_A_GROUP * all ? ", for " + finding.heads() + " of " + all : "";
    }

    private boolean ofThisWeek(Finding finding) {
        LocalDate first = lane.days().get(0).date();
        return finding.week() == null || finding.week().equals(first);
    }

    /** The sentence without its group, and without whom of the group it concerns. */
    private String said(Finding finding) {
        String text = finding.text().isBlank() ? finding.title() + "." : finding.text();
        String label = group.label() + ": ";
        String own = text.startsWith(label) ? text.substring(label.length()) : text;
        int concerns = own.indexOf(" Concerns ");
        String told = concerns < 0 ? own : own.substring(0, concerns);
        for (Aim aim : group.aims()) {
            String family = catalogue.family(aim.family()).label();
            told = told.replace(family, Words.brief(family));
        }
        return told;
    }

    private List<Fixture> fixturesOn(LocalDate date) {
        return scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group.id()))
                .filter(fixture -> fixture.start().date().equals(date))
                .toList();
    }

    private static List<String> days(List<Day> days) {
        return days.stream().map(WeekReasons::day).toList();
    }

    private static String day(Day day) {
        String matchDay = Dates.matchDay(day.matchDay());
        return Dates.day(day.date()) + (matchDay.isEmpty() ? "" : " (" + matchDay + ")");
    }

    private static String and(List<String> words) {
        return Words.and(words);
    }
}
