package weekwright.desk.view.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.desk.view.load.LoadReports.Spreads;
import weekwright.model.answer.LoadReport.Series;
import weekwright.model.answer.LoadReport.Week;
import weekwright.model.load.Change;
import weekwright.model.scenario.Scenario;

/** Somebody's weeks: what was reported, then what is planned. */
final class LoadWeeks {
    private final Scenario scenario;
    private final @Nullable LocalDate doneUntil;
    private final boolean hasPlan;
    private final PersonLoad load;
    private final PersonWork work;
    private final Spreads spreads;

    LoadWeeks(Sources sources, PersonLoad load, PersonWork work, Spreads spreads) {
        this.scenario = sources.scenario();
        this.doneUntil = sources.doneUntil();
        this.hasPlan = sources.judged() != null;
        this.load = load;
        this.work = work;
        this.spreads = spreads;
    }

    /** Plan weeks, and as many weeks before them as history reaches back. */
    List<Week> weeks() {
        List<Week> weeks = new ArrayList<>();
        Week done = null;
        Week planned = null;
        for (int k = -Scenario.EDGE_DAYS / 7; k < scenario.weeks(); k++) {
            LocalDate from = scenario.firstDay().plusDays(7L * k);
            Week before = planned == null ? done : planned;
            done = done(from, done);
            if (done != null) {
                weeks.add(done);
            }
            if (k >= 0 && hasPlan) {
                planned = week(Series.PLANNED, days(from, last(from), load::planned), from, before);
                weeks.add(planned);
            }
        }
        return weeks;
    }

    private @Nullable Week done(LocalDate from, @Nullable Week before) {
        LocalDate known = load.firstKnown();
        if (doneUntil == null || known == null || from.isAfter(doneUntil) || known.isAfter(from.plusDays(6))) {
            return null;
        }
        LocalDate to = from.plusDays(6).isAfter(doneUntil) ? doneUntil : from.plusDays(6);
        return week(Series.DONE, days(from, to, load::done), from, before);
    }

    private LocalDate last(LocalDate from) {
        LocalDate sunday = from.plusDays(6);
        return sunday.isAfter(scenario.lastDay()) ? scenario.lastDay() : sunday;
    }

    private static List<Double> days(LocalDate from, LocalDate to, ToDoubleFunction<LocalDate> load) {
        return from.datesUntil(to.plusDays(1)).map(load::applyAsDouble).toList();
    }

    private Week week(Series series, List<Double> days, LocalDate from, @Nullable Week before) {
        double total = sum(days);
        boolean compared = before != null && Spreads.whole(before.days()) && Spreads.whole(days);
        Double change = compared && before != null ? LoadReports.orNull(Change.percent(before.total(), total)) : null;
        return new Week(
                from,
                series,
                days,
                total,
                change,
                change == null || before == null ? null : before.series(),
                spreads.monotony(days),
                spreads.strain(days),
                work.in(series, from, from.plusDays(days.size())));
    }

    private static double sum(List<Double> days) {
        return days.stream().mapToDouble(Double::doubleValue).sum();
    }
}
