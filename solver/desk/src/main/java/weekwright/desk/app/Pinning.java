package weekwright.desk.app;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Judged;
import weekwright.engine.problem.Session;
import weekwright.model.Nearest;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/**
 * Holds something of a session, moves it and holds it there, bars a day, or lets go again; the plan is judged anew. What
 * is pinned against the rules is pinned all the same: the findings say what it breaks.
 */
public final class Pinning {
    /** What of a session is meant. */
    public enum Kind {
        START,
        DAY,
        FACILITY,
        LEAD,
        DOSE,
        VARIANT,
        OUT,
        NOT_DAY;

        /** The name in commands. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * What is asked.
     *
     * @param kind what of the session is meant; null where all pins are to go
     * @param value what it changes to before it is held, or null where it is held as it is
     * @param clear whether the pin goes instead
     */
    public record Request(@Nullable Kind kind, @Nullable String value, boolean clear) {}

    /**
     * What came of it.
     *
     * @param judged the plan with the pin, judged anew
     * @param text what was done, in one line
     */
    public record Pinned(Judged judged, String text) {}

    private final Planner planner;
    private final Scenario scenario;
    private final Plan plan;
    private final Session session;
    private final @Nullable Placement placement;
    private final @Nullable Pin leftOutPin;

    private Pinning(Planner planner, Scenario scenario, Plan plan, String id) {
        this.planner = planner;
        this.scenario = scenario;
        // Judged, every session of a plan written by hand has its id.
        this.plan = planner.judgeWithoutRemedies(scenario, plan).plan();
        session = Sessions.named(id, scenario, plan);
        placement = this.plan.placements().stream()
                .filter(placed -> id.equals(placed.id()))
                .findFirst()
                .orElse(null);
        leftOutPin = this.plan.leftOut().stream()
                .filter(left -> left.id().equals(id))
                .map(LeftOut::pin)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /**
     * Does what is asked with a session of a plan.
     *
     * @throws InputFault when there is no such session, or nothing to hold, or a value that cannot be
     */
    public static Pinned pin(Planner planner, Scenario scenario, Plan plan, String session, Request request) {
        return new Pinning(planner, scenario, plan, session).done(request);
    }

    private Pinned done(Request request) {
        Kind kind = request.kind();
        if (request.clear() || kind == null) {
            return cleared(kind);
        }
        return switch (kind) {
            case OUT -> heldOut();
            case NOT_DAY -> barred(date("--not-day", request.value()));
            default -> held(kind, request.value());
        };
    }

    private Pin pinNow() {
        return placement != null ? placement.held() : leftOutPin == null ? Pin.NONE : leftOutPin;
    }

    private Pinned held(Kind kind, @Nullable String value) {
        Placement before = placement;
        if (before == null && (kind != Kind.START || value == null)) {
            throw new InputFault(
                    session.id + " is not placed: give it a start first, such as --start " + firstDay() + "T10:00");
        }
        Placement from = before == null ? placed(Moment.parse(firstDay() + "T00:00")) : before;
        Placement to = value == null ? from : changed(from, kind, value);
        String now = shown(to, kind);
        if (now == null) {
            throw new InputFault(session.id + " has no " + kind.id() + " to hold: " + known(kind));
        }
        String was = shown(from, kind);
        String text = before == null
                ? "is placed, and its start " + now + " is held"
                : now.equals(was)
                        ? kind.id() + " " + now + " is held"
                        : kind.id() + " changes to " + now + " and is held";
        return judged(withPin(to, with(pinNow(), kind, true)), null, text);
    }

    private Pinned heldOut() {
        Pin out = new Pin(false, false, false, false, false, false, true, pinNow().notDays());
        return session.aim == null
                ? judged(null, null, "dropped, as no aim asks for it")
                : judged(null, out, "is held out");
    }

    private Pinned barred(LocalDate day) {
        TreeSet<LocalDate> days = new TreeSet<>(pinNow().notDays());
        days.add(inWeek(day));
        Pin pin = withDays(pinNow(), List.copyOf(days));
        boolean there = placement != null && placement.start().date().equals(day);
        boolean stays = there && (pin.day() || pin.start());
        String text = "is barred on " + day
                + (stays ? ", where it is held" : there ? ", where it lies: a new search moves it" : "");
        return placement == null ? judged(null, pin, text) : judged(withPin(placement, pin), null, text);
    }

    private Pinned cleared(@Nullable Kind kind) {
        Pin now = pinNow();
        Pin then = kind == null ? Pin.NONE : kind == Kind.NOT_DAY ? withDays(now, List.of()) : with(now, kind, false);
        String what = kind == null ? "nothing" : kind.id();
        boolean same = then.equals(now);
        String text = kind == null
                ? same ? "had no pin" : "has no pin any more"
                : what + (same ? " was not pinned" : " is pinned no more");
        return placement == null ? judged(null, then, text) : judged(withPin(placement, then), null, text);
    }

    /** The plan with the session placed so, or with it left out so, judged anew. */
    private Pinned judged(@Nullable Placement now, @Nullable Pin leftOut, String text) {
        List<Placement> placements = new ArrayList<>(plan.placements());
        placements.removeIf(other -> session.id.equals(other.id()));
        if (now != null) {
            placements.add(now);
        }
        List<LeftOut> out = new ArrayList<>(plan.leftOut());
        out.removeIf(other -> other.id().equals(session.id));
        if (leftOut != null && !leftOut.isNone()) {
            out.add(new LeftOut(session.id, "target", RuleLevel.WANT, 0, leftOut, 0, List.of(), null, ""));
        }
        return new Pinned(planner.judge(scenario, plan.withSessions(placements, out)), session.id + ": " + text + ".");
    }

    private Placement changed(Placement from, Kind kind, String value) {
        Moment start = from.start();
        String facility = from.facility();
        String lead = from.lead();
        Dose dose = from.dose();
        String variant = from.variant();
        switch (kind) {
            case START -> start = start(value);
            case DAY -> start = on(inWeek(date("--day", value)), from.start());
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

    /** The session where it was left out, in the first place that will do and in the fullest dose of its aim. */
    private Placement placed(Moment start) {
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

    private static Placement withPin(Placement placement, Pin pin) {
        return placement.withPin(pin.isNone() ? null : pin);
    }

    /** What is held of a session that is placed is not held out. */
    private static Pin with(Pin pin, Kind kind, boolean held) {
        return new Pin(
                kind == Kind.START ? held : pin.start(),
                kind == Kind.DAY ? held : pin.day(),
                kind == Kind.FACILITY ? held : pin.facility(),
                kind == Kind.LEAD ? held : pin.lead(),
                kind == Kind.DOSE ? held : pin.dose(),
                kind == Kind.VARIANT ? held : pin.variant(),
                kind != Kind.OUT && !held && pin.out(),
                pin.notDays());
    }

    private static Pin withDays(Pin pin, List<LocalDate> days) {
        return new Pin(pin.start(), pin.day(), pin.facility(), pin.lead(), pin.dose(), pin.variant(), pin.out(), days);
    }

    /** What stands in a placement, or null. */
    private static @Nullable String shown(Placement placement, Kind kind) {
        return switch (kind) {
            case START -> placement.start().toString();
            case DAY -> placement.start().date().toString();
            case FACILITY -> placement.facility();
            case LEAD -> placement.lead();
            case DOSE -> placement.dose().id();
            case VARIANT -> placement.variant();
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

    private String known(Kind kind) {
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
            start = Moment.parse(value.strip().replace(' ', 'T'));
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

    private LocalDate date(String option, @Nullable String value) {
        return Sessions.date(option, Objects.requireNonNullElse(value, ""), firstDay());
    }

    private LocalDate firstDay() {
        return Sessions.firstDay(session, scenario);
    }

    private LocalDate inWeek(LocalDate day) {
        return Sessions.inWeek(session, day, scenario);
    }
}
