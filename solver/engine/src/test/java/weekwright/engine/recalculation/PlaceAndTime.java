package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.Window;

/** Who can be where, and when. */
final class PlaceAndTime extends Judge {
    PlaceAndTime(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        onePlaceAtATime();
        insideWindow();
        facilityOpen();
        facilityFits();
        facilityRoom();
    }

    /** Nobody is in two things at once, journeys and the way between two facilities included. */
    void onePlaceAtATime() {
        forEachCohort(person -> {
            List<Thing> line =
                    the.line(person).stream().filter(thing -> !thing.past()).toList();
            for (Thing one : line) {
                for (Thing other : line) {
                    if (comesFirst(one, other) && areInEachOthersWay(one, other) && isOurs(one, other)) {
                        String group = groupOf(one, other);
                        must("one-place-at-a-time", names(one.key(), other.key()), group, share(group));
                    }
                }
            }
        });
    }

    /** What lies in the lent minutes of a practice is in nobody's way, if the way there lies in them too, and back where practice goes on. */
    private boolean areInEachOthersWay(Thing one, Thing other) {
        int transfer = transferMinutes(one, other);
        return one.isLentBy(other)
                ? !LentMinutes.hold(other, one, transfer)
                : other.isLentBy(one) ? !LentMinutes.hold(one, other, transfer) : minutesBetween(one, other) < transfer;
    }

    private static boolean comesFirst(Thing one, Thing other) {
        int byStart = one.occupiedFrom().compareTo(other.occupiedFrom());
        return byStart < 0 || (byStart == 0 && Thing.IN_TIME.compare(one, other) < 0);
    }

    private static long minutesBetween(Thing earlier, Thing later) {
        return Duration.between(earlier.occupiedTo(), later.occupiedFrom()).toMinutes();
    }

    private int transferMinutes(Thing one, Thing other) {
        String from = one.facility();
        String to = other.facility();
        if (from == null || to == null || from.equals(to)) {
            return 0;
        }
        return the.scenario().transfers().stream()
                .filter(transfer ->
                        transfer.between().contains(from) && transfer.between().contains(to))
                .mapToInt(transfer -> transfer.minutes())
                .findFirst()
                .orElse(0);
    }

    /** A session lies wholly in its group's hours. */
    private void insideWindow() {
        for (Thing placement : the.placements()) {
            Group group = the.group(placement.group());
            if (minutesOutside(
                            placement,
                            group.windows(),
                            group.away(),
                            the.scenario().zone())
                    > 0) {
                must("inside-window", placement.key(), group.id(), shareOfThosePresent(placement));
            }
        }
    }

    /** A facility is open for the whole of a session. */
    private void facilityOpen() {
        for (Thing placement : the.placements()) {
            Facility facility = facility(placement.facility());
            if (facility != null
                    && !isGuestOfItsPractice(placement)
                    && minutesOutside(
                                    placement,
                                    facility.open(),
                                    facility.closed(),
                                    the.scenario().zone())
                            > 0) {
                must("facility-open", placement.key(), placement.group(), shareOfThosePresent(placement));
            }
        }
    }

    /** Minute by minute: how many of them lie in no window, or in a span away. */
    static long minutesOutside(Thing thing, List<Window> windows, List<Away> away, ZoneId zone) {
        return LongStream.range(0, Duration.between(thing.start(), thing.end()).toMinutes())
                .mapToObj(minute -> thing.start().plus(Duration.ofMinutes(minute)))
                .filter(minute -> !isIn(windows, minute, zone) || isAway(away, minute, zone))
                .count();
    }

    private static boolean isIn(List<Window> windows, Instant minute, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(minute, zone);
        LocalDate date = local.toLocalDate();
        LocalTime time = local.toLocalTime();
        int clock = time.getHour() * 60 + time.getMinute();
        return windows.isEmpty()
                || windows.stream()
                        .anyMatch(window -> window.holdsOn(date)
                                && window.from().minutes() <= clock
                                && clock < window.to().minutes());
    }

    private static boolean isAway(List<Away> away, Instant minute, ZoneId zone) {
        return away.stream()
                .anyMatch(span -> !minute.isBefore(span.from().instant(zone))
                        && minute.isBefore(span.to().instant(zone)));
    }

    /** A session in the lent minutes of a practice at the same place: the place is the practice's already. */
    private boolean isGuestOfItsPractice(Thing placement) {
        return the.things().stream()
                .filter(placement::isLentBy)
                .anyMatch(practice -> Objects.equals(practice.facility(), placement.facility()));
    }

    /** The place offers what the session needs. */
    private void facilityFits() {
        for (Thing placement : the.placements()) {
            if (!fits(placement.trains(), facility(placement.facility()))) {
                must("facility-fits", placement.key(), placement.group(), shareOfThosePresent(placement));
            }
        }
    }

    private static boolean fits(Family family, @Nullable Facility facility) {
        boolean kind = family.facility().isEmpty()
                || (facility != null && family.facility().stream().anyMatch(facility.offers()::contains));
        boolean straight = family.straightMetres() == null
                || facility == null
                || facility.straightMetres() == null
                || facility.straightMetres() >= family.straightMetres();
        return kind && straight;
    }

    /** No place holds more groups or people than it has room for, looked at whenever somebody comes in. */
    private void facilityRoom() {
        for (Facility facility : the.scenario().facilities()) {
            List<Thing> bookings = the.things().stream()
                    .filter(thing -> facility.id().equals(thing.facility()) && !isGuestOfItsPractice(thing))
                    .sorted(Thing.IN_TIME)
                    .toList();
            for (int i = 0; i < bookings.size(); i++) {
                judgeRoom(facility, bookings.subList(0, i + 1));
            }
        }
    }

    private void judgeRoom(Facility facility, List<Thing> uptoTheNewcomer) {
        Thing newcomer = uptoTheNewcomer.get(uptoTheNewcomer.size() - 1);
        List<Thing> inside = uptoTheNewcomer.stream()
                .filter(thing -> thing.end().isAfter(newcomer.start()))
                .toList();
        List<Thing> placed = inside.stream().filter(Thing::placed).toList();
        if (isTooMuch(facility.room(), inside) && !placed.isEmpty()) {
            Thing latest = placed.get(placed.size() - 1);
            must("facility-room", newcomer.key(), latest.group(), shareOfThosePresent(latest));
        }
    }

    private static boolean isTooMuch(@Nullable Room room, List<Thing> inside) {
        int groups = inside.stream().mapToInt(thing -> thing.groups().size()).sum();
        int athletes = inside.stream().mapToInt(thing -> thing.who().heads()).sum();
        return room != null
                && ((room.groups() != null && groups > room.groups())
                        || (room.athletes() != null && athletes > room.athletes()));
    }

    private @Nullable Facility facility(@Nullable String id) {
        return the.scenario().facilities().stream()
                .filter(facility -> facility.id().equals(id))
                .findFirst()
                .orElse(null);
    }
}
