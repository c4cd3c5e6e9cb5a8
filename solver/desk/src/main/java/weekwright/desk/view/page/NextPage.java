package weekwright.desk.view.page;

import java.util.List;
import weekwright.desk.view.page.StartPage.FixtureField;

/**
 * The form for a week that begins from an earlier one.
 *
 * @param title what the earlier week is called
 * @param from dates and fixtures of the week that is carried over
 * @param weeks the weeks that can be carried over, where there are several
 * @param carried what is carried over, one line each
 * @param known fixtures of the new week that are known already, one line each
 * @param form what stands in the form
 * @param held how many sessions of the earlier week are held
 * @param alone whether the desk has one folder only, so that no further one can begin
 */
public record NextPage(
        String base,
        String title,
        int revision,
        String from,
        List<Choice> weeks,
        List<String> carried,
        List<String> known,
        List<String> problems,
        Form form,
        int held,
        boolean alone) {
    public NextPage {
        weeks = List.copyOf(weeks);
        carried = List.copyOf(carried);
        known = List.copyOf(known);
        problems = List.copyOf(problems);
    }

    /** A week that can be carried over. */
    public record Choice(String label, String address, boolean chosen) {}

    /** A fixture to be named: what it is like, and what was typed in. */
    public record FixtureRow(String like, FixtureField field) {}

    /**
     * What stands in the form.
     *
     * @param week number of the week that is carried over, from 0
     * @param folder name of the new folder, or an empty text
     * @param asPlanned whether what was not written down counts as done as planned
     * @param pins whether what is held stays held
     */
    public record Form(
            int week,
            String title,
            String folder,
            String firstDay,
            List<FixtureRow> fixtures,
            boolean asPlanned,
            boolean pins) {
        public Form {
            fixtures = List.copyOf(fixtures);
        }
    }
}
