package weekwright.desk.intake;

import java.nio.charset.StandardCharsets;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.calendar.CalendarReading;
import weekwright.desk.intake.table.TimesReading;
import weekwright.model.Nearest;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Scenario;

/**
 * Takes in what others have written. A file gives a preview; what the preview asks is answered and the file read again; what
 * it shows is taken. Nothing is kept between the two, so that a page and a command do the same.
 */
public final class Intake {
    private Intake() {}

    /**
     * What would come of a file.
     *
     * @param bytes the file: a calendar (iCalendar) or a table of text
     * @param wanted what it is to be taken as, and for whom
     * @param answers what has been answered so far
     * @throws InputFault when the file cannot be read at all, or an answer cannot be understood
     */
    public static Preview preview(byte[] bytes, Scenario scenario, Wanted wanted, Answers answers) {
        familyIsKnown(scenario, wanted);
        isText(bytes);
        boolean calendar = isCalendar(bytes);
        if (calendar && !wanted.what().isInCalendars()) {
            throw new InputFault(wanted.what().id() + " are taken from a table (CSV), and this is a calendar");
        }
        return switch (wanted.what()) {
            case FIXTURES ->
                FixtureIntake.preview(scenario, reading(calendar, bytes, scenario, wanted, answers), wanted, answers);
            case WINDOWS, CLOSURES, AWAY ->
                SpanIntake.preview(scenario, reading(calendar, bytes, scenario, wanted, answers), wanted, answers);
            case ATHLETES -> AthleteIntake.preview(bytes, scenario, wanted, answers);
            case MARKS -> MarkIntake.preview(bytes, scenario, wanted, answers);
            case MINUTES, EXPECTED -> MinuteIntake.preview(bytes, scenario, wanted, answers);
        };
    }

    private static Reading reading(boolean calendar, byte[] bytes, Scenario scenario, Wanted wanted, Answers answers) {
        return calendar
                ? CalendarReading.read(bytes, scenario, answers)
                : TimesReading.read(bytes, scenario, wanted.what(), answers);
    }

    /** Files that are often given in a table's place are named as what they are. */
    private static void isText(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 4), StandardCharsets.ISO_8859_1);
        if (start.equals("PK\3\4") || start.equals("\u00d0\u00cf\u0011\u00e0")) {
            throw new InputFault("this is a file of a spreadsheet, and no table of text: open it there and save it as"
                    + " \"CSV UTF-8\"");
        }
        if (start.equals("%PDF")) {
            throw new InputFault(
                    "this is a PDF: ask for the calendar (.ics) or the table (.csv) that it was made from");
        }
    }

    /** Whether a file is, or means to be, a calendar: its first line says so, or it is a web page in a calendar's place. */
    private static boolean isCalendar(byte[] bytes) {
        StringBuilder head = new StringBuilder();
        for (int i = 0; i < Math.min(bytes.length, 400); i++) {
            if (bytes[i] > ' ') {
                head.append((char) bytes[i]);
            }
        }
        return head.indexOf("BEGIN:V") >= 0 || head.toString().startsWith("<");
    }

    private static void familyIsKnown(Scenario scenario, Wanted wanted) {
        String family = wanted.family();
        Catalogue catalogue = Catalogue.builtIn().with(scenario.catalogue());
        if (family != null
                && catalogue
                        .find(family)
                        .filter(one -> one.role() == Role.FIXTURE)
                        .isEmpty()) {
            throw new InputFault("no fixture is of the family \"" + family + "\": "
                    + Nearest.hint(
                            family,
                            catalogue.families().stream()
                                    .filter(one -> one.role() == Role.FIXTURE)
                                    .map(Family::id)
                                    .toList()));
        }
    }
}
