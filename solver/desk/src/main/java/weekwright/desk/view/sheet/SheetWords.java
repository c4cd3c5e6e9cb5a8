package weekwright.desk.view.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.model.answer.DaySheet.Line;
import weekwright.model.answer.DaySheet.Plan;
import weekwright.model.catalogue.ContentKind;
import weekwright.model.prescription.Target;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.SprintStart;

/** The words for the numbers of a day sheet, in its units. */
final class SheetWords {
    /** Begins the slowest time that still is speed work. */
    static final String NOT_OVER = " (not over ";

    private static final String TIMES = " × ";

    private final String weightUnit;
    private final String lengthUnit;

    SheetWords(String weightUnit, String lengthUnit) {
        this.weightUnit = weightUnit;
        this.lengthUnit = lengthUnit;
    }

    /** E.g. {@code 5 × 20 m flying, run-in 30 m}. */
    String amount(Line line) {
        List<String> parts = new ArrayList<>();
        if (line.sets() > 1 || line.kind() == ContentKind.LIFT) {
            parts.add(String.valueOf(line.sets()));
        }
        if (line.repetitions() != null) {
            parts.add(String.valueOf(line.repetitions()));
        }
        if (line.length() != null || line.seconds() != null) {
            parts.add(distance(line));
        }
        String amount = String.join(TIMES, parts);
        return line.runIn() > 0 ? amount + " + " + length(line.runIn()) + " run-in" : amount;
    }

    /** Length or duration of a repetition. */
    private String distance(Line line) {
        Double length = line.length();
        return length != null ? length(length) : span(Objects.requireNonNullElse(line.seconds(), 0));
    }

    String length(double length) {
        return Dates.number(length) + " " + lengthUnit;
    }

    /** Share of what, and how much is held back. */
    String effort(Line line) {
        Double from = line.percentFrom();
        String share = from == null ? "" : share(from, line.percentTo()) + " of " + best(line);
        String reserve = line.inReserve() == null || line.inReserve() == 0 ? "" : line.inReserve() + " in reserve";
        return share.isEmpty() || reserve.isEmpty() ? share + reserve : share + ", " + reserve;
    }

    private static String share(double from, @Nullable Double to) {
        if (to == null) {
            return Dates.number(from) + " % or more";
        }
        return to == from ? Dates.number(from) + " %" : Dates.number(from) + "–" + Dates.number(to) + " %";
    }

    private static String best(Line line) {
        return switch (line.kind()) {
            case LIFT -> "maximum";
            case RUN -> line.seconds() != null ? "aerobic speed" : "top speed";
            default -> "best speed";
        };
    }

    /** E.g. {@code rest 1 min, 3 min between sets}. */
    static String rest(Line line) {
        Integer rest = line.restSeconds();
        Integer sets = line.sets() > 1 ? line.setRestSeconds() : null;
        String each = rest == null || rest == 0 ? "" : "rest " + span(rest);
        return sets == null ? each : each + (each.isEmpty() ? "rest " : ", ") + span(sets) + " between sets";
    }

    /** Seconds as a coach says them: {@code 45 s}, {@code 2 min}, {@code 2 min 30 s}. */
    static String span(int seconds) {
        if (seconds < 60) {
            return seconds + " s";
        }
        return seconds / 60 + " min" + (seconds % 60 == 0 ? "" : " " + seconds % 60 + " s");
    }

    /** What ends the work, and metres or contacts in all. */
    List<String> rules(Plan plan) {
        List<String> rules = new ArrayList<>(plan.lines().stream()
                .map(Line::stopPercent)
                .filter(Objects::nonNull)
                .distinct()
                .map(percent -> "Stop after two runs in a row more than " + Dates.number(percent)
                        + " % slower than the day's best.")
                .toList());
        if (plan.fastLength() > 0) {
            rules.add(length(plan.fastLength()) + " fast in all.");
        }
        if (plan.contacts() > 0) {
            rules.add(plan.contacts() + " contacts in all.");
        }
        return rules;
    }

    /** Heading of a line's numbers. */
    String column(Line line) {
        String distance = line.length() == null && line.seconds() == null ? "" : distance(line);
        return switch (line.kind()) {
            case SPRINT -> distance + (line.start() == SprintStart.FLYING ? " flying" : "");
            case RUN -> "a run of " + distance;
            default -> line.label();
        };
    }

    /** A target in a cell. */
    String target(Target target) {
        return switch (target.kind()) {
            case NONE -> "";
            case SECONDS -> seconds(target);
            case WEIGHT -> range(target) + " " + weightUnit;
            case LENGTH -> range(target) + " " + lengthUnit;
            case WORDS -> Objects.requireNonNullElse(target.words(), "");
        };
    }

    private static String seconds(Target target) {
        Double from = target.from();
        String slowest = hundredths(Objects.requireNonNull(target.to()));
        if (from != null) {
            return hundredths(from) + "–" + slowest + " s";
        }
        return "≤ " + slowest + " s" + (target.limit() == null ? "" : NOT_OVER + hundredths(target.limit()) + ")");
    }

    private static String hundredths(double seconds) {
        return String.format(Locale.ROOT, "%.2f", seconds);
    }

    private static String range(Target target) {
        double from = Objects.requireNonNull(target.from());
        double to = Objects.requireNonNull(target.to());
        return from == to ? Dates.exact(to) : Dates.exact(from) + "–" + Dates.exact(to);
    }

    /** The weights of the warm-up sets in order, each once: {@code 20 · 60 · 85}. */
    static String warmUpSets(List<Target> targets) {
        return String.join(
                " · ",
                targets.stream()
                        .map(target -> Dates.exact(Objects.requireNonNull(target.to())))
                        .distinct()
                        .toList());
    }

    /** Whom a plan is for. */
    static String level(Level level) {
        return switch (level) {
            case NOVICE -> "Novices";
            case TRAINED -> "Trained";
            case ADVANCED -> "Advanced";
        };
    }
}
