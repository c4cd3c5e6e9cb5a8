package weekwright.desk.view.terminal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.LoadReport.Content;
import weekwright.model.answer.LoadReport.Exposure;
import weekwright.model.answer.LoadReport.Person;
import weekwright.model.answer.LoadReport.Ratio;
import weekwright.model.answer.LoadReport.Series;
import weekwright.model.answer.LoadReport.Week;
import weekwright.model.load.Change;
import weekwright.model.scenario.Pathway;

/** Sets a report of load on a terminal. */
public final class LoadText {
    private static final int WIDTH = 100;
    private static final String UNDEFINED = "–";

    private final Paper paper = new Paper(WIDTH);
    private final LoadReport report;
    private final Ink ink;

    private LoadText(LoadReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
    }

    /** The report in lines of at most 100 columns, each ended by a line feed. */
    public static String of(LoadReport report, Ink ink) {
        return new LoadText(report, ink).set();
    }

    private String set() {
        paper.wrapped(0, "", ink.strong("Load") + " · " + Plain.text(report.title()));
        paper.wrapped(
                0,
                "",
                "In AU: effort (RPE) times minutes; a day without a session counts 0. Done is what was reported"
                        + (report.doneUntil() == null ? ", nothing so far" : ", up to " + Dates.day(report.doneUntil()))
                        + "; planned is what coaches intend. They are never added up.");
        report.people().stream()
                .filter(person -> person.group() || report.people().size() == 1)
                .forEach(this::person);
        athletes();
        log();
        paper.blank();
        paper.wrapped(
                0,
                "",
                "Monotony: mean ÷ standard deviation of the days, divisor " + report.divisor()
                        + "; strain: week × monotony; " + UNDEFINED
                        + " where all days are alike or some are unknown. ! a rise above 10 %, !! above 15 %, * against what was done.");
        paper.wrapped(0, "", "Ratios: " + String.join("; ", report.conventions()) + ". " + report.caveat());
        paper.wrapped(0, "", "Against them: " + String.join(" ", report.critiques()));
        return paper.toString();
    }

    private void person(Person person) {
        paper.blank();
        paper.line(ink.strong(Plain.text(person.label())));
        if (person.weeks().isEmpty()) {
            paper.line("Nothing is known.");
            return;
        }
        paper.line(ink.faint(heading(person.weeks().get(0).from())));
        person.weeks().forEach(week -> paper.line(row(week)));
        paper.blank();
        person.weeks().forEach(this::work);
        paper.blank();
        person.ratios().forEach(this::ratio);
        person.exposures().forEach(this::exposure);
    }

    private static String heading(LocalDate first) {
        StringBuilder line = new StringBuilder("Week from      ");
        first.datesUntil(first.plusDays(7))
                .forEach(day -> line.append(right(Dates.day(day).substring(0, 3), 6)));
        return line.append(right("week", 8))
                .append(right("change", 12))
                .append(right("monotony", 10))
                .append(right("strain", 8))
                .toString();
    }

    private static String row(Week week) {
        StringBuilder line = new StringBuilder(start(week));
        for (int day = 0; day < 7; day++) {
            line.append(right(day < week.days().size() ? whole(week.days().get(day)) : "", 6));
        }
        return line.append(right(whole(week.total()), 8))
                .append(right(change(week), 12))
                .append(right(number(week.monotony(), 2), 10))
                .append(right(number(week.strain(), 0), 8))
                .toString();
    }

    private static String start(Week week) {
        return Plain.fit(Dates.dayInColumn(week.from()).substring(4), 7)
                + Plain.fit(week.series().id(), 8);
    }

    /** A rise that calls for a reason carries a mark: ! from 10 %, !! from 15 %. */
    private static String change(Week week) {
        Double change = week.change();
        if (change == null) {
            return UNDEFINED;
        }
        String mark = change > Change.ASKED ? "!! " : change > Change.TOLD ? "! " : "";
        String sign = change > 0 ? "+" : change < 0 ? "−" : "";
        String on = week.changeOn() == week.series() ? "" : "*";
        return mark + sign + String.format(Locale.ROOT, "%.1f", Math.abs(change)) + " %" + on;
    }

    private void work(Week week) {
        Content work = week.work();
        List<String> parts = new ArrayList<>();
        add(parts, work.fast(), report.lengthUnit() + " fast");
        add(parts, work.sprints(), report.lengthUnit() + " of sprints with run-ins");
        add(parts, work.runs(), report.lengthUnit() + " of runs");
        add(parts, work.contacts(), "contacts");
        work.sets().forEach((quality, sets) -> parts.add(words(quality) + " " + sets + (sets == 1 ? " set" : " sets")));
        paper.wrapped(0, start(week), parts.isEmpty() ? UNDEFINED : String.join(" · ", parts));
    }

    private static void add(List<String> parts, double amount, String what) {
        if (amount > 0) {
            parts.add(whole(amount) + " " + what);
        }
    }

    private void ratio(Ratio ratio) {
        String made = ratio.plannedFrom() == null
                ? "all of it done"
                : "planned from " + Dates.day(ratio.plannedFrom()) + " on";
        String values = ratio.coupled() == null && ratio.uncoupled() == null && ratio.weighted() == null
                ? "no ratio: fewer than 28 days are known, or nothing was done in them"
                : "coupled " + number(ratio.coupled(), 2) + ", uncoupled " + number(ratio.uncoupled(), 2)
                        + ", weighted " + number(ratio.weighted(), 2);
        paper.wrapped(0, "", "Ratio on " + Dates.day(ratio.day()) + " (" + made + "): " + values + ".");
    }

    private void exposure(Exposure exposure) {
        List<String> parts = new ArrayList<>();
        parts.add(exposure.lastDone() == null ? "never done" : "last done " + Dates.day(exposure.lastDone()));
        parts.add(exposure.nextPlanned() == null ? "not planned" : "next planned " + Dates.day(exposure.nextPlanned()));
        if (exposure.daysAtEnd() != null) {
            parts.add("the last " + exposure.daysAtEnd() + " days before the end of the plan");
        }
        paper.wrapped(0, "", words(exposure.quality()) + ": " + String.join(", ", parts) + ".");
    }

    /** Athletes in one line each: the last week reported whole, and the weeks planned. */
    private void athletes() {
        List<Person> athletes =
                report.people().stream().filter(person -> !person.group()).toList();
        if (athletes.isEmpty() || report.people().size() == 1) {
            return;
        }
        paper.blank();
        paper.line(ink.faint(Plain.fit("Athletes, last week of each", 34)
                + right("week", 8)
                + right("change", 12)
                + right("monotony", 10)
                + right("strain", 8)));
        for (Person athlete : athletes) {
            for (Series series : Series.values()) {
                Week week = last(athlete, series);
                if (week != null) {
                    String name = series == Series.DONE || last(athlete, Series.DONE) == null ? athlete.label() : "";
                    paper.line(Plain.fit(Plain.text(name), 19)
                            + start(week)
                            + right(whole(week.total()), 8)
                            + right(change(week), 12)
                            + right(number(week.monotony(), 2), 10)
                            + right(number(week.strain(), 0), 8));
                }
            }
        }
    }

    private static @Nullable Week last(Person person, Series series) {
        return person.weeks().stream()
                .filter(week -> week.series() == series && week.days().size() == 7)
                .reduce((first, second) -> second)
                .orElse(null);
    }

    private void log() {
        if (report.log().isEmpty()) {
            return;
        }
        paper.blank();
        paper.line(ink.strong("The log against the plan"));
        report.log()
                .forEach(checked -> paper.wrapped(
                        0,
                        Dates.dayInColumn(checked.start().date()) + " " + Dates.clock(checked.start()) + "  ",
                        Plain.text(checked.text())));
    }

    private static String words(Pathway quality) {
        return quality.id().replace('-', ' ');
    }

    private static String right(String text, int columns) {
        return " ".repeat(Math.max(0, columns - Plain.columns(text))) + text;
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private static String number(@Nullable Double value, int decimals) {
        return value == null ? UNDEFINED : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
