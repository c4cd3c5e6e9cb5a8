package weekwright.desk.page;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.NextWeeks;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.page.NextPage.FixtureRow;
import weekwright.desk.view.page.NextPage.Form;
import weekwright.desk.view.page.StartPage.FixtureField;
import weekwright.model.change.NextWeek;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** The form for the next week: before anything is typed in, as it is filled in, and what it means. */
final class NextForms {
    private static final FixtureField NOTHING = new FixtureField("", "", "");

    private final Scenario before;
    private final int week;
    private final NextWeeks weeks;

    NextForms(Scenario before, int week) {
        this.before = before;
        this.week = week;
        this.weeks = new NextWeeks(before, week);
    }

    /** The form before anything is typed in: the week after the last, what was not written down done as planned. */
    Form empty() {
        LocalDate first = NextWeek.firstDay(before, before.weeks());
        List<FixtureRow> rows = IntStream.range(0, weeks.likes().size())
                .mapToObj(i -> new FixtureRow(like(i), NOTHING))
                .toList();
        return new Form(week, before.title(), "", first.toString(), rows, true, false);
    }

    private String like(int row) {
        Fixture like = weeks.likes().get(row);
        String groups = String.join(
                ", ", like.groups().stream().map(new Names(before)::group).toList());
        String size = groups + ", " + like.minutes() + " min";
        return row == weeks.likes().size() - 1
                ? "One more (" + size + ")"
                : "In place of " + like.label() + ", " + Dates.day(like.start().date()) + " (" + size + ")";
    }

    /** The form as it was sent. */
    Form sent(Context request) {
        List<String> labels = request.formParams("fixture");
        List<String> dates = request.formParams("fixtureDate");
        List<String> times = request.formParams("fixtureTime");
        List<FixtureRow> rows = IntStream.range(0, weeks.likes().size())
                .mapToObj(i -> new FixtureRow(like(i), new FixtureField(at(labels, i), at(dates, i), at(times, i))))
                .toList();
        return new Form(
                week,
                text(request, "title"),
                text(request, "folder"),
                text(request, "firstDay"),
                rows,
                request.formParam("asPlanned") != null,
                request.formParam("pins") != null);
    }

    private static String at(List<String> values, int index) {
        return index < values.size() ? values.get(index).strip() : "";
    }

    private static String text(Context request, String field) {
        return Guards.field(request.formParam(field)).strip();
    }

    /** The name of the folder that is asked for; where none is, the week is named by its first day. */
    static String folder(Form form) {
        return form.folder().isEmpty() ? "week-" + form.firstDay() : form.folder();
    }

    /**
     * What the form asks for.
     *
     * @throws InputFault with all that is missing or cannot be
     */
    NextWeek read(Form form) {
        Typed typed = new Typed();
        LocalDate first = typed.date("the first day", form.firstDay());
        if (form.title().isEmpty()) {
            typed.problems.add("the week has no name: say what it is for");
        }
        List<Fixture> fixtures = new ArrayList<>();
        for (int row = 0; row < form.fixtures().size(); row++) {
            Fixture fixture = fixture(form.fixtures().get(row).field(), row, typed, fixtures);
            if (fixture != null) {
                fixtures.add(fixture);
            }
        }
        if (first != null) {
            fixtures.forEach(one -> NextWeeks.outside(one, first).ifPresent(typed.problems::add));
        }
        if (first == null || !typed.problems.isEmpty()) {
            throw new InputFault(typed.problems);
        }
        return new NextWeek(folder(form), form.title(), first, week, fixtures);
    }

    private @Nullable Fixture fixture(FixtureField field, int row, Typed typed, List<Fixture> others) {
        if ((field.label() + field.date() + field.time()).isEmpty()) {
            return null;
        }
        String label = field.label().isEmpty() ? "Fixture" : field.label();
        Moment start = typed.start(label, field.date(), field.time());
        return start == null ? null : weeks.fixture(row, label, start, others);
    }
}
