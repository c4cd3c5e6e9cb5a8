package weekwright.desk.view.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.load.LoadPage.Bar;
import weekwright.desk.view.load.LoadPage.Choice;
import weekwright.desk.view.load.LoadPage.Exposure;
import weekwright.desk.view.load.LoadPage.Mark;
import weekwright.desk.view.load.LoadPage.Person;
import weekwright.desk.view.load.LoadPage.Week;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.LoadReport.Ratio;
import weekwright.model.answer.LoadReport.Series;
import weekwright.model.catalogue.DayClass;
import weekwright.model.load.Change;
import weekwright.model.scenario.Scenario;

/** Lays load out as pictures and tables. */
public final class LoadPages {
    private static final int STEP = 14;
    private static final double HIGH = 100;
    private static final String NONE = "–";
    private static final int DAYS = 7;

    private final Scenario scenario;
    private final LoadReport report;
    private final Judged judged;

    private LoadPages(Scenario scenario, LoadReport report, Judged judged) {
        this.scenario = scenario;
        this.report = report;
        this.judged = judged;
    }

    /**
     * The page.
     *
     * @param chosen id of the only athlete that is looked at, or null for the groups
     */
    public static LoadPage of(
            String base, String saved, Scenario scenario, LoadReport report, Judged judged, @Nullable String chosen) {
        LoadPages pages = new LoadPages(scenario, report, judged);
        LocalDate until = report.doneUntil();
        return new LoadPage(
                base,
                scenario.title(),
                saved,
                until == null ? "Nothing was reported so far." : "Reported up to " + Dates.day(until) + ".",
                report.people().stream()
                        .filter(person ->
                                chosen == null ? person.group() : person.id().equals(chosen))
                        .map(pages::person)
                        .toList(),
                pages.choices(base, chosen),
                pages.notes(),
                report.log().stream().map(LoadReport.Checked::text).toList());
    }

    private List<Choice> choices(String base, @Nullable String chosen) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("Groups", base + "/load", chosen == null));
        scenario.athletes()
                .forEach(one -> choices.add(new Choice(
                        one.name(), base + "/load?athlete=" + one.id(), one.id().equals(chosen))));
        return choices;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Load is effort (RPE) times minutes, in AU; a day without a session counts 0. Done is what was reported,"
                        + " planned is what coaches intend; they are never added up.");
        notes.add("Monotony is the mean of a week's days over their standard deviation (divisor " + report.divisor()
                + "); strain is the week's load times it. Neither is known where all days are alike.");
        notes.add("Ratios: " + String.join("; ", report.conventions()) + ".");
        notes.add(report.caveat());
        notes.addAll(report.critiques());
        return notes;
    }

    private Person person(LoadReport.Person person) {
        double most = person.weeks().stream()
                .flatMap(week -> week.days().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        List<Bar> bars = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        int wide = bars(person, most, bars, marks);
        return new Person(
                person.label(),
                Math.max(wide, STEP),
                whole(most),
                bars,
                marks,
                weekdays(person.weeks()),
                person.weeks().stream().map(LoadPages::week).toList(),
                person.group() ? highDays(person.id()) : List.of(),
                person.exposures().stream().map(LoadPages::exposure).toList(),
                ratios(person.ratios()));
    }

    /** A bar for each day; where a week is known by half and planned by half, the bars stand side by side. */
    private static int bars(LoadReport.Person person, double most, List<Bar> bars, List<Mark> marks) {
        Map<LocalDate, Integer> columns = new TreeMap<>();
        person.weeks().forEach(week -> {
            for (int day = 0; day < week.days().size(); day++) {
                columns.put(week.from().plusDays(day), 0);
            }
        });
        int column = 0;
        for (Map.Entry<LocalDate, Integer> entry : columns.entrySet()) {
            entry.setValue(column++);
        }
        for (LoadReport.Week week : person.weeks()) {
            boolean done = week.series() == Series.DONE;
            int first = columns.getOrDefault(week.from(), 0);
            marks.add(new Mark(
                    Integer.toString(first * STEP + 1),
                    Dates.dayInColumn(week.from()).substring(4)));
            for (int day = 0; day < week.days().size(); day++) {
                double high = most == 0 ? 0 : HIGH * week.days().get(day) / most;
                if (high > 0) {
                    double x = (first + day) * STEP + (done ? 1 : 2);
                    bars.add(new Bar(number(x), number(HIGH - high), number(high), done));
                }
            }
        }
        return column * STEP;
    }

    /** What the days of a week are called; all weeks begin on the same. */
    private static List<String> weekdays(List<LoadReport.Week> weeks) {
        return weeks.stream()
                .limit(1)
                .flatMap(week -> week.from().datesUntil(week.from().plusDays(DAYS)))
                .map(Dates::weekday)
                .toList();
    }

    private static Week week(LoadReport.Week week) {
        return new Week(
                Dates.day(week.from()),
                week.series() == Series.DONE ? "done" : "planned",
                java.util.stream.IntStream.range(0, DAYS)
                        .mapToObj(day ->
                                day < week.days().size() ? whole(week.days().get(day)) : NONE)
                        .toList(),
                whole(week.total()),
                change(week),
                week.monotony() == null ? NONE : String.format(Locale.ROOT, "%.2f", week.monotony()),
                week.strain() == null ? NONE : whole(week.strain()));
    }

    private static String change(LoadReport.Week week) {
        Double change = week.change();
        if (change == null) {
            return NONE;
        }
        String sign = change > 0 ? "+" : change < 0 ? "−" : "";
        String on = week.changeOn() == week.series() ? "" : " on what was done";
        String word = change > Change.ASKED ? ", a steep rise" : change > Change.TOLD ? ", a rise" : "";
        return sign + String.format(Locale.ROOT, "%.0f", Math.abs(change)) + " %" + on + word;
    }

    private List<String> highDays(String group) {
        Map<LocalDate, Integer> weeks = new TreeMap<>();
        for (DayPicture day : judged.days()) {
            if (day.group().equals(group)) {
                long week = java.time.temporal.ChronoUnit.DAYS.between(scenario.firstDay(), day.date()) / DAYS;
                LocalDate first = scenario.firstDay().plusDays(week * DAYS);
                weeks.merge(first, day.dayClass() == DayClass.HIGH ? 1 : 0, Integer::sum);
            }
        }
        return weeks.entrySet().stream()
                .map(week -> "Week from " + Dates.day(week.getKey()) + ": " + week.getValue()
                        + (week.getValue() == 1 ? " high day" : " high days"))
                .toList();
    }

    private static Exposure exposure(LoadReport.Exposure exposure) {
        LocalDate last = exposure.lastDone();
        LocalDate next = exposure.nextPlanned();
        Integer age = exposure.daysAtEnd();
        return new Exposure(
                exposure.quality().id().replace('-', ' '),
                last == null ? NONE : Dates.day(last),
                next == null ? NONE : Dates.day(next),
                age == null ? NONE : age == 1 ? "1 day" : age + " days");
    }

    private static List<String> ratios(List<Ratio> ratios) {
        return ratios.stream()
                .map(ratio -> Dates.day(ratio.day()) + ": coupled " + known(ratio.coupled()) + ", uncoupled "
                        + known(ratio.uncoupled()) + ", weighted " + known(ratio.weighted())
                        + (ratio.plannedFrom() == null
                                ? ""
                                : " (planned from " + Dates.day(ratio.plannedFrom()) + " on)"))
                .toList();
    }

    private static String known(@Nullable Double ratio) {
        return ratio == null ? "not known" : String.format(Locale.ROOT, "%.2f", ratio);
    }

    private static String whole(double value) {
        return Dates.grouped(Math.round(value));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
