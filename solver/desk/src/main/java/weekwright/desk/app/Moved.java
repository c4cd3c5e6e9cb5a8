package weekwright.desk.app;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Pinning.Kind;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.engine.problem.Session;
import weekwright.model.Nearest;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/** Where one session lies once a coach has said what it changes to: reads what was said, or says what would be right. */
final class Moved {
    private final Scenario scenario;
    private final Session session;
    private final Names names;

    /** Moves of a session of a scenario. */
    Moved(Scenario scenario, Session session) {
        this.scenario = scenario;
        this.session = session;
        names = new Names(scenario);
    }

    /**
     * A placement with something of it changed.
     *
     * @param value what it changes to: a start, a date, an id
     * @throws InputFault when it is nothing that the session can have
     */
    Placement to(Placement from, Kind kind, String value) {
        Moment start = from.start();
        String facility = from.facility();
        String lead = from.lead();
        Dose dose = from.dose();
        String variant = from.variant();
        switch (kind) {
            case START -> start = start(value);
            case DAY -> start = on(day("--day", value), from.start());
            case FACILITY -> facility = oneOf(kind, Named.facilities(scenario).idOf(value), ids(kind));
            case LEAD -> lead = oneOf(kind, Named.staff(scenario).idOf(value), ids(kind));
            case DOSE -> {
                String given = oneOf(kind, value, ids(kind));
                dose = Arrays.stream(Dose.values())
                        .filter(one -> one.id().equals(given))
                        .findFirst()
                        .orElseThrow();
            }
            case VARIANT -> variant = oneOf(kind, value, ids(kind));
            case OUT, NOT_DAY -> throw new IllegalArgumentException(kind.id());
        }
        boolean keeps = dose == from.dose();
        return new Placement(
                from.id(),
                from.group(),
                from.family(),
                start,
                keeps ? from.minutes() : null,
                facility,
                lead,
                dose,
                variant,
                from.pin());
    }

    /**
     * The session that was left out, in the first place that will do and in the fullest dose of its aim.
     *
     * @param value when it starts
     * @throws InputFault when it is no time of the session's week
     */
    Placement placed(String value) {
        Moment start = start(value);
        List<String> preferred = session.aim == null || session.aim.aim.prefer() == null
                ? List.of()
                : session.aim.aim.prefer().facilities();
        List<String> fitting = scenario.facilities().stream()
                .filter(place -> place.offers().stream().anyMatch(session.family.family.facility()::contains))
                .map(Facility::id)
                .toList();
        String facility = preferred.stream()
                .filter(fitting::contains)
                .findFirst()
                .orElse(fitting.isEmpty() ? null : fitting.get(0));
        return new Placement(
                session.id,
                session.group.group.id(),
                session.family.family.id(),
                start,
                null,
                facility,
                null,
                session.aim == null ? Dose.FULL : session.aim.fullest,
                null,
                null);
    }

    /** What stands in a placement, in words, or null. */
    @Nullable
    String said(Placement placement, Kind kind) {
        Moment start = placement.start();
        return switch (kind) {
            case START -> Dates.day(start.date()) + " " + Dates.clock(start);
            case DAY -> Dates.day(start.date());
            case FACILITY -> names.facility(placement.facility());
            case LEAD -> names.staff(placement.lead());
            case DOSE -> placement.dose().id();
            case VARIANT -> names.variant(placement.family(), placement.variant());
            case OUT, NOT_DAY -> null;
        };
    }

    private List<String> ids(Kind kind) {
        return switch (kind) {
            case FACILITY -> scenario.facilities().stream().map(Facility::id).toList();
            case LEAD -> scenario.staff().stream().map(StaffMember::id).toList();
            case DOSE -> Arrays.stream(Dose.values()).map(Dose::id).toList();
            case VARIANT ->
                session.family.family.variants().stream().map(Variant::id).toList();
            default -> List.of();
        };
    }

    /** What might be named instead. */
    String known(Kind kind) {
        List<String> ids = ids(kind);
        return ids.isEmpty() ? "there is none to name" : "name one of " + String.join(", ", ids);
    }

    private String oneOf(Kind kind, String value, Collection<String> ids) {
        if (ids.contains(value)) {
            return value;
        }
        throw new InputFault("--" + kind.id() + " is \"" + value + "\": "
                + (ids.isEmpty() ? "there is none of " + session.family.family.id() : Nearest.hint(value, ids)));
    }

    private Moment start(String value) {
        Moment start;
        try {
            start = Moment.typed(value);
        } catch (DateTimeParseException e) {
            throw new InputFault("--start is \"" + value + "\": give a time, such as " + firstDay() + "T10:00");
        }
        inWeek(start.date());
        return existing(start);
    }

    private Moment on(LocalDate day, Moment before) {
        return existing(Moment.of(day.atTime(before.local().toLocalTime())));
    }

    private Moment existing(Moment start) {
        if (start.existsIn(scenario.zone())) {
            return start;
        }
        throw new InputFault("--start is " + start + ", which the clocks of "
                + scenario.zone().getId() + " do not show: give a time an hour earlier or later");
    }

    /**
     * A day of the session's week.
     *
     * @param option the option that it was given with
     * @throws InputFault when it is none
     */
    LocalDate day(String option, String value) {
        return inWeek(Sessions.date(option, value, firstDay()));
    }

    /** The first day of the session's week that may be named. */
    LocalDate firstDay() {
        return Sessions.firstDay(session, scenario);
    }

    private LocalDate inWeek(LocalDate day) {
        return Sessions.inWeek(session, day, scenario);
    }
}
