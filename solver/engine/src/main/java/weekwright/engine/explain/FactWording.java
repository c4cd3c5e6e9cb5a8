package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Absence;
import weekwright.model.load.LoadRatio;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleNumber;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Measure;

/** What is said of facts, and of the rules of colleges and of the young: each with its source where it has one. */
final class FactWording {
    /** The form in which a pack misses days off. */
    static final int DAYS_OFF = 1;

    private static final int HOURS_OF_DAY = 2;
    private static final int WEEKS_UP_TO = 100;
    private static final int ALL_ALIKE = 1;
    private static final int SPREAD_UP_TO = 2;
    private static final int LOWEST_RATIO = 10_000;
    private static final int NAMED = 5;

    private final Problem problem;
    private final Names names;

    FactWording(Problem problem) {
        this.problem = problem;
        names = new Names(problem);
    }

    /** The sentence of a finding, or null where the rule is another's. */
    @Nullable
    String sentence(Fact fact) {
        return switch (fact.rule().id()) {
            case "week-load" -> weekLoad(fact);
            case "load-spread" -> loadSpread(fact);
            case "load-ratio" -> loadRatio(fact);
            case "marks-old" -> marksOld(fact);
            case "fixtures-close" -> fixturesClose(fact);
            case "rest-between-fixtures" -> restBetweenFixtures(fact);
            case "softened" -> softened(fact);
            case "sits-out" -> names.thing(fact.things().get(0)) + " goes on without " + whom(fact) + reason(fact);
            case "college-in-season", "college-out-of-season", "youth" ->
                pack(fact) + source(rule(fact).source());
            default -> null;
        };
    }

    private String weekLoad(Fact fact) {
        int weeks = fact.detail() % WEEKS_UP_TO;
        boolean rises = fact.measured() > 0;
        boolean fixture = false;
        for (int day = fact.firstDay(); day <= fact.lastDay(); day++) {
            fixture |= fact.group().fixtureOn(day);
        }
        String percent = Names.number(Math.abs(fact.measured()) / 10.0);
        String against = weeks == 1 ? "the last week" : "the mean of the last " + weeks + " weeks";
        String limit = Names.number(Math.abs(fact.limit()) / 10.0);
        boolean asked = rises && fact.limit() / 10.0 == number(fact, "askedPercent");
        return "The load of " + group(fact) + " in " + names.week(fact.firstDay()) + " is "
                + (fact.detail() >= WEEKS_UP_TO ? "up to " : "") + percent + " % " + (rises ? "above" : "below") + " "
                + against + (fixture ? " with" : " without") + " a fixture; "
                + (asked
                        ? "a rise of more than " + limit + " % should have a reason."
                        : "a change of more than " + limit + " % is worth knowing.");
    }

    private String loadSpread(Fact fact) {
        if (fact.detail() == ALL_ALIKE) {
            return group(fact) + " has the same load on every day of " + names.week(fact.firstDay())
                    + ": its monotony cannot be worked out.";
        }
        return "The days of " + group(fact) + " in " + names.week(fact.firstDay()) + " are much alike: monotony "
                + (fact.detail() == SPREAD_UP_TO ? "up to " : "") + hundredths(fact.measured())
                + " (mean of a day's load ÷ their standard deviation, that of a sample); more than "
                + Names.number(fact.limit() / 100.0) + " is often called high.";
    }

    private String loadRatio(Fact fact) {
        int lowest = fact.detail() / LOWEST_RATIO;
        int highest = fact.detail() % LOWEST_RATIO;
        String ratio =
                lowest == highest ? hundredths(highest) : "from " + hundredths(lowest) + " to " + hundredths(highest);
        return "By " + names.day(fact.lastDay()) + " the mean daily load of " + group(fact) + " over "
                + Names.number(number(fact, "shortDays")) + " days is " + ratio + " times that over "
                + Names.number(number(fact, "longDays")) + " days. " + LoadRatio.CAVEAT + " Against it: "
                + String.join(" ", LoadRatio.CRITIQUES);
    }

    private String marksOld(Fact fact) {
        List<String> needed = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if ((fact.detail() >> measure.ordinal() & 1) != 0) {
                needed.add(
                        switch (measure) {
                            case SPRINT -> "a sprint time";
                            case LIFT -> "a lift";
                            case AEROBIC_SPEED -> "an aerobic speed";
                        });
            }
        }
        List<String> lacking = Athletes.names(problem, fact.athletes());
        List<String> named = few(lacking);
        boolean one = lacking.size() == 1;
        String lack = needed.size() > 1 ? (one ? " lacks one." : " lack one.") : (one ? " has none." : " have none.");
        return names.thing(fact.things().get(0)) + " needs " + Names.list(needed) + " of the last "
                + Names.count((int) number(fact, "days"), "day") + "; " + Names.list(named) + lack;
    }

    /** Those who sit out by name, and how many more there are. */
    private String whom(Fact fact) {
        List<String> named = few(Athletes.names(problem, fact.athletes()));
        int more = fact.heads() - fact.athletes().size();
        if (more > 0) {
            named.add(more + (named.isEmpty() ? " of " : " more of ") + group(fact));
        }
        return Names.list(named);
    }

    private String reason(Fact fact) {
        boolean one = fact.heads() == 1;
        if (fact.detail() <= 0) {
            return fact.detail() == 0 ? ", by a clinician's word." : ", who have other things to do.";
        }
        return switch (Absence.Why.values()[fact.detail() - 1]) {
            case OWN_TIMES -> ", who cannot come at that time.";
            case ANOTHER_THING -> ", for whom " + first(fact) + ".";
            case VISITS -> ": it would be one visit too many on that day.";
            case HIGH_DAYS_RUNNING -> ": it would be one high day too many in a row.";
            case HIGH_DAYS -> ": it would be one high day too many in that week.";
            case FREE_DAY -> ": it would take " + (one ? "the" : "their") + " free day from that week.";
            case HARD_WORK -> ": the hard work of another day lies too near.";
        };
    }

    /** That something comes first, or a group with something. */
    private String first(Fact fact) {
        Stimulus first = fact.things().get(1);
        boolean others = first.group >= 0 && first.group != fact.group().index;
        String comesFirst = " comes first";
        return others
                ? problem.groups.get(first.group).group.label() + comesFirst + ": " + names.thing(first)
                : names.thing(first) + comesFirst;
    }

    /** Some of many names, and how many more there are. */
    private static List<String> few(List<String> all) {
        List<String> named = new ArrayList<>(all.size() <= NAMED + 1 ? all : all.subList(0, NAMED));
        if (named.size() < all.size()) {
            named.add(all.size() - named.size() + " more");
        }
        return named;
    }

    private String fixturesClose(Fact fact) {
        boolean very = fact.detail() != 0;
        return apart(fact)
                + (very
                        ? "; under " + Names.hours(fact.limit()) + " is very close."
                        : "; under " + Names.hours(fact.limit()) + " is close.")
                + source(fact, very ? "veryCloseHours" : "closeHours");
    }

    private String restBetweenFixtures(Fact fact) {
        boolean must = fact.detail() != 0;
        return apart(fact) + "; " + Names.hours(fact.limit()) + (must ? " are asked for." : " are preferred.")
                + source(fact, must ? "hours" : "preferredHours");
    }

    private String apart(Fact fact) {
        return names.label(fact.things().get(1)) + " starts " + Names.hours(fact.measured()) + " after "
                + names.label(fact.things().get(0)) + " ends";
    }

    private static String softened(Fact fact) {
        List<String> titles = fact.group().settings.softened().stream()
                .map(id -> Rulebook.builtIn().rule(id).title())
                .toList();
        return "Changed from the usual for " + group(fact) + ": " + Names.list(titles) + ".";
    }

    private String pack(Fact fact) {
        String week = names.week(fact.firstDay());
        if (fact.detail() == DAYS_OFF) {
            String days = fact.measured() == 0 ? "no day off" : Names.count(fact.measured(), "day") + " off";
            return group(fact) + " has " + days + " in " + week + "; " + fact.limit()
                    + (fact.limit() == 1 ? " is" : " are") + " asked for.";
        }
        boolean day = fact.detail() == HOURS_OF_DAY;
        String when = day ? "on " + names.day(fact.firstDay()) : "in " + week;
        boolean youth = fact.rule().id().equals("youth");
        return group(fact) + " has " + Names.hours(fact.measured()) + " of training and competition " + when
                + "; at most " + Names.hours(fact.limit()) + (day ? " a day" : " a week") + " are allowed"
                + (youth ? " by the age of the youngest." : ".");
    }

    /** The source of a number of the rule, unless the coach has set another. */
    private static String source(Fact fact, String number) {
        RuleNumber of = rule(fact).number(number).orElseThrow();
        Double usual = of.usual();
        return usual != null && usual == number(fact, number) ? source(of.source()) : "";
    }

    private static String source(String source) {
        return " Source: " + source + ".";
    }

    private static Rule rule(Fact fact) {
        return Rulebook.builtIn().rule(fact.rule().id());
    }

    private static double number(Fact fact, String name) {
        return fact.group().settings.number(fact.rule().id(), name);
    }

    private static String hundredths(int value) {
        return String.format(Locale.ROOT, "%.2f", value / 100.0);
    }

    private static String group(Fact fact) {
        return fact.group().group.label();
    }
}
