package weekwright.desk.view.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import weekwright.desk.view.week.Lay.Closed;
import weekwright.desk.view.week.TimeAxis.Stretch;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Window;

/** The hours of a lane: windows, absences or closures, and the way to fixtures. */
record OpenHours(List<Window> windows, List<Away> away, String awayWord, List<Fixture> fixtures) implements Lay.Shut {
    private static final int DAY = 24 * 60;

    @Override
    public List<Stretch> open(LocalDate date) {
        return windows.stream()
                .filter(window -> window.holdsOn(date))
                .map(window -> new Stretch(window.from().minutes(), window.to().minutes()))
                .sorted(Comparator.comparingInt(Stretch::from))
                .toList();
    }

    @Override
    public List<Closed> on(LocalDate date) {
        Stream<Closed> gone = away.stream()
                .map(one -> new Closed(
                        "away",
                        TimeAxis.on(date, one.from(), one.to()),
                        awayWord + (one.why() == null ? "" : ": " + one.why())));
        return Stream.of(closed(date).stream(), gone, travel(date).stream())
                .flatMap(some -> some)
                .filter(one -> !one.stretch().isEmpty())
                .toList();
    }

    private List<Closed> closed(LocalDate date) {
        if (windows.isEmpty()) {
            return List.of();
        }
        List<Closed> closed = new ArrayList<>();
        int until = 0;
        for (Stretch open : open(date)) {
            closed.add(new Closed("closed", new Stretch(until, open.from()), null));
            until = Math.max(until, open.to());
        }
        closed.add(new Closed("closed", new Stretch(until, DAY), null));
        return closed;
    }

    private List<Closed> travel(LocalDate date) {
        List<Closed> ways = new ArrayList<>();
        for (Fixture fixture : fixtures) {
            var start = fixture.start().local();
            var end = start.plusMinutes(fixture.minutes());
            int out = fixture.travel().outMinutes();
            int back = fixture.travel().backMinutes();
            ways.add(new Closed("away", TimeAxis.on(date, start.minusMinutes(out), start), "On the way"));
            ways.add(new Closed("away", TimeAxis.on(date, end, end.plusMinutes(back)), "On the way back"));
        }
        return ways;
    }
}
