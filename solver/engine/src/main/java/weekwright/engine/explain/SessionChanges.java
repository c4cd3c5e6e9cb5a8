package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Pairs.Pair;
import weekwright.model.answer.Change;
import weekwright.model.answer.Spot;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** The sessions that differ between two plans, each with a sentence. */
final class SessionChanges {
    static final String MOVED = "moved";
    static final String PLACED = "placed";
    static final String DOSED = "dosed";
    static final String LED = "led";
    static final String VARIED = "varied";
    static final String ADDED = "added";
    static final String DROPPED = "dropped";

    private final Labels labels;
    private final Plan after;

    private SessionChanges(Scenario scenario, Plan after) {
        this.after = after;
        labels = new Labels(scenario);
    }

    /** What differs, in order of time: of a session that moves that of the first plan counts. */
    static List<Change> between(Scenario scenario, Plan before, Plan after) {
        SessionChanges changes = new SessionChanges(scenario, after);
        return Pairs.of(before, after).stream()
                .filter(pair -> !what(pair).isEmpty())
                .sorted(Comparator.comparing((Pair pair) -> first(pair).start().instant(scenario.zone())))
                .map(changes::change)
                .toList();
    }

    private static Placement first(Pair pair) {
        Placement before = pair.before();
        return before == null ? Objects.requireNonNull(pair.after()) : before;
    }

    private static List<String> what(Pair pair) {
        Placement before = pair.before();
        Placement after = pair.after();
        if (before == null || after == null) {
            return List.of(before == null ? ADDED : DROPPED);
        }
        List<String> what = new ArrayList<>();
        note(what, MOVED, before.start(), after.start());
        note(what, PLACED, before.facility(), after.facility());
        note(what, DOSED, before.dose(), after.dose());
        note(what, LED, before.lead(), after.lead());
        note(what, VARIED, before.variant(), after.variant());
        return what;
    }

    private static void note(List<String> what, String word, @Nullable Object before, @Nullable Object after) {
        if (!Objects.equals(before, after)) {
            what.add(word);
        }
    }

    private Change change(Pair pair) {
        Placement before = pair.before();
        Placement now = pair.after();
        Placement shown = now == null ? first(pair) : now;
        return new Change(
                Objects.requireNonNull(shown.id()),
                what(pair),
                before == null ? null : spot(before),
                now == null ? null : spot(now),
                labels.ofGroup(shown.group(), sentence(before, now)));
    }

    private static Spot spot(Placement session) {
        return new Spot(session.start(), session.facility(), session.dose());
    }

    private String sentence(@Nullable Placement before, @Nullable Placement now) {
        if (before == null) {
            return added(Objects.requireNonNull(now));
        }
        return now == null
                ? name(before) + " is dropped" + why(before)
                : name(before) + " " + Names.list(changes(before, now)) + ".";
    }

    private String name(Placement session) {
        return labels.family(session.family()) + " (" + Names.moment(session.start()) + ")";
    }

    private String added(Placement session) {
        String place = session.facility() == null ? "" : ", " + labels.place(session.facility());
        String dose = session.dose() == weekwright.model.scenario.Dose.FULL
                ? ""
                : ", " + session.dose().id() + " dose";
        return labels.family(session.family()) + " is added on " + Names.moment(session.start()) + place + dose + ".";
    }

    /** What the second plan says of what it leaves out; nothing where more was placed than is wanted. */
    private String why(Placement session) {
        String id = Objects.requireNonNull(session.id());
        String aimWeek = id.substring(0, id.lastIndexOf('/') + 1);
        return after.leftOut().stream()
                .filter(left -> left.id().startsWith(aimWeek))
                .map(LeftOut::text)
                .filter(text -> text.contains(LeftOuts.LEFT_OUT))
                .map(text -> text.substring(text.indexOf(LeftOuts.LEFT_OUT) + LeftOuts.LEFT_OUT.length()))
                .findFirst()
                .orElse(".");
    }

    private List<String> changes(Placement before, Placement now) {
        List<String> all = new ArrayList<>();
        for (String what : what(new Pair(before, now))) {
            all.add(
                    switch (what) {
                        case MOVED -> "moves to " + when(before, now);
                        case PLACED -> "is held " + at(now) + " instead of " + at(before);
                        case DOSED ->
                            "is done in a " + now.dose().id() + " dose instead of a "
                                    + before.dose().id() + " one";
                        case LED -> led(before, now);
                        default -> "is " + labels.lift(now) + " instead of " + labels.lift(before);
                    });
        }
        return all;
    }

    private static String when(Placement before, Placement now) {
        boolean sameDay = before.start().date().equals(now.start().date());
        String moment = Names.moment(now.start());
        return sameDay ? moment.substring(moment.lastIndexOf(' ') + 1) : moment;
    }

    private String at(Placement session) {
        String place = labels.place(session.facility());
        return session.facility() == null ? place : "at " + place;
    }

    private String led(Placement before, Placement now) {
        String former = before.lead();
        String lead = now.lead();
        if (lead == null) {
            return "has nobody to lead it any more";
        }
        return "is led by " + labels.staff(lead) + (former == null ? "" : " instead of " + labels.staff(former));
    }

    /** How many sessions changed in which way, each counted once by what weighs most. */
    static int count(List<Change> changes, String what) {
        return (int) changes.stream()
                .filter(change -> change.what().get(0).equals(what))
                .count();
    }
}
