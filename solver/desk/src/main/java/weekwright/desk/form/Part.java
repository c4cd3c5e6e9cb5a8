package weekwright.desk.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weekwright.model.Ids;

/** A list of what a coach knows and wants, with a form for each thing in it. */
public enum Part {
    /** The week as a whole; there is only one. */
    WEEK("The week", "week", "What it is for, when it begins and how long it is."),
    FIXTURES("Fixtures", "fixture", "Matches and meets. They stand; all else is planned round them."),
    COMMITMENTS(
            "Team practices and other fixed things",
            "fixed thing",
            "Practices of the team, work shifts, school matches: they stand, and what they cost is counted."),
    GROUPS("Groups and what they train", "group", "Who trains together, when, and what each is to train a week."),
    ATHLETES("Athletes", "athlete", "People by name: their marks, what a clinician allows them, when they are away."),
    FACILITIES("Places", "place", "Where you can train, and when it is open."),
    TRANSFERS("Ways between places", "way", "Minutes from one place to another."),
    STAFF("Staff", "member of staff", "Who can lead sessions. With nobody listed, any session can be led.");

    private final String title;
    private final String one;
    private final String about;

    Part(String title, String one, String about) {
        this.title = title;
        this.one = one;
        this.about = about;
    }

    /** Its name in a document and an address. */
    public String id() {
        return Ids.of(this);
    }

    /** What the list is called. */
    public String title() {
        return title;
    }

    /** What one of them is called. */
    public String one() {
        return one;
    }

    /** What they are, in a sentence. */
    public String about() {
        return about;
    }

    /** The field by which a coach knows one; empty where there is none. */
    String naming() {
        return switch (this) {
            case ATHLETES, STAFF -> "name";
            case TRANSFERS, WEEK -> "";
            default -> "label";
        };
    }

    /** The part of a name. */
    public static Optional<Part> named(String id) {
        return Arrays.stream(values()).filter(part -> part.id().equals(id)).findFirst();
    }

    /** All in the order in which they are shown. */
    public static List<Part> all() {
        return List.of(values());
    }
}
