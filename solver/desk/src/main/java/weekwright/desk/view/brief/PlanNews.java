package weekwright.desk.view.brief;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.brief.BriefPage.News;
import weekwright.desk.view.brief.BriefPages.Since;
import weekwright.engine.explain.Comparisons;
import weekwright.model.answer.Change;
import weekwright.model.answer.Spot;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * What has changed for a group in a week since the plan was given out, as those who train want to know it: when and where,
 * and what is new or off. Who leads and how much of it is done is told on the day.
 */
final class PlanNews {
    private final Scenario scenario;
    private final Group group;
    private final LocalDate first;
    private final LocalDate last;
    private final Names names;
    private final List<Line> lines = new ArrayList<>();

    PlanNews(Scenario scenario, Group group, LocalDate first, LocalDate last) {
        this.scenario = scenario;
        this.group = group;
        this.first = first;
        this.last = last;
        names = new Names(scenario);
    }

    /** A line and the time by which it is put in order. */
    private record Line(Instant at, String text) {}

    /** When and where something lies. */
    private record Lying(
            String label, Moment start, @Nullable String place) {}

    News since(Since since, Plan now) {
        Scenario old = since.scenario();
        if (old != null) {
            changes(fixtures(old), fixtures(scenario));
            changes(commitments(old), commitments(scenario));
        }
        for (Change change : Comparisons.of(scenario, since.plan(), now).sessions()) {
            String[] id = change.session().split("/", -1);
            if (id[0].equals(group.id())) {
                String label = Words.brief(names.family(id[1].replaceFirst("\\+.*", "")));
                change(lying(label, change.before()), lying(label, change.after()));
            }
        }
        lines.sort(Comparator.comparing(Line::at));
        Moment at = since.at();
        return new News(
                at == null ? null : Dates.day(at.date()) + " " + Dates.clock(at),
                lines.stream().map(Line::text).toList());
    }

    private @Nullable Lying lying(String label, @Nullable Spot spot) {
        return spot == null ? null : new Lying(label, spot.start(), names.facility(spot.facility()));
    }

    private Map<String, Lying> fixtures(Scenario of) {
        Map<String, Lying> all = new TreeMap<>();
        for (Fixture one : of.fixtures()) {
            if (one.groups().contains(group.id())) {
                all.put(one.id(), new Lying(one.label(), one.start(), null));
            }
        }
        return all;
    }

    private Map<String, Lying> commitments(Scenario of) {
        Map<String, Lying> all = new TreeMap<>();
        for (Commitment one : of.commitments()) {
            if (one.groups().contains(group.id())) {
                all.put(one.id(), new Lying(one.label(), one.start(), names.facility(one.facility())));
            }
        }
        return all;
    }

    private void changes(Map<String, Lying> before, Map<String, Lying> now) {
        TreeSet<String> ids = new TreeSet<>(before.keySet());
        ids.addAll(now.keySet());
        ids.forEach(id -> change(before.get(id), now.get(id)));
    }

    private void change(@Nullable Lying before, @Nullable Lying now) {
        if (!touches(before) && !touches(now)) {
            return;
        }
        if (now == null) {
            Lying gone = Objects.requireNonNull(before);
            add(gone.start(), gone.label() + ": off (was " + when(gone) + ")");
        } else if (before == null) {
            add(now.start(), now.label() + ": new, " + where(now));
        } else if (!before.start().equals(now.start()) || !Objects.equals(before.place(), now.place())) {
            boolean samePlace = Objects.equals(before.place(), now.place());
            add(
                    now.start(),
                    now.label() + ": now " + where(now) + " (was " + (samePlace ? when(before) : where(before)) + ")");
        }
    }

    private boolean touches(@Nullable Lying one) {
        return one != null
                && !one.start().date().isBefore(first)
                && !one.start().date().isAfter(last);
    }

    private void add(Moment at, String text) {
        lines.add(new Line(at.instant(scenario.zone()), text));
    }

    private static String when(Lying one) {
        return Dates.day(one.start().date()) + " " + Dates.clock(one.start());
    }

    private static String where(Lying one) {
        return when(one) + (one.place() == null ? "" : ", " + one.place());
    }
}
