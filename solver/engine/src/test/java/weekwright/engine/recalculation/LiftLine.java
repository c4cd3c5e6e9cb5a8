package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;

/** One group's lifts of a family, one after the other, and which variants serve best where none is written. */
final class LiftLine {
    static final String REPEATED = "maximum-repeated";
    static final String CHURN = "variant-churn";

    /**
     * One time that the lift is trained, at more than a micro dose.
     *
     * @param week plan week, negative before the plan
     * @param variant which one, or null where it is unknown or still to be filled
     */
    record Exposure(
            String key,
            LocalDate date,
            int week,
            boolean full,
            boolean placed,
            @Nullable String variant) {
        Exposure with(String other) {
            return new Exposure(key, date, week, full, placed, other);
        }

        boolean isOpen() {
            return placed && variant == null;
        }
    }

    /** Something that costs points. */
    record Breach(String rule, String subjects, Fraction points) {}

    private final Case the;
    private final Group group;
    private final Family family;
    private final RuleSettings settings;
    private final List<Exposure> line;

    LiftLine(Case the, Group group, Family family) {
        this.the = the;
        this.group = group;
        this.family = family;
        this.settings = the.settings().get(group.id());
        this.line = the.things().stream()
                .filter(thing -> thing.placed() || thing.kind() == Thing.Kind.PAST_SESSION)
                .filter(thing -> thing.group().equals(group.id())
                        && thing.trains().id().equals(family.id())
                        && thing.dose() != Dose.MICRO)
                .map(thing -> new Exposure(
                        thing.key(),
                        thing.date(),
                        the.weeks().numberOf(thing.date()),
                        thing.dose() == Dose.FULL,
                        thing.placed(),
                        thing.variant()))
                .toList();
    }

    /** What the line costs, filled as well as it can be. */
    List<Breach> breaches() {
        return breaches(filled(), the.weeks().lastDay());
    }

    private List<Exposure> best = List.of();
    private long bestCost = Long.MAX_VALUE;

    /** The cheapest filling; of equal ones the one whose earliest session has the variant named first. */
    List<Exposure> filled() {
        best = List.of();
        bestCost = Long.MAX_VALUE;
        tryOn(List.of());
        return best;
    }

    /** Tries everything that could still be cheaper, first named first. */
    private void tryOn(List<Exposure> begun) {
        boolean whole = begun.size() == line.size();
        LocalDate until = whole || begun.isEmpty()
                ? the.weeks().lastDay()
                : begun.get(begun.size() - 1).date();
        long cost = begun.isEmpty() && !whole ? 0 : cost(breaches(begun, until));
        if (cost >= bestCost) {
            return;
        }
        if (whole) {
            best = begun;
            bestCost = cost;
            return;
        }
        Exposure next = line.get(begun.size());
        if (next.isOpen()) {
            family.variants().forEach(variant -> tryOn(plus(begun, next.with(variant.id()))));
        } else {
            tryOn(plus(begun, next));
        }
    }

    private static List<Exposure> plus(List<Exposure> begun, Exposure next) {
        List<Exposure> longer = new ArrayList<>(begun);
        longer.add(next);
        return longer;
    }

    private long cost(List<Breach> breaches) {
        return breaches.stream()
                .filter(breach -> settings.level(breach.rule()) != RuleLevel.OFF
                        && settings.level(breach.rule()) != RuleLevel.TOLD)
                .mapToLong(breach -> breach.points()
                        .times(10)
                        .times(Fraction.of(settings.weightMilli(breach.rule()), 1000))
                        .roundedHalfUp())
                .sum();
    }

    /** What a line, or the beginning of one, costs up to a date. */
    private List<Breach> breaches(List<Exposure> some, LocalDate until) {
        List<Breach> breaches = new ArrayList<>();
        variants().forEach(variant -> repeated(some, variant, breaches));
        leftTooSoon(some, breaches);
        testedAwayTooLong(some, until, breaches);
        return breaches;
    }

    private List<String> variants() {
        return Stream.concat(
                        family.variants().stream().map(Variant::id),
                        line.stream().map(Exposure::variant).filter(variant -> variant != null))
                .distinct()
                .toList();
    }

    private Fraction number(String rule, String name) {
        return Fraction.of(settings.number(rule, name));
    }

    /** The same variant at full dose week after week; weeks without the lift do not count. */
    private void repeated(List<Exposure> some, String variant, List<Breach> breaches) {
        Fraction most = number(REPEATED, group.level() == Level.ADVANCED ? "advancedWeeks" : "trainedWeeks");
        long running = 0;
        for (int week : some.stream().map(Exposure::week).distinct().sorted().toList()) {
            boolean there =
                    some.stream().anyMatch(one -> one.week() == week && one.full() && variant.equals(one.variant()));
            running = there ? running + 1 : 0;
            if (week >= 0 && Fraction.of(running).above(most)) {
                breaches.add(new Breach(REPEATED, name(variant, week), number(REPEATED, "points")));
            }
        }
    }

    /** A variant that is left after too few times; what is unknown begins a new line. */
    private void leftTooSoon(List<Exposure> some, List<Breach> breaches) {
        Fraction least = number(CHURN, group.level() == Level.ADVANCED ? "advancedExposures" : "exposures");
        List<Exposure> block = new ArrayList<>();
        for (Exposure one : some) {
            String before = block.isEmpty() ? null : block.get(0).variant();
            if (before != null && one.variant() != null && !before.equals(one.variant())) {
                boolean ours = one.placed() || block.stream().anyMatch(Exposure::placed);
                if (ours && Fraction.of(block.size()).below(least)) {
                    breaches.add(new Breach(CHURN, name(block.get(0).key(), "left"), number(CHURN, "points")));
                }
            }
            if (before == null || !before.equals(one.variant())) {
                block.clear();
            }
            if (one.variant() != null) {
                block.add(one);
            }
        }
    }

    /** The lift that is tested comes back within some weeks. */
    private void testedAwayTooLong(List<Exposure> some, LocalDate until, List<Breach> breaches) {
        List<String> tested = family.variants().stream()
                .filter(Variant::tested)
                .map(Variant::id)
                .toList();
        boolean aimed = group.aims().stream().anyMatch(aim -> aim.family().equals(family.id()));
        if (tested.isEmpty() || !aimed) {
            return;
        }
        List<LocalDate> dates = some.stream()
                .filter(one -> one.variant() != null && tested.contains(one.variant()))
                .map(Exposure::date)
                .toList();
        LocalDate first = the.weeks().firstDay();
        LocalDate from = dates.stream()
                .filter(date -> date.isBefore(first))
                .max(LocalDate::compareTo)
                .orElse(first);
        List<LocalDate> stations = Stream.concat(dates.stream().filter(date -> !date.isBefore(first)), Stream.of(until))
                .toList();
        for (LocalDate station : stations) {
            Fraction weeks = Fraction.of(ChronoUnit.DAYS.between(from, station), 7);
            if (weeks.above(number(CHURN, "testedWeeks"))) {
                breaches.add(new Breach(CHURN, name("tested", from), number(CHURN, "testedPoints")));
            }
            from = station;
        }
    }

    private String name(Object... what) {
        return group.id() + " " + family.id() + " " + List.of(what);
    }
}
