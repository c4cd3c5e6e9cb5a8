package weekwright.desk.form;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.page.KnownsPage.Paste;
import weekwright.desk.view.page.KnownsPage.Section;
import weekwright.desk.view.page.KnownsPage.Thing;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;

/** All that a coach knows and wants, in short. */
public final class Knowns {
    private final String base;
    private final Scenario scenario;
    private final Names names;

    private Knowns(String base, Scenario scenario) {
        this.base = base;
        this.scenario = scenario;
        this.names = new Names(scenario);
    }

    /** The lists of a scenario. */
    public static List<Section> of(String base, Scenario scenario) {
        Knowns knowns = new Knowns(base, scenario);
        return Part.all().stream().map(knowns::section).toList();
    }

    private Section section(Part part) {
        boolean week = part == Part.WEEK;
        return new Section(
                part.id(),
                part.title(),
                part.about(),
                week ? "" : (part == Part.ATHLETES ? "an " : "a ") + part.one(),
                week ? List.of(week()) : things(part),
                pastes(part));
    }

    private List<Paste> pastes(Part part) {
        return switch (part) {
            case FIXTURES ->
                List.of(
                        paste("Paste fixtures, or open a calendar", "fixtures"),
                        paste("Paste minutes played", "minutes"));
            case ATHLETES -> List.of(paste("Paste athletes", "athletes"), paste("Paste marks", "marks"));
            case FACILITIES -> List.of(paste("Open a calendar of closures", "closures"));
            case GROUPS -> List.of(paste("Open a calendar of times away", "away"));
            default -> List.of();
        };
    }

    private Paste paste(String label, String what) {
        return new Paste(label, base + "/take?what=" + what);
    }

    private Thing week() {
        String note = Dates.span(scenario.firstDay(), scenario.lastDay()) + ", times in "
                + scenario.zone().getId();
        return new Thing(scenario.title(), note, base + "/knowns/week/1");
    }

    private List<Thing> things(Part part) {
        List<String> notes = notes(part);
        List<Thing> things = new ArrayList<>();
        Map<String, String> labels = Form.labels(scenario, part);
        labels.forEach((key, label) -> things.add(new Thing(
                part == Part.TRANSFERS ? between(scenario.transfers().get(things.size())) : label,
                notes.get(things.size()),
                base + "/knowns/" + part.id() + "/" + key)));
        List<LocalDateTime> starts = starts(part);
        return starts.isEmpty()
                ? things
                : IntStream.range(0, things.size())
                        .boxed()
                        .sorted(Comparator.comparing(starts::get))
                        .map(things::get)
                        .toList();
    }

    /** When each begins of what is listed by its time. */
    private List<LocalDateTime> starts(Part part) {
        return switch (part) {
            case FIXTURES ->
                scenario.fixtures().stream().map(one -> one.start().local()).toList();
            case COMMITMENTS ->
                scenario.commitments().stream().map(one -> one.start().local()).toList();
            default -> List.of();
        };
    }

    private List<String> notes(Part part) {
        return switch (part) {
            case FIXTURES -> scenario.fixtures().stream().map(this::fixture).toList();
            case COMMITMENTS ->
                scenario.commitments().stream().map(this::commitment).toList();
            case GROUPS -> scenario.groups().stream().map(Knowns::group).toList();
            case ATHLETES -> scenario.athletes().stream().map(this::athlete).toList();
            case FACILITIES -> scenario.facilities().stream().map(Knowns::place).toList();
            case TRANSFERS ->
                scenario.transfers().stream().map(way -> way.minutes() + " min").toList();
            case STAFF -> scenario.staff().stream().map(this::staff).toList();
            case WEEK -> List.of();
        };
    }

    private String between(Transfer way) {
        return way.between().stream().map(names::facility).collect(Collectors.joining(" and "));
    }

    private static String at(Moment start) {
        return Dates.day(start.date()) + " " + Dates.clock(start);
    }

    private String groups(List<String> ids) {
        return ids.stream().map(names::group).collect(Collectors.joining(", "));
    }

    private String fixture(Fixture fixture) {
        return at(fixture.start()) + ", " + fixture.minutes() + " min, " + groups(fixture.groups());
    }

    private String commitment(Commitment commitment) {
        String who = commitment.groups().isEmpty()
                ? commitment.athletes().size() == 1
                        ? "one athlete"
                        : commitment.athletes().size() + " athletes"
                : groups(commitment.groups());
        String lent = commitment.lends() == null
                ? ""
                : ", lends " + commitment.lends().minutes() + " min";
        return at(commitment.start()) + ", " + commitment.minutes() + " min, " + who + lent;
    }

    private static String group(Group group) {
        return counted(group.aims().size(), "kind of session", "kinds of session") + " a week"
                + (group.headcount() == null ? "" : ", " + counted(group.headcount(), "athlete", "athletes"));
    }

    private String athlete(Athlete athlete) {
        return groups(athlete.groups()) + ", " + counted(athlete.marks().size(), "mark", "marks")
                + (athlete.restrictions().isEmpty() ? "" : ", restricted")
                + (athlete.away().isEmpty() ? "" : ", times away");
    }

    private static String place(Facility place) {
        String kinds = place.offers().stream().map(kind -> kind.id()).collect(Collectors.joining(", "));
        return (kinds.isEmpty() ? "no kind of place" : kinds)
                + (place.open().isEmpty() ? ", always open" : ", with opening hours")
                + (place.closed().isEmpty() ? "" : ", closed at times");
    }

    private String staff(StaffMember member) {
        return member.leads().contains("*")
                ? "leads everything"
                : "leads " + member.leads().stream().map(names::family).collect(Collectors.joining(", "));
    }

    private static String counted(int number, String one, String many) {
        return number == 1 ? "1 " + one : number + " " + many;
    }
}
