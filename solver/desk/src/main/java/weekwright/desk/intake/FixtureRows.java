package weekwright.desk.intake;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Makes the rows of a preview of fixtures, each with what it does to the scenario. */
final class FixtureRows {

    private final ZoneId zone;
    private final Wanted wanted;
    private final String group;
    private final Set<String> ids = new TreeSet<>();

    FixtureRows(Scenario scenario, Wanted wanted, String group) {
        this.zone = scenario.zone();
        this.wanted = wanted;
        this.group = group;
        scenario.fixtures().forEach(fixture -> ids.add(fixture.id()));
    }

    Row passed(Found entry, String why) {
        return Row.still(entry.row(), entry.place(), Verdict.PASSED_OVER, text(entry), List.of(why));
    }

    Row asked(Found entry, List<String> doubts) {
        return Row.still(entry.row(), entry.place(), Verdict.ASKED, text(entry), doubts);
    }

    Row unreadable(Found entry, String fault) {
        return Row.still(entry.row(), entry.place(), Verdict.UNREADABLE, text(entry), List.of(fault));
    }

    private String text(Found entry) {
        String when = entry.start() == null ? "no time" : Times.day(entry.start(), zone);
        return when + " · " + (entry.label().isEmpty() ? "(no name)" : entry.label());
    }

    private String text(String label, Instant start, int minutes) {
        return Times.span(start, start.plusSeconds(60L * minutes), zone) + " · " + label;
    }

    Row gone(Found entry, Fixture known, String why) {
        return new Row(
                entry.row(),
                entry.place(),
                Verdict.GONE,
                text(entry),
                List.of(why),
                taken -> taken.withFixtures(taken.fixtures().stream()
                        .filter(fixture -> !fixture.id().equals(known.id()))
                        .toList()));
    }

    /** A fixture that the scenario does not have. */
    Row added(Found entry, Instant start, int minutes) {
        Remarks remarks = entry.remarks();
        String label = label(entry, remarks);
        Fixture fixture = fixture(id(entry, label, start), label, start, minutes);
        When was = entry.was();
        if (was != null) {
            remarks.note(Shifts.told(was, start, zone));
        }
        return new Row(
                entry.row(),
                entry.place(),
                Verdict.NEW,
                text(label, start, minutes),
                remarks.notes(),
                taken -> taken.withFixtures(Revised.and(taken.fixtures(), fixture)));
    }

    private String id(Found entry, String label, Instant start) {
        String key = entry.key();
        String apart = key == null ? "-" + Moment.at(start, zone).date() : Labels.suffix(key);
        String id = key != null && Labels.isId(key) && !ids.contains(key) ? key : Labels.id(label, apart, ids);
        ids.add(id);
        return id;
    }

    private Fixture fixture(String id, String label, Instant start, int minutes) {
        return Fixture.plain(id, label, List.of(group), wanted.family(), Moment.at(start, zone), minutes);
    }

    private static String label(Found entry, Remarks remarks) {
        String label = Labels.withoutResult(entry.label(), remarks);
        if (label.isEmpty()) {
            remarks.note("it has no name and is called Fixture");
            return "Fixture";
        }
        return label;
    }

    /** A fixture that the scenario has, as the file has it now. */
    Row kept(Found entry, Fixture known, Instant start, int minutes) {
        String label = entry.label().isEmpty() ? known.label() : label(entry, entry.remarks());
        String named = Labels.plain(label).equals(Labels.plain(known.label())) ? known.label() : label;
        Instant before = known.start().instant(zone);
        List<String> remarks = new ArrayList<>();
        if (!before.equals(start)) {
            remarks.add("moved from " + Times.day(before, zone));
        }
        if (minutes != known.minutes()) {
            remarks.add("lasts " + minutes + " min instead of " + known.minutes());
        }
        if (!named.equals(known.label())) {
            remarks.add("was called \"" + known.label() + "\"");
        }
        Verdict verdict = !before.equals(start) ? Verdict.MOVED : remarks.isEmpty() ? Verdict.SAME : Verdict.CHANGED;
        remarks.addAll(entry.remarks().notes());
        return new Row(
                entry.row(),
                entry.place(),
                verdict,
                text(named, start, minutes),
                remarks,
                taken -> taken.withFixtures(Revised.changed(
                        taken.fixtures(), Fixture::id, known.id(), old -> changed(old, named, start, minutes))));
    }

    private Fixture changed(Fixture old, String label, Instant start, int minutes) {
        return new Fixture(
                old.id(),
                label,
                old.groups(),
                old.family(),
                start.equals(old.start().instant(zone)) ? old.start() : Moment.at(start, zone),
                minutes,
                old.playMinutes(),
                old.weight(),
                old.travel(),
                old.taperDays(),
                old.expected(),
                old.played());
    }
}
