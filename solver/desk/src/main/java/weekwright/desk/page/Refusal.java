package weekwright.desk.page;

import java.util.List;
import weekwright.desk.view.page.Notice;
import weekwright.desk.view.page.Notice.Way;

/** A request that is not done, with what the coach is told. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;
    private final transient Notice notice;

    Refusal(int status, Notice notice) {
        super(notice.title(), null, false, false);
        this.status = status;
        this.notice = notice;
    }

    Refusal(int status, String title, String... lines) {
        this(status, new Notice(title, List.of(lines), List.of()));
    }

    /** Nothing is there. */
    static Refusal nothingThere() {
        return new Refusal(
                404,
                new Notice(
                        "There is nothing at this address",
                        List.of("It may have been moved or misspelt."),
                        List.of(new Way("To the beginning", "/"))));
    }

    /** Something that a form of ours always brings is not there, or is none of what it offers. */
    static Refusal misread() {
        return new Refusal(400, "Something is missing in what was sent", "Load the page again.");
    }

    int status() {
        return status;
    }

    Notice notice() {
        return notice;
    }
}
