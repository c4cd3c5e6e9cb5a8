package weekwright.desk.view.week;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.week.HoldPage.Cell;
import weekwright.desk.view.week.HoldPage.DayCells;
import weekwright.desk.view.week.HoldPage.Layer;
import weekwright.desk.view.week.Landscapes.HeldLane;
import weekwright.desk.view.week.WeekPage.Choice;
import weekwright.engine.explain.Prices;
import weekwright.model.answer.WhyNotOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Scenario;

/** Shows what each start of a session would do, while a coach holds it. */
public final class HoldPages {
    private static final int MINUTES_OF_A_DAY = 24 * 60;
    private static final String NOWHERE = "";

    private static final Comparator<Totals> BY_LEVELS = Comparator.comparingDouble(Totals::must)
            .thenComparingDouble(Totals::key)
            .thenComparingDouble(Totals::main)
            .thenComparingDouble(Totals::want);

    private final Scenario scenario;
    private final Open open;
    private final Names names;
    private final String session;
    private final @Nullable Placement placement;
    private final List<WhyNotOption> options;

    private HoldPages(Open open, String session, List<WhyNotOption> options) {
        this.scenario = open.scenario();
        this.open = open;
        this.session = session;
        names = new Names(scenario);
        placement = open.judged().plan().placements().stream()
                .filter(placed -> session.equals(placed.id()))
                .findFirst()
                .orElse(null);
        this.options = options;
    }

    /** What a layer is: a place, or nowhere in particular, and a dose. */
    private record Key(String facility, Dose dose) {
        static Key of(@Nullable String facility, Dose dose) {
            return new Key(Objects.requireNonNullElse(facility, NOWHERE), dose);
        }
    }

    /**
     * A held session.
     *
     * @param session id of a session that there is
     * @param options all that it could do
     */
    public static HoldPage of(String base, Open open, String session, List<WhyNotOption> options, Way way) {
        return new HoldPages(open, session, options).page(base, way.look(), way);
    }

    /**
     * How it is looked at.
     *
     * @param lane mark of the lane where it was taken up, or an empty text
     * @param layer number of the place and dose to show, or null for where it lies, or else what is best
     */
    public record Way(LookAt look, String lane, @Nullable Integer layer) {}

    private HoldPage page(String base, LookAt look, Way way) {
        Integer asked = way.layer();
        Map<Key, List<WhyNotOption>> byLayer = new LinkedHashMap<>();
        options.stream()
                .sorted(Comparator.comparing(WhyNotOption::dose))
                .forEach(option -> byLayer.computeIfAbsent(
                                Key.of(option.facility(), option.dose()), key -> new ArrayList<>())
                        .add(option));
        List<Key> keys = List.copyOf(byLayer.keySet());
        List<List<WhyNotOption>> each = List.copyOf(byLayer.values());
        int chosen = asked != null && asked >= 0 && asked < keys.size() ? asked : usual(keys, each);
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            Key key = keys.get(i);
            layers.add(new Layer(i, key.facility(), key.dose().id(), label(key), best(each.get(i)), i == chosen));
        }
        String facility = keys.isEmpty() ? NOWHERE : keys.get(chosen).facility();
        HoldPins pins = new HoldPins(scenario, names, placement == null ? leftOutPin() : placement.held(), placement);
        HeldLane lane =
                look.week() == week(look) ? Landscapes.heldLane(open, look, session, facility, way.lane()) : null;
        return new HoldPage(
                base,
                look.query(),
                open.revision().number(),
                session,
                lane == null ? "" : lane.mark(),
                lane == null ? elsewhere(look) : null,
                names.session(session),
                now(),
                placement != null,
                layers,
                lane == null || keys.isEmpty() ? List.of() : days(each.get(chosen), lane.axis()),
                pins.held(),
                pins.changes());
    }

    /** The week in which it can lie; where that is nowhere, the one that is looked at. */
    private int week(LookAt look) {
        return options.stream()
                .findFirst()
                .map(option -> (int) ChronoUnit.WEEKS.between(
                                scenario.firstDay(), option.start().date())
                        + 1)
                .orElse(look.week());
    }

    private Choice elsewhere(LookAt look) {
        LookAt there = new LookAt(Math.max(1, week(look)), LookAt.By.GROUP);
        String label = scenario.weeks() == 1 ? "the week by group" : "week " + there.week() + " by group";
        return new Choice("Show " + label, there.query(), false);
    }

    /** Where it lies, or else where the best start is. */
    private int usual(List<Key> keys, List<List<WhyNotOption>> each) {
        if (placement != null) {
            int here = keys.indexOf(Key.of(placement.facility(), placement.dose()));
            return Math.max(0, here);
        }
        return Stream.iterate(0, i -> i < keys.size(), i -> i + 1)
                .min(Comparator.comparing(i -> least(each.get(i)), Comparator.nullsLast(BY_LEVELS)))
                .orElse(0);
    }

    private static @Nullable Totals least(List<WhyNotOption> some) {
        return some.stream()
                .filter(WhyNotOption::possible)
                .map(WhyNotOption::change)
                .min(BY_LEVELS)
                .orElse(null);
    }

    private static String best(List<WhyNotOption> some) {
        Totals least = least(some);
        return least == null ? "no start is possible" : "best " + mark(least);
    }

    private String label(Key key) {
        String place = key.facility().isEmpty() ? "Anywhere" : names.facility(key.facility());
        String dose = Words.dose(key.dose());
        return dose == null ? place + ", full dose" : place + ", " + dose;
    }

    private String now() {
        if (placement == null) {
            return "It is left out now.";
        }
        String place = names.facility(placement.facility());
        String lead = names.staff(placement.lead());
        String lift = names.variant(placement.family(), placement.variant());
        return Stream.of(
                                "It lies on " + Dates.day(placement.start().date()) + " at "
                                        + Dates.clock(placement.start()),
                                place,
                                Words.dose(placement.dose()),
                                lift,
                                lead)
                        .filter(Objects::nonNull)
                        .reduce((a, b) -> a + ", " + b)
                        .orElse("")
                + ".";
    }

    private List<DayCells> days(List<WhyNotOption> some, TimeAxis axis) {
        Map<LocalDate, List<WhyNotOption>> byDay = new LinkedHashMap<>();
        some.forEach(option -> byDay.computeIfAbsent(option.start().date(), day -> new ArrayList<>())
                .add(option));
        return byDay.entrySet().stream()
                .map(day -> new DayCells(
                        day.getKey().toString(),
                        Dates.day(day.getKey()),
                        day.getValue().stream()
                                .filter(option -> shown(option, axis))
                                .map(option -> cell(option, axis))
                                .toList()))
                .filter(day -> !day.cells().isEmpty())
                .toList();
    }

    private static int minute(WhyNotOption option) {
        return option.start().local().toLocalTime().toSecondOfDay() / 60;
    }

    private static boolean shown(WhyNotOption option, TimeAxis axis) {
        return minute(option) >= axis.from() && minute(option) < axis.to();
    }

    private Cell cell(WhyNotOption option, TimeAxis axis) {
        int minute = minute(option);
        int end = Math.min(Math.min(axis.to(), MINUTES_OF_A_DAY), minute + scenario.gridMinutes());
        boolean here = isHere(option);
        String look = here ? "here" : look(option);
        String mark = here ? "here" : option.possible() ? gravest(option.change()) : "no";
        return new Cell(
                option.start().toString(),
                axis.row(minute),
                axis.rows(new TimeAxis.Stretch(minute, end)),
                look,
                mark,
                Dates.clock(option.start()) + ", " + text(option, here));
    }

    private boolean isHere(WhyNotOption option) {
        return placement != null
                && placement.start().equals(option.start())
                && Objects.equals(placement.facility(), option.facility())
                && placement.dose() == option.dose();
    }

    private static String look(WhyNotOption option) {
        if (!option.possible()) {
            return "no";
        }
        int compared = BY_LEVELS.compare(option.change(), new Totals(0, 0, 0, 0));
        return compared < 0 ? "better" : compared > 0 ? "worse" : "same";
    }

    private static String text(WhyNotOption option, boolean here) {
        if (here) {
            return "it lies here now";
        }
        return option.possible()
                ? Prices.said(option.change())
                : "not possible: "
                        + String.join(
                                "; ", option.breaks().stream().map(Names::rule).toList());
    }

    /** What of a change weighs most: a cell has room for no more. */
    private static String gravest(Totals change) {
        return parts(change).stream().findFirst().orElse("same");
    }

    /** E.g. {@code −0.2}, {@code +3}, {@code key −1 +3}; {@code same} where nothing changes. */
    private static String mark(Totals change) {
        List<String> parts = parts(change);
        return parts.isEmpty() ? "same" : String.join(" ", parts);
    }

    private static List<String> parts(Totals change) {
        List<String> parts = new ArrayList<>();
        add(parts, "must ", change.must());
        add(parts, "key ", change.key());
        add(parts, "main ", change.main());
        add(parts, "", change.want());
        return parts;
    }

    private static void add(List<String> parts, String level, double change) {
        if (change != 0) {
            parts.add(level + (change < 0 ? "−" : "+") + Dates.number(Math.abs(change)));
        }
    }

    private Pin leftOutPin() {
        return open.judged().plan().leftOut().stream()
                .filter(left -> left.id().equals(session))
                .map(LeftOut::pin)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(Pin.NONE);
    }
}
