package weekwright.desk.view.sheet;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.sheet.SheetPage.Block;
import weekwright.desk.view.sheet.SheetPage.Lane;
import weekwright.desk.view.sheet.SheetPage.Part;
import weekwright.desk.view.sheet.SheetPage.Step;
import weekwright.model.answer.DaySheet;
import weekwright.model.answer.DaySheet.Fixed;
import weekwright.model.answer.DaySheet.GroupDay;
import weekwright.model.answer.DaySheet.Line;
import weekwright.model.answer.DaySheet.Out;
import weekwright.model.answer.DaySheet.Plan;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.answer.DaySheet.Why;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.scenario.Moment;

/** Puts a day sheet into words. */
public final class SheetPages {
    private static final String BETWEEN = " · ";

    private final SheetWords words;
    private final SheetTables tables;
    private final ZoneId zone;

    private SheetPages(SheetWords words, boolean personal, ZoneId zone) {
        this.words = words;
        this.zone = zone;
        tables = new SheetTables(words, personal);
    }

    /**
     * The words of a sheet.
     *
     * @param who name of the only athlete, or null where it is for all
     * @param zone zone of its times
     */
    public static SheetPage of(DaySheet sheet, @Nullable String who, ZoneId zone) {
        SheetPages pages = new SheetPages(new SheetWords(sheet.weightUnit(), sheet.lengthUnit()), who != null, zone);
        return new SheetPage(
                sheet.title(),
                Dates.day(sheet.day()) + " " + sheet.day().getYear(),
                who,
                sheet.groups().stream().map(pages::lane).toList(),
                sheet.cautions());
    }

    private Lane lane(GroupDay day) {
        Map<Block, Instant> starts = new LinkedHashMap<>();
        day.fixed().forEach(fixed -> starts.put(block(fixed), fixed.start().instant(zone)));
        day.sessions()
                .forEach(session -> starts.put(block(session), session.start().instant(zone)));
        return new Lane(
                day.label(),
                joined(Dates.matchDay(day.matchDay()), day.dayClass().id() + " day"),
                starts.entrySet().stream()
                        .sorted(Map.Entry.comparingByValue())
                        .map(Map.Entry::getKey)
                        .toList());
    }

    private static Block block(Fixed fixed) {
        return new Block(
                time(fixed.start(), fixed.end()),
                (fixed.match() ? "◆ " : "") + fixed.label(),
                joined(fixed.facility()),
                List.of(),
                "",
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static String time(Moment start, Moment end) {
        return Dates.clock(start) + "–" + Dates.clock(end);
    }

    private static String joined(@Nullable String... parts) {
        return Stream.of(parts)
                .filter(Objects::nonNull)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(BETWEEN));
    }

    private Block block(Session session) {
        return new Block(
                time(session.start(), session.end()),
                session.label(),
                joined(session.facility(), session.lead()),
                session.remarks(),
                "Warm-up " + session.warmUpMinutes() + " min",
                session.warmUpMinutes() == 0
                        ? List.of()
                        : session.plans().stream()
                                .findFirst()
                                .map(SheetPages::warmUp)
                                .orElse(List.of()),
                parts(session),
                tables.of(session),
                session.out().stream().map(this::out).toList());
    }

    private static List<String> warmUp(Plan plan) {
        List<Line> lines = plan.lines().stream()
                .filter(line -> line.kind() == ContentKind.WARM_UP)
                .toList();
        List<String> all = new ArrayList<>(lines.stream()
                .filter(line -> !line.isWarmUpSet())
                .map(Line::label)
                .toList());
        List<String> sets = lines.stream()
                .filter(Line::isWarmUpSet)
                .map(SheetPages::warmUpSet)
                .toList();
        if (!sets.isEmpty()) {
            all.add("sets of the first lift: " + String.join(", ", sets) + " of the day's weight");
        }
        return all;
    }

    private static String warmUpSet(Line line) {
        String what = line.percentFrom() == null
                ? line.label().toLowerCase(Locale.ROOT)
                : Dates.number(line.percentFrom()) + " %";
        return what + " × " + line.repetitions();
    }

    /** The group's own work in full, of other levels only what differs from it. */
    private List<Part> parts(Session session) {
        List<Part> parts = new ArrayList<>();
        for (Plan plan : session.plans()) {
            List<Step> steps = steps(plan);
            if (parts.isEmpty()) {
                parts.add(new Part(null, steps, words.rules(plan)));
                continue;
            }
            List<Step> others = steps.stream()
                    .filter(step -> !parts.get(0).steps().contains(step))
                    .toList();
            if (!others.isEmpty()) {
                boolean all = others.size() == steps.size();
                parts.add(new Part(
                        SheetWords.level(plan.level()) + (all ? "" : ", else as above"),
                        others,
                        words.rules(plan).stream()
                                .filter(rule -> !parts.get(0).rules().contains(rule))
                                .toList()));
            }
        }
        return parts;
    }

    private List<Step> steps(Plan plan) {
        return plan.lines().stream()
                .filter(line -> line.kind() != ContentKind.WARM_UP)
                .map(line -> new Step(
                        line.label(),
                        words.amount(line),
                        words.effort(line),
                        SheetWords.rest(line),
                        Objects.requireNonNullElse(line.note(), "")))
                .toList();
    }

    private SheetPage.Line out(Out out) {
        if (out.why() == Why.ELSEWHERE) {
            return new SheetPage.Line(out.name(), "is elsewhere");
        }
        if (out.instead() == null) {
            return new SheetPage.Line(out.name(), "sits out");
        }
        List<String> work = new ArrayList<>();
        for (int i = 0; i < out.instead().lines().size(); i++) {
            Line line = out.instead().lines().get(i);
            if (line.kind() != ContentKind.WARM_UP) {
                String target = words.target(out.instead().targets().get(i));
                work.add((line.label() + " " + words.amount(line)).strip() + (target.isEmpty() ? "" : ", " + target));
            }
        }
        return new SheetPage.Line(
                out.name(), "sits out; instead " + out.instead().label() + ": " + String.join("; ", work));
    }
}
