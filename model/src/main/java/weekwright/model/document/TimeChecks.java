package weekwright.model.document;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Moment;

/** Zones, times that the clocks never show, windows and spans that end before they begin. */
final class TimeChecks {
    private final Faults faults;
    private final @Nullable ZoneId zone;

    TimeChecks(Faults faults, @Nullable ZoneId zone) {
        this.faults = faults;
        this.zone = zone;
    }

    /** The zone that a field names, where it is one that the clocks of the world know. */
    static Optional<ZoneId> zone(Node zone, Faults faults) {
        Optional<String> name = zone.text();
        Optional<ZoneId> known = name.filter(
                        asked -> ZoneId.getAvailableZoneIds().contains(asked))
                .map(ZoneId::of);
        if (name.isPresent() && known.isEmpty()) {
            String advice = Shown.nearest(name.get(), new TreeSet<>(ZoneId.getAvailableZoneIds()))
                    .map(near -> "Did you mean \"" + near + "\"?")
                    .orElse("Name a region and a town, such as \"Europe/Dublin\".");
            faults.add(zone, "no zone is called " + Shown.value(zone), advice);
        }
        return known;
    }

    /** Local times that must exist. */
    void exist(List<Node> moments) {
        if (zone != null) {
            moments.forEach(node -> node.moment()
                    .filter(moment -> !moment.existsIn(zone))
                    .ifPresent(moment -> missing(node, moment, zone)));
        }
    }

    private void missing(Node node, Moment moment, ZoneId in) {
        ZoneOffsetTransition gap = in.getRules().getTransition(moment.local());
        if (gap != null && gap.isGap()) {
            faults.add(
                    node,
                    moment + " does not exist: in " + in + " the clocks go forward from "
                            + gap.getDateTimeBefore().toLocalTime() + " to "
                            + gap.getDateTimeAfter().toLocalTime(),
                    "The next time that does is " + Moment.of(gap.getDateTimeAfter()) + ".");
        } else {
            List<ZoneOffset> valid = in.getRules().getValidOffsets(moment.local());
            faults.add(
                    node,
                    "the clocks of " + in + " are not at " + written(moment.offset()) + " then",
                    "Leave the offset out, or write "
                            + String.join(
                                    " or ",
                                    valid.stream().map(TimeChecks::written).toList()) + ".");
        }
    }

    private static String written(@Nullable ZoneOffset offset) {
        return offset == null || offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }

    /** Windows: on days or on a date, and ended after they begin. */
    void windows(List<Node> windows) {
        windows.forEach(this::window);
    }

    private void window(Node window) {
        boolean days = !window.list("days").isEmpty();
        boolean date = window.field("date").present();
        if (days && date) {
            faults.add(window.field("date"), "days and a date are both given", "Keep the one or the other.");
        } else if (!days && !date && !faults.broken(window.field("days"))) {
            faults.add(
                    window,
                    "the window says neither days nor a date",
                    "Add \"days\": [\"MON\", \"TUE\"] or \"date\": \"2027-03-01\".");
        }
        order(window.field("from"), window.field("to"), "Split it at midnight: %s to 24:00, and 00:00 to %s.");
        dates(window.field("firstDate"), window.field("lastDate"));
    }

    /** Hours of a wish, of which the second must be later. */
    void wish(Node from, Node to) {
        order(from, to, "Exchange %s and %s, or leave one out.");
    }

    private void order(Node from, Node to, String advice) {
        Optional<ClockTime> begin = from.clock();
        Optional<ClockTime> end = to.clock();
        if (begin.isPresent() && end.isPresent() && end.get().compareTo(begin.get()) <= 0) {
            faults.add(
                    to,
                    end.get() + " is not after " + begin.get(),
                    end.get().minutes() == 0
                            ? "Write 24:00 for the end of the day."
                            : String.format(Locale.ROOT, advice, begin.get(), end.get()));
        }
    }

    /** Dates of which the second must not be earlier. */
    void dates(Node first, Node last) {
        if (first.date().isPresent()
                && last.date().isPresent()
                && last.date().get().isBefore(first.date().get())) {
            faults.add(
                    last, last.written() + " is before " + first.written(), "Exchange the two, or give a later date.");
        }
    }

    /** Spans of time: ended after they begin. */
    void spans(List<Node> spans) {
        spans.forEach(span -> span(span.field("from"), span.field("to")));
    }

    private void span(Node from, Node to) {
        Optional<Moment> begin = from.moment();
        Optional<Moment> end = to.moment();
        if (begin.isPresent() && end.isPresent() && !isAfter(end.get(), begin.get())) {
            faults.add(to, end.get() + " is not after " + begin.get(), "Exchange the two, or give a later end.");
        }
    }

    private boolean isAfter(Moment end, Moment begin) {
        return zone == null
                ? end.local().isAfter(begin.local())
                : end.instant(zone).isAfter(begin.instant(zone));
    }
}
