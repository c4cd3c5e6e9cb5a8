package weekwright.desk.view.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Names;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.answer.DaySheet;
import weekwright.model.answer.DaySheet.Fixed;
import weekwright.model.answer.DaySheet.GroupDay;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Placement;
import weekwright.model.prescription.RepMax;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Puts a day of a judged plan together: the plan of each group and the numbers of each athlete. */
public final class DaySheets {
    /**
     * What is wanted of a sheet.
     *
     * @param athlete id of the only athlete wanted, or null for all
     * @param formula by which maxima are estimated from sets
     */
    public record Wish(LocalDate day, @Nullable String athlete, Units units, RepMax formula) {}

    private final Scenario scenario;
    private final Judged judged;
    private final Wish wish;
    private final Names names;
    private final SheetSessions sessions;

    private DaySheets(Scenario scenario, Judged judged, List<PersonPicture> people, Wish wish) {
        this.scenario = scenario;
        this.judged = judged;
        this.wish = wish;
        names = new Names(scenario);
        sessions = new SheetSessions(scenario, judged.plan(), people, wish);
    }

    /**
     * The sheet of a day.
     *
     * @param people what the plan means for each athlete
     */
    public static DaySheet of(Scenario scenario, Judged judged, List<PersonPicture> people, Wish wish) {
        return new DaySheets(scenario, judged, people, wish).sheet();
    }

    private DaySheet sheet() {
        List<GroupDay> groups = scenario.groups().stream()
                .filter(this::isWanted)
                .map(this::group)
                .filter(day -> !day.sessions().isEmpty() || !day.fixed().isEmpty())
                .toList();
        return new DaySheet(
                scenario.id(),
                scenario.title(),
                wish.day(),
                wish.units().weight(),
                wish.units().length(),
                groups,
                SheetCautions.of(scenario, wish.day(), groups));
    }

    private boolean isWanted(Group group) {
        return wish.athlete() == null
                || scenario.athletes().stream()
                        .anyMatch(athlete -> athlete.id().equals(wish.athlete())
                                && athlete.groups().contains(group.id()));
    }

    private GroupDay group(Group group) {
        DayPicture picture = judged.days().stream()
                .filter(day -> day.group().equals(group.id()) && day.date().equals(wish.day()))
                .findFirst()
                .orElse(null);
        List<Placement> placements = judged.plan().placements().stream()
                .filter(placement -> placement.group().equals(group.id()) && isToday(placement.start()))
                .sorted(Comparator.comparing(placement -> instant(placement.start())))
                .toList();
        List<Session> placed = new ArrayList<>();
        for (Placement placement : placements) {
            sessions.session(placement, group, placements).ifPresent(placed::add);
        }
        return new GroupDay(
                group.id(),
                group.label(),
                picture == null ? null : picture.matchDay(),
                picture == null ? DayClass.FREE : picture.dayClass(),
                Stream.concat(fixtures(group), practices(group))
                        .sorted(Comparator.comparing(fixed -> instant(fixed.start())))
                        .toList(),
                placed);
    }

    private Stream<Fixed> fixtures(Group group) {
        return scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group.id()) && isToday(fixture.start()))
                .map(this::fixed);
    }

    private Fixed fixed(Fixture fixture) {
        return new Fixed(fixture.label(), true, fixture.start(), end(fixture.start(), fixture.minutes()), null);
    }

    private Stream<Fixed> practices(Group group) {
        return scenario.commitments().stream()
                .filter(commitment -> isOf(commitment, group) && isToday(commitment.start()))
                .map(this::fixed);
    }

    /** An athlete's own commitments stand on that athlete's sheet only. */
    private boolean isOf(Commitment commitment, Group group) {
        return commitment.groups().contains(group.id())
                || (wish.athlete() != null && commitment.athletes().contains(wish.athlete()));
    }

    private Fixed fixed(Commitment commitment) {
        return new Fixed(
                commitment.label(),
                false,
                commitment.start(),
                end(commitment.start(), commitment.minutes()),
                names.facility(commitment.facility()));
    }

    private boolean isToday(Moment moment) {
        return moment.date().equals(wish.day());
    }

    private Moment end(Moment start, int minutes) {
        return Moment.at(instant(start).plusSeconds(60L * minutes), scenario.zone());
    }

    private Instant instant(Moment moment) {
        return moment.instant(scenario.zone());
    }
}
