package weekwright.desk.view.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.load.Presence;
import weekwright.model.answer.DaySheet.Instead;
import weekwright.model.answer.DaySheet.Line;
import weekwright.model.answer.DaySheet.Plan;
import weekwright.model.answer.DaySheet.Row;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Content;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.prescription.Alternatives;
import weekwright.model.prescription.Marks;
import weekwright.model.prescription.SprintTimes;
import weekwright.model.prescription.Targets;
import weekwright.model.prescription.Work;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Scenario;

/** The lines of a session and the numbers of each athlete. */
final class SheetNumbers {
    private static final String RETURN = "return-dose";

    private final Scenario scenario;
    private final Presence presence;
    private final Returning returning;
    private final DaySheets.Wish wish;
    private final Alternatives alternatives;

    SheetNumbers(Scenario scenario, Presence presence, Returning returning, DaySheets.Wish wish) {
        this.scenario = scenario;
        this.presence = presence;
        this.returning = returning;
        this.wish = wish;
        alternatives = new Alternatives(Catalogue.builtIn().with(scenario.catalogue()));
    }

    /** What those of a level do in a session. */
    Plan plan(Placement placement, Work work, Level level, List<Athlete> athletes, int others) {
        return new Plan(
                level,
                lines(work, level),
                length(work.fastMetres(level)),
                work.contacts(level),
                athletes.stream()
                        .map(athlete -> row(placement, work, level, athlete))
                        .toList(),
                others,
                Targets.byFeel(work, level, wish.units()));
    }

    private Row row(Placement placement, Work work, Level level, Athlete athlete) {
        Marks marks = new Marks(athlete.marks(), wish.day(), wish.formula());
        List<String> remarks = new ArrayList<>();
        if (work.family().high(Pathway.MAX_VELOCITY_SPRINT)) {
            breakRemark(placement, work, athlete, remarks);
        }
        if (work.family().id().equals(SheetCautions.TESTING) && SheetCautions.isMinor(athlete, wish.day())) {
            remarks.add("under 18: no maximal lift; a clean, supervised set of 3 to 5 instead");
        }
        remarks.addAll(marks.refused());
        return new Row(athlete.id(), athlete.name(), new Targets(marks, level, wish.units()).of(work), remarks);
    }

    private void breakRemark(Placement placement, Work work, Athlete athlete, List<String> remarks) {
        OptionalLong days = returning.daysWithout(athlete, placement);
        if (days.isPresent() && days.getAsLong() > work.settings().number(RETURN, "days")) {
            double share = work.settings().number(RETURN, "share");
            remarks.add("first maximal sprinting for " + days.getAsLong() + " days: at most "
                    + Dates.exact(Math.rint(share * 100)) + " % of the runs");
        }
    }

    /** What somebody does who sits out, or null where nothing fits. */
    @Nullable
    Instead instead(Placement placement, Work work, Athlete athlete) {
        Facility place = scenario.facilities().stream()
                .filter(facility -> facility.id().equals(placement.facility()))
                .findFirst()
                .orElse(null);
        Family family = alternatives.instead(
                work.family(),
                athlete.restrictions().stream()
                        .filter(restriction -> restriction.holdsOn(wish.day()))
                        .toList(),
                place,
                presence.hoursToFixture(athlete, placement),
                other -> presence.fits(other, athlete, placement));
        if (family == null) {
            return null;
        }
        Level level = SheetSessions.level(athlete, work.group());
        Work other =
                new Work(family, work.group(), work.dose(), 1, null, null, work.settings(), work.most(), work.bar());
        Marks marks = new Marks(athlete.marks(), wish.day(), wish.formula());
        return new Instead(
                family.id(), family.label(), lines(other, level), new Targets(marks, level, wish.units()).of(other));
    }

    private List<Line> lines(Work work, Level level) {
        return work.lines(level).stream().map(line -> line(line, work)).toList();
    }

    private Line line(Content line, Work work) {
        Variant variant = work.done();
        boolean byVariant = line.kind() == ContentKind.LIFT && line.lift() == null && variant != null;
        return new Line(
                line.kind(),
                byVariant ? Objects.requireNonNull(variant).label() : line.label(),
                line.sets(),
                line.repetitions(),
                line.seconds(),
                line.metres() == null ? null : length(line.metres()),
                length(line.runIn()),
                line.start(),
                line.percentFrom(),
                line.percentTo(),
                rest(line),
                line.setRestSeconds(),
                line.inReserve(),
                line.stopPercent(),
                line.note());
    }

    /** In the sheet's unit, to a tenth. */
    private double length(double metres) {
        return Math.rint(wish.units().ofMetres(metres) * 10) / 10;
    }

    private static @Nullable Integer rest(Content line) {
        return line.restSeconds() == null && line.kind() == ContentKind.SPRINT && line.metres() != null
                ? Integer.valueOf(SprintTimes.restSeconds(line.metres() + line.runIn()))
                : line.restSeconds();
    }
}
