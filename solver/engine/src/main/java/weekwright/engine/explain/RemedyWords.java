package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.plan.Remedy;
import weekwright.model.rulebook.Rulebook;

/** Remedies in a coach's words: what to do, and what it costs. */
final class RemedyWords {
    private static final int MOST_BLOCKERS = 3;
    private static final String IT = "it";

    private final Problem problem;
    private final Judge judge;

    RemedyWords(Problem problem, Judge judge) {
        this.problem = problem;
        this.judge = judge;
    }

    Remedy remedy(Found found) {
        return new Remedy(steps(found.way()), found.change().totals(), found.adds(), found.free(), text(found));
    }

    /** The steps of a way, each a sentence without its stop. */
    List<String> steps(Way way) {
        List<String> steps = new ArrayList<>();
        if (way.dropped() != null) {
            return List.of(dropped(way.dropped()));
        }
        if (way.longer() != null) {
            steps.add(way.longer().said(problem));
        }
        Session session = Objects.requireNonNull(way.session());
        String name = name(session);
        if (Pins.inTheWay(problem.calendar, session, judge.at(session), way.to())) {
            steps.add("Unpin " + name);
        }
        String does = does(session, way.to(), name);
        if (!does.isEmpty()) {
            steps.add(does);
        }
        return steps;
    }

    private String text(Found found) {
        List<String> parts = new ArrayList<>();
        Session session = found.way().session();
        for (String step : steps(found.way())) {
            boolean named = session != null && parts.stream().anyMatch(part -> part.contains(name(session)));
            String shown = named ? step.replace(name(Objects.requireNonNull(session)), IT) : step;
            parts.add(parts.isEmpty() ? shown : lower(shown));
        }
        String price = "; " + Prices.said(found.change());
        List<String> titles = found.adds().stream().map(RemedyWords::title).toList();
        String adds = titles.isEmpty() ? "" : "; newly broken: " + String.join(", ", titles);
        return String.join(found.way().longer() == null ? " and " : ", and ", parts) + price + adds + ".";
    }

    private static String lower(String step) {
        return step.substring(0, 1).toLowerCase(Locale.ROOT) + step.substring(1);
    }

    private static String title(String rule) {
        return Rulebook.builtIn().rule(rule).title();
    }

    private String dropped(AimInfo aim) {
        long placed = problem.sessions.stream()
                .filter(session -> session.aim == aim && judge.at(session) != null)
                .count();
        return "Drop the aim of " + aim.family.family.label() + " for " + aim.group.group.label()
                + (placed == 0 ? "" : ", and with it " + Names.count((int) placed, "session"));
    }

    /** A session with its time, and its group where there are several. */
    private String name(Session session) {
        Stimulus now = judge.at(session);
        String group = problem.groups.size() < 2 ? "" : " of " + session.group.group.label();
        String when = now == null ? "" : " (" + moment(now) + ")";
        return session.family.family.label() + group + when;
    }

    private String moment(Stimulus at) {
        return Names.moment(problem.calendar.moment(at.start));
    }

    /** What a session does; nothing where it stays. */
    private String does(Session session, @Nullable Stimulus to, String name) {
        Stimulus now = judge.at(session);
        if (to == null) {
            return name.equals(IT) ? "Leave it out" : "Leave out " + name;
        }
        if (now == null) {
            return "Place " + name + " on " + moment(to) + at(to) + dose(session, to) + lead(to);
        }
        boolean elsewhere = to.facility != now.facility;
        String place = !elsewhere ? "" : to.facility < 0 ? ", nowhere in particular" : at(to);
        String dose = to.dose == now.dose ? "" : ", in a " + to.dose.id() + " dose";
        if (to.start != now.start) {
            return "Move " + name + " to " + moment(to) + place + dose + lead(to);
        }
        if (elsewhere) {
            return "Hold " + name + place.substring(1) + dose + lead(to);
        }
        return dose.isEmpty() ? sameTime(session, to, name) : "Do " + name + dose.substring(1) + lead(to);
    }

    private String sameTime(Session session, Stimulus to, String name) {
        if (to.variant >= 0) {
            String lift = session.family.family.variants().get(to.variant).label();
            return "Take " + lift + " for " + name;
        }
        return to.lead < 0 ? "" : "Let " + problem.staff.get(to.lead).member.name() + " lead " + name;
    }

    private String at(Stimulus to) {
        return to.facility < 0
                ? ""
                : ", at " + problem.facilities.get(to.facility).facility.label();
    }

    private static String dose(Session session, Stimulus to) {
        boolean fullest = session.aim == null || session.aim.fullest == to.dose;
        return fullest ? "" : ", in a " + to.dose.id() + " dose";
    }

    private String lead(Stimulus to) {
        return to.lead < 0
                ? ""
                : ", led by " + problem.staff.get(to.lead).member.name();
    }

    /** Why there is no remedy: what stood in the way. */
    String why(Sought sought) {
        if (sought.tried == 0) {
            return sought.untried > 0
                    ? "No remedy was looked for: the " + grouped(RemedySearch.MOST_WAYS)
                            + " ways that are tried for a plan went to dearer findings."
                    : "There is no session that could be moved for it.";
        }
        String rest = sought.untried == 0
                ? ""
                : " " + Names.count(sought.untried, "more session") + " could not be tried within the "
                        + grouped(RemedySearch.MOST_WAYS) + " ways of a plan.";
        return tried(sought) + rest;
    }

    private static String tried(Sought sought) {
        String all = sought.tried == 1 ? "the only way tried" : "the " + grouped(sought.tried) + " ways tried";
        if (sought.clearing == 0) {
            return sought.tried == 1 ? "The only way tried does not clear it." : "None of " + all + " clears it.";
        }
        String breaks = sought.blockers.isEmpty() ? "" : "breaks something else that must hold";
        String leaves = sought.dearer == 0 ? "" : "leaves more undone that is owed";
        String but = breaks + (breaks.isEmpty() || leaves.isEmpty() ? "" : " or ") + leaves;
        String head = sought.tried == 1
                ? "The only way tried would clear it, but "
                : (sought.clearing == sought.tried
                                ? "All " + all.substring(4)
                                : grouped(sought.clearing) + " of " + all)
                        + " would clear it, but " + (sought.clearing == 1 ? "that " : "each ");
        return head + but + "." + inTheWay(sought.blockers);
    }

    private static String inTheWay(Map<String, Integer> blockers) {
        if (blockers.isEmpty()) {
            return "";
        }
        List<String> words = blockers.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_BLOCKERS)
                .map(entry -> title(entry.getKey()) + " (" + grouped(entry.getValue()) + ")")
                .toList();
        return " What stands in the way: " + String.join("; ", words) + ".";
    }

    private static String grouped(int number) {
        return String.format(Locale.ROOT, "%,d", number);
    }
}
