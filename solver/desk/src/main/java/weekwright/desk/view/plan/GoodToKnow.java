package weekwright.desk.view.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.model.load.LoadRatio;
import weekwright.model.plan.Finding;

/** Puts facts that say the same of several weeks, groups or sessions into one line each, so that they stay few. */
final class GoodToKnow {
    /** It has a place of its own on the page. */
    private static final String CHANGED = "softened";

    private static final List<String> ABOUT_LOAD = List.of("week-load", "load-spread", "load-ratio");
    /** A session with its day and time at the start of a sentence. */
    private static final Pattern SESSION = Pattern.compile("^(.*?\\([A-Z][^()]*\\d\\d:\\d\\d\\)) (.*)$");

    private static final Pattern STOP = Pattern.compile("[;:.] |\\.$");

    private static final int MOST_FIGURES = 7;
    private static final int MOST_CLAUSES = 3;

    private final Names names;
    private final boolean severalGroups;
    private final boolean severalWeeks;

    GoodToKnow(Names names, List<Finding> told) {
        this.names = names;
        severalGroups = told.stream().map(Finding::groups).distinct().count() > 1;
        severalWeeks = told.stream()
                        .filter(finding -> ABOUT_LOAD.contains(finding.rule()))
                        .map(Finding::week)
                        .distinct()
                        .count()
                > 1;
    }

    /** One text for all facts that are alike, in the order in which the first of each stands. */
    List<String> lines(List<Finding> told) {
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        told.stream()
                .filter(finding -> !finding.rule().equals(CHANGED))
                .forEach(finding -> alike.computeIfAbsent(kind(finding), kind -> new ArrayList<>())
                        .add(finding));
        return alike.values().stream().map(this::line).toList();
    }

    private static String kind(Finding finding) {
        Matcher session = SESSION.matcher(text(finding));
        boolean ofSession = finding.placements().size() == 1 && session.matches();
        String what = ofSession ? session.group(2) : ABOUT_LOAD.contains(finding.rule()) ? "" : "" + finding.limit();
        return finding.rule() + " " + what;
    }

    private static String text(Finding finding) {
        return finding.text().isBlank() ? finding.title() : finding.text();
    }

    private String line(List<Finding> alike) {
        String first = text(alike.get(0));
        if (alike.size() == 1) {
            return first;
        }
        boolean load = ABOUT_LOAD.contains(alike.get(0).rule());
        List<String> others = alike.stream()
                .skip(1)
                .map(other -> load
                        ? figure(other)
                        : clause(other, other.groups().equals(alike.get(0).groups())))
                .toList();
        String also = load
                ? "Also " + and(few(others, MOST_FIGURES)) + "."
                : "Also: " + String.join("; ", few(others, MOST_CLAUSES)) + ".";
        int caveat = first.indexOf(LoadRatio.CAVEAT);
        return caveat < 0 ? first + " " + also : first.substring(0, caveat) + also + " " + first.substring(caveat);
    }

    private static String and(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** Some of many, and how many more there are. */
    private static List<String> few(List<String> words, int most) {
        int shown = words.size() <= most + 1 ? words.size() : most;
        List<String> some = new ArrayList<>(words.subList(0, shown));
        if (shown < words.size()) {
            some.add(words.size() - shown + " more");
        }
        return some;
    }

    /** Whom and when it is about, and how much: {@code Under 15 from Mon 8 Feb +12.5 %}. */
    private String figure(Finding finding) {
        List<String> words = new ArrayList<>();
        if (severalGroups) {
            finding.groups().forEach(group -> words.add(names.group(group)));
        }
        LocalDate week = finding.week();
        if (severalWeeks && week != null) {
            words.add("from " + Dates.day(week));
        }
        words.add(amount(finding));
        return String.join(" ", words);
    }

    private static String amount(Finding finding) {
        double value = finding.measured();
        return finding.unit().equals("%")
                ? (value < 0 ? "−" : "+") + Dates.number(Math.abs(value)) + " %"
                : String.format(Locale.ROOT, "%.2f", value);
    }

    /** What another fact says, without what is wanted: its session, or the words before the first stop. */
    private String clause(Finding finding, boolean sameGroup) {
        String group = sameGroup && !finding.groups().isEmpty()
                ? names.group(finding.groups().get(0)) + ": "
                : "";
        String whole = text(finding);
        String text = whole.startsWith(group) ? whole.substring(group.length()) : whole;
        Matcher session = SESSION.matcher(text);
        if (finding.placements().size() == 1 && session.matches()) {
            return session.group(1);
        }
        Matcher end = STOP.matcher(text);
        return end.find() ? text.substring(0, end.start()) : text;
    }
}
