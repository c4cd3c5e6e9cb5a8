package weekwright.desk.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds dates that probably carry a wrong year: away from all others, and among them a year earlier or later. */
final class Years {
    /** Days without anything that part one season from another (common practice, no source). */
    private static final long PAUSE = 120;

    private Years() {}

    /** Years to add to dates that seem wrong, by date. */
    static Map<LocalDate, Integer> slips(List<LocalDate> dates) {
        List<List<LocalDate>> runs = runs(dates.stream().sorted().toList());
        Map<LocalDate, Integer> slips = new HashMap<>();
        if (runs.size() < 2) {
            return slips;
        }
        List<LocalDate> season = runs.stream()
                .reduce((one, other) -> other.size() > one.size() ? other : one)
                .orElseThrow();
        runs.stream()
                .filter(run -> run != season && 3 * run.size() <= season.size())
                .flatMap(List::stream)
                .forEach(date -> slip(date, season, slips));
        return slips;
    }

    private static void slip(LocalDate date, List<LocalDate> season, Map<LocalDate, Integer> slips) {
        for (int years : List.of(-1, 1)) {
            LocalDate other = date.plusYears(years);
            if (!other.isBefore(season.get(0)) && !other.isAfter(season.get(season.size() - 1))) {
                slips.put(date, years);
            }
        }
    }

    private static List<List<LocalDate>> runs(List<LocalDate> sorted) {
        List<List<LocalDate>> runs = new ArrayList<>();
        LocalDate last = LocalDate.MIN;
        for (LocalDate date : sorted) {
            if (runs.isEmpty() || last.plusDays(PAUSE).isBefore(date)) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(date);
            last = date;
        }
        return runs;
    }
}
