package weekwright.desk.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.engine.explain.Judged;
import weekwright.engine.problem.Session;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Scenario;

/**
 * Holds something of a session, moves it and holds it there, bars a day, or lets go again; the plan is judged anew. What
 * is pinned against the rules is pinned all the same: the findings say what it breaks.
 */
public final class Pinning {
    /** What of a session is meant. */
    public enum Kind {
        START("start"),
        DAY("day"),
        FACILITY("place"),
        LEAD("lead"),
        DOSE("dose"),
        VARIANT("lift"),
        OUT("out"),
        NOT_DAY("barred day");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The name in commands. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** What a coach calls it. */
        String word() {
            return word;
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
    private final Moved moved;
    private final @Nullable Placement placement;
    private final @Nullable Pin leftOutPin;

    private Pinning(Planner planner, Scenario scenario, Plan plan, String id) {
        this.planner = planner;
        this.scenario = scenario;
        // Judged, every session of a plan written by hand has its id.
        this.plan = planner.judgeWithoutRemedies(scenario, plan).plan();
        session = Sessions.named(id, scenario, plan);
        moved = new Moved(scenario, session);
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
            case NOT_DAY -> barred(moved.day("--not-day", Objects.requireNonNullElse(request.value(), "")));
            default -> placement == null ? placed(kind, request.value()) : hold(placement, kind, request.value());
        };
    }

    private Pin pinNow() {
        return placement != null ? placement.held() : leftOutPin == null ? Pin.NONE : leftOutPin;
    }

    private Pinned hold(Placement before, Kind kind, @Nullable String value) {
        Placement to = value == null ? before : moved.to(before, kind, value);
        String now = moved.said(to, kind);
        if (now == null) {
            throw new InputFault(session.id + " has no " + kind.word() + " to hold: " + moved.known(kind));
        }
        boolean same = now.equals(moved.said(before, kind));
        return held(to, kind, kind.word() + (same ? " " + now + " is held" : " changes to " + now + " and is held"));
    }

    private Pinned placed(Kind kind, @Nullable String value) {
        if (kind != Kind.START || value == null) {
            throw new InputFault(session.id + " is not placed: give it a start first, such as --start "
                    + moved.firstDay() + "T10:00");
        }
        Placement to = moved.placed(value);
        return held(to, kind, "is placed, and its start " + moved.said(to, kind) + " is held");
    }

    private Pinned held(Placement to, Kind kind, String text) {
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
        days.add(day);
        Pin pin = withDays(pinNow(), List.copyOf(days));
        boolean there = placement != null && placement.start().date().equals(day);
        boolean stays = there && (pin.day() || pin.start());
        String text = "is barred on " + Dates.day(day)
                + (stays ? ", where it is held" : there ? ", where it lies: a new search moves it" : "");
        return placement == null ? judged(null, pin, text) : judged(withPin(placement, pin), null, text);
    }

    private Pinned cleared(@Nullable Kind kind) {
        Pin now = pinNow();
        Pin then = kind == null ? Pin.NONE : kind == Kind.NOT_DAY ? withDays(now, List.of()) : with(now, kind, false);
        String text = gone(kind, then.equals(now));
        return placement == null ? judged(null, then, text) : judged(withPin(placement, then), null, text);
    }

    /** What is said of a pin that goes, or that was none. */
    private static String gone(@Nullable Kind kind, boolean none) {
        if (kind == null) {
            return none ? "had no pin" : "has no pin any more";
        }
        return switch (kind) {
            case OUT -> none ? "was not held out" : "is held out no more";
            case NOT_DAY -> none ? "was barred on no day" : "is barred on no day any more";
            default -> kind.word() + (none ? " was not pinned" : " is pinned no more");
        };
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
}
