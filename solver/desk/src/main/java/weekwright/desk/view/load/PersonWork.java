package weekwright.desk.view.load;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.LoadReport.Exposure;
import weekwright.model.answer.LoadReport.Series;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.load.DoneLoad;
import weekwright.model.plan.Placement;
import weekwright.model.prescription.Units;
import weekwright.model.prescription.Work;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** What somebody's sessions hold: metres, contacts, sets, and when each quality is met. */
final class PersonWork {
    /** Share of best speed from which a measured run counts (Malone et al. 2017, J Sci Med Sport 20:250-254). */
    private static final double EXPOSURE = 0.95;

    private final Scenario scenario;
    private final Catalogue catalogue;
    private final Who who;
    private final Units units;
    private final SessionWorks works;
    private final @Nullable LocalDate doneUntil;
    private final List<LogEntry> done;
    private final List<Placement> planned;

    PersonWork(Sources sources, Who who, Units units) {
        this.scenario = sources.scenario();
        this.who = who;
        this.units = units;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
        works = new SessionWorks(scenario);
        doneUntil = sources.doneUntil();
        done = sources.entries().stream()
                .filter(entry -> who.groups().contains(entry.group()) && DoneLoad.took(entry, who.athleteId()))
                .toList();
        planned = sources.judged() == null
                ? List.of()
                : sources.judged().plan().placements().stream()
                        .filter(placement -> isOurs(placement, sources))
                        .toList();
    }

    private boolean isOurs(Placement placement, Sources sources) {
        if (who.athlete() == null) {
            return placement.group().equals(who.id()) && Presence.share(placement) != Share.NOT_PLAYED;
        }
        return sources.people().stream()
                .filter(person -> person.athlete().equals(who.id()))
                .anyMatch(person -> person.sessions().contains(Objects.requireNonNullElse(placement.id(), "")));
    }

    /** What the sessions from a day to before another hold. */
    LoadReport.Content in(Series series, LocalDate from, LocalDate before) {
        List<Work> some = series == Series.DONE
                ? done.stream()
                        .filter(entry -> isIn(entry.start().date(), from, before))
                        .map(entry -> works.of(entry, group(entry.group())))
                        .toList()
                : planned.stream()
                        .filter(placement -> isIn(placement.start().date(), from, before))
                        .map(placement -> works.of(placement, group(placement.group())))
                        .toList();
        double fast =
                some.stream().mapToDouble(work -> work.fastMetres(who.level())).sum();
        int contacts =
                some.stream().mapToInt(work -> work.contacts(who.level())).sum();
        return new LoadReport.Content(
                length(fast),
                length(metres(some, ContentKind.SPRINT)),
                length(metres(some, ContentKind.RUN)),
                contacts,
                sets(some));
    }

    private static boolean isIn(LocalDate day, LocalDate from, LocalDate before) {
        return !day.isBefore(from) && day.isBefore(before);
    }

    private Group group(String id) {
        return scenario.groups().stream()
                .filter(group -> group.id().equals(id))
                .findFirst()
                .orElse(who.group());
    }

    private Stream<Content> lines(List<Work> some) {
        return some.stream().flatMap(work -> work.lines(who.level()).stream());
    }

    private double metres(List<Work> some, ContentKind kind) {
        return lines(some)
                .filter(line -> line.kind() == kind && line.metres() != null)
                .mapToDouble(line -> line.count() * (Objects.requireNonNullElse(line.metres(), 0.0) + line.runIn()))
                .sum();
    }

    private Map<Pathway, Integer> sets(List<Work> some) {
        Map<Pathway, Integer> sets = new EnumMap<>(Pathway.class);
        lines(some)
                .filter(line -> line.kind() == ContentKind.LIFT || line.kind() == ContentKind.JUMP)
                .forEach(line -> {
                    if (line.pathway() != null) {
                        sets.merge(line.pathway(), line.sets(), Integer::sum);
                    }
                });
        return sets;
    }

    private double length(double metres) {
        return Math.rint(units.ofMetres(metres));
    }

    /** When each quality that the group has aims for was and will be met. */
    List<Exposure> exposures() {
        return Stream.of(Pathway.values())
                .filter(quality -> aims().contains(quality))
                .map(this::exposure)
                .toList();
    }

    private Set<Pathway> aims() {
        return who.group().aims().stream()
                .map(aim -> catalogue.family(aim.family()))
                .flatMap(family -> family.pathways().keySet().stream().filter(family::high))
                .collect(Collectors.toSet());
    }

    private Exposure exposure(Pathway quality) {
        LocalDate lastDone = done.stream()
                .filter(entry -> meets(entry, quality))
                .map(entry -> entry.start().date())
                .max(Comparator.naturalOrder())
                .orElse(null);
        List<LocalDate> coming = planned.stream()
                .filter(placement -> catalogue.family(placement.family()).high(quality))
                .map(placement -> placement.start().date())
                .filter(day -> doneUntil == null || day.isAfter(doneUntil))
                .sorted()
                .toList();
        LocalDate last = coming.isEmpty() ? lastDone : coming.get(coming.size() - 1);
        return new Exposure(
                quality,
                lastDone,
                coming.isEmpty() ? null : coming.get(0),
                last == null ? null : Integer.valueOf((int) ChronoUnit.DAYS.between(last, scenario.lastDay())));
    }

    /** A match counts for maximal sprinting only where the run was measured, and for nothing else. */
    private boolean meets(LogEntry entry, Pathway quality) {
        Family family = catalogue.family(entry.family());
        boolean session = family.high(quality) && family.role() != Role.FIXTURE;
        return session
                || (quality == Pathway.MAX_VELOCITY_SPRINT
                        && DoneLoad.own(entry, who.athleteId())
                                .map(PersonEntry::topSpeedShare)
                                .filter(share -> share >= EXPOSURE)
                                .isPresent());
    }
}
