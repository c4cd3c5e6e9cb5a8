package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.answer.Change;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;

/** What is said of two plans that are held side by side. */
final class ComparisonWording {
    /** Tenths in one. */
    private static final double ONE = 10.0;

    /** What happens to one session and to several, in a sentence that has them as its subject. */
    private static final Map<String, List<String>> HAPPENS = inOrder(
            SessionChanges.MOVED, List.of("moves", "move"),
            SessionChanges.PLACED, List.of("changes its place", "change their place"),
            SessionChanges.DOSED, List.of("changes its dose", "change their dose"),
            SessionChanges.LED, List.of("changes its lead", "change their lead"),
            SessionChanges.VARIED, List.of("changes its lift", "change their lift"),
            SessionChanges.ADDED, List.of("is added", "are added"),
            SessionChanges.DROPPED, List.of("is dropped", "are dropped"));

    /** What has happened to sessions, after {@code with 3 sessions}. */
    private static final Map<String, List<String>> HAPPENED = inOrder(
            SessionChanges.MOVED, List.of("moved", "moved"),
            SessionChanges.PLACED, List.of("at another place", "at other places"),
            SessionChanges.DOSED, List.of("in another dose", "in other doses"),
            SessionChanges.LED, List.of("under another lead", "under other leads"),
            SessionChanges.VARIED, List.of("with another lift", "with other lifts"),
            SessionChanges.ADDED, List.of("added", "added"),
            SessionChanges.DROPPED, List.of("dropped", "dropped"));

    private ComparisonWording() {}

    private static Map<String, List<String>> inOrder(Object... pairs) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            List<?> forms = (List<?>) pairs[i + 1];
            words.put((String) pairs[i], forms.stream().map(String.class::cast).toList());
        }
        return words;
    }

    /** Two plans of one scenario. */
    static String of(List<Change> sessions, Totals before, Totals after) {
        List<String> parts = parts(before, after);
        if (sessions.isEmpty() && parts.isEmpty()) {
            return "The two plans are the same.";
        }
        String moved = sessions.isEmpty() ? "No session changes" : counted(sessions, HAPPENS);
        if (parts.isEmpty()) {
            return moved + ", and the plan is as good as before.";
        }
        boolean better = compare(after, before) < 0;
        return moved + ", and the plan is " + (better ? "better" : "worse") + ": " + Names.list(parts) + ".";
    }

    /** A plan before a change of the scenario, by itself after it, and another one after it. */
    static String underChange(List<Change> sessions, List<Finding> broke, Plan before, Plan changed, Plan after) {
        String moved = sessions.isEmpty() ? "with no session changed" : "with " + counted(sessions, HAPPENED);
        String alone = "By itself the change " + breaks(broke, Comparisons.totals(before), Comparisons.totals(changed));
        return alone + "; " + moved + " " + stands(Comparisons.totals(before), Comparisons.totals(after)) + ".";
    }

    private static String breaks(List<Finding> broke, Totals before, Totals changed) {
        List<String> all = new ArrayList<>();
        long musts = broke.stream().filter(f -> f.level() == RuleLevel.MUST).count();
        if (musts > 0) {
            all.add("breaks " + Names.count((int) musts, "thing") + " that must hold");
        }
        adds(all, "key", more(before.key(), changed.key()));
        adds(all, "main", more(before.main(), changed.main()));
        long wishes = more(before.want(), changed.want());
        if (wishes > 0) {
            all.add("adds " + points(wishes) + " of wishes unmet");
        }
        if (all.isEmpty()) {
            return broke.isEmpty() ? "breaks nothing" : "breaks nothing that must hold and costs no more in all";
        }
        return Names.list(all);
    }

    private static void adds(List<String> all, String level, long tenths) {
        if (tenths > 0) {
            all.add("leaves " + Names.number(tenths / ONE) + " more of the " + level + " work undone");
        }
    }

    private static String stands(Totals before, Totals after) {
        List<String> all = new ArrayList<>();
        long musts = Breakage.tenths(after.must()) / 10;
        all.add(
                musts == 0
                        ? "nothing is broken that must hold"
                        : Names.count((int) musts, "thing") + (musts == 1 ? " is" : " are") + " broken that must hold");
        standing(all, "key", before.key(), after.key());
        standing(all, "main", before.main(), after.main());
        long wishes = more(before.want(), after.want());
        all.add(
                wishes == 0
                        ? "as many wishes are unmet as before"
                        : points(Math.abs(wishes)) + (wishes > 0 ? " more" : " fewer")
                                + " of wishes are unmet than before");
        return Names.list(all);
    }

    private static void standing(List<String> all, String level, double before, double after) {
        long more = more(before, after);
        if (more != 0 && after == 0) {
            all.add("no " + level + " work falls short any more");
        } else if (more != 0) {
            all.add(level + " work falls short by " + Names.number(after) + " (" + Names.number(Math.abs(more) / ONE)
                    + (more > 0 ? " more" : " less") + " than before)");
        }
    }

    private static String counted(List<Change> sessions, Map<String, List<String>> words) {
        List<String> all = new ArrayList<>();
        words.forEach((what, forms) -> {
            int count = SessionChanges.count(sessions, what);
            if (count > 0) {
                String who = all.isEmpty() ? Names.count(count, "session") : String.valueOf(count);
                all.add(who + " " + forms.get(count == 1 ? 0 : 1));
            }
        });
        return Names.list(all);
    }

    /** What differs level by level; empty where nothing does. */
    private static List<String> parts(Totals before, Totals after) {
        List<String> parts = new ArrayList<>();
        long musts = more(before.must(), after.must()) / 10;
        if (musts != 0) {
            parts.add(Names.count((int) Math.abs(musts), "thing") + (musts > 0 ? " more" : " fewer")
                    + (Math.abs(musts) == 1 ? " is" : " are") + " broken that must hold");
        }
        shortfall(parts, "key", more(before.key(), after.key()));
        shortfall(parts, "main", more(before.main(), after.main()));
        long wishes = more(before.want(), after.want());
        if (wishes != 0) {
            parts.add(points(Math.abs(wishes)) + (wishes > 0 ? " more" : " fewer") + " of wishes are unmet");
        }
        return parts;
    }

    private static void shortfall(List<String> parts, String level, long tenths) {
        if (tenths != 0) {
            parts.add(level + " work falls short by " + Names.number(Math.abs(tenths) / ONE)
                    + (tenths > 0 ? " more" : " less"));
        }
    }

    private static long more(double before, double after) {
        return Breakage.tenths(after) - Breakage.tenths(before);
    }

    private static int compare(Totals a, Totals b) {
        long[] differences = {more(b.must(), a.must()), more(b.key(), a.key()), more(b.main(), a.main())};
        for (long difference : differences) {
            if (difference != 0) {
                return Long.signum(difference);
            }
        }
        return Long.signum(more(b.want(), a.want()));
    }

    /** How a rule is kept now and was before, in tenths of its level. */
    static String shift(RuleLevel level, long before, long after) {
        return switch (level) {
            case MUST -> must(before / 10, after / 10);
            case KEY, MAIN -> owed(level.id(), before / ONE, after / ONE);
            default -> wish(before, after);
        };
    }

    private static String must(long before, long after) {
        if (after == 0) {
            return "holds now; it was broken " + times(before) + ".";
        }
        return before == 0
                ? "broken " + times(after) + "; it held before."
                : "broken " + times(after) + " instead of " + times(before) + ".";
    }

    private static String times(long count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }

    private static String owed(String level, double before, double after) {
        if (after == 0) {
            return "no " + level + " work falls short any more; it did by " + Names.number(before) + ".";
        }
        return level + " work falls short by " + Names.number(after)
                + (before == 0 ? "; it did not before." : " instead of " + Names.number(before) + ".");
    }

    private static String wish(long before, long after) {
        if (after == 0) {
            return "met now; it cost " + points(before) + ".";
        }
        return before == 0
                ? "costs " + points(after) + "; it was met before."
                : "costs " + points(after) + " instead of " + Names.number(before / ONE) + ".";
    }

    private static String points(long tenths) {
        return Names.number(tenths / ONE) + (tenths == ONE ? " point" : " points");
    }
}
