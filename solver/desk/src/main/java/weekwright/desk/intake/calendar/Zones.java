package weekwright.desk.intake.calendar;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.desk.intake.Answers;

/**
 * Finds the clocks that a calendar means by a zone's name: what the coach has said; a name that the world knows, also at the
 * end of a longer one; what the calendar itself describes, before or after its use. The machine's zone is never meant.
 */
final class Zones {
    private final Map<String, Component> described = new HashMap<>();
    private final Map<String, Optional<LocalClock>> known = new HashMap<>();
    private final Set<String> unknown = new LinkedHashSet<>();
    private final Set<String> how = new LinkedHashSet<>();
    private final Answers answers;
    private final LocalDate first;
    private final LocalDate last;

    /** Zones that the calendar describes are worked out from the first to the last date. */
    Zones(Component calendar, Answers answers, LocalDate first, LocalDate last) {
        this.answers = answers;
        this.first = first;
        this.last = last;
        calendar.parts("VTIMEZONE").forEach(zone -> described.putIfAbsent(zone.text("TZID"), zone));
    }

    /** The clocks of a zone by its name in the calendar; none where nobody knows it. */
    Optional<LocalClock> clock(String name) {
        return known.computeIfAbsent(name, this::find);
    }

    private Optional<LocalClock> find(String name) {
        Optional<LocalClock> found = answers.zoneOf(name)
                .map(zone -> said(name, zone))
                .or(() -> world(name))
                .or(() -> described(name));
        if (found.isEmpty()) {
            unknown.add(name);
        }
        return found;
    }

    private LocalClock said(String name, ZoneId zone) {
        how.add("The zone \"" + shown(name) + "\" is " + zone + ", as you said.");
        return LocalClock.of(zone);
    }

    private Optional<LocalClock> world(String name) {
        Set<String> ids = ZoneId.getAvailableZoneIds();
        if (ids.contains(name)) {
            return Optional.of(LocalClock.of(ZoneId.of(name)));
        }
        List<String> parts = List.of(name.split("/", -1));
        for (int from = 1; from < parts.size() - 1; from++) {
            String end = String.join("/", parts.subList(from, parts.size()));
            if (ids.contains(end)) {
                how.add("The zone \"" + shown(name) + "\" is read as " + end + ".");
                return Optional.of(LocalClock.of(ZoneId.of(end)));
            }
        }
        return Optional.empty();
    }

    private Optional<LocalClock> described(String name) {
        Component zone = described.get(name);
        if (zone == null) {
            return Optional.empty();
        }
        String location = zone.text("X-LIC-LOCATION");
        if (ZoneId.getAvailableZoneIds().contains(location)) {
            how.add("The zone \"" + shown(name) + "\" is " + location + ", as the calendar says.");
            return Optional.of(LocalClock.of(ZoneId.of(location)));
        }
        Optional<DefinedZone> defined = DefinedZone.of(zone, first, last);
        defined.ifPresent(
                clock -> how.add("The zone \"" + shown(name) + "\" is taken as the calendar itself describes it."));
        return defined.map(clock -> clock);
    }

    /** How names were read that are not the world's own. */
    Set<String> how() {
        return how;
    }

    /** A question for each name that nobody knows. */
    List<String> questions() {
        return unknown.stream()
                .map(name -> "The calendar uses a zone \"" + shown(name)
                        + "\", which it does not describe and which is none of the world's: say what it is with "
                        + answers.way(Answers.ZONE_OF, "\"" + shown(name) + "=Europe/Dublin\"") + ".")
                .toList();
    }

    static String shown(String name) {
        return name.length() > 60 ? name.substring(0, 60) + "…" : name;
    }
}
