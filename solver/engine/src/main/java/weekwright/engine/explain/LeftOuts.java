package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.MissingSession;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Dose;

/** Sessions that are wanted and not placed: every option of each is tried, and what stands in the way is counted. */
final class LeftOuts {
    /** Stands between what is missing and what is said of it. */
    static final String LEFT_OUT = " is left out";

    private final Problem problem;
    private final Judge judge;
    private final WhatIf whatIf;
    private final Names names;
    private final GroupNames groups;

    LeftOuts(WhatIf whatIf) {
        this.whatIf = whatIf;
        problem = whatIf.problem;
        judge = whatIf.judge;
        names = new Names(problem);
        groups = new GroupNames(problem);
    }

    List<LeftOut> all() {
        List<LeftOut> all = new ArrayList<>();
        for (AimInfo aim : problem.aims) {
            for (int week = 0; week < problem.calendar.weeks(); week++) {
                addMissing(aim, week, all);
            }
        }
        return all;
    }

    private void addMissing(AimInfo aim, int week, List<LeftOut> all) {
        List<Session> sessions = aim.sessions.get(week);
        int counted = aim.commitments[week];
        int forLeast = counted;
        for (Session session : sessions) {
            Stimulus at = judge.at(session);
            boolean counts = at != null && (aim.aim.microCounts() || at.dose != Dose.MICRO);
            counted += at == null ? 0 : 1;
            forLeast += counts ? 1 : 0;
        }
        int owed = Math.max(0, aim.least(week) - forLeast);
        int wanted = Math.max(owed, aim.target(week) - counted);
        int told = 0;
        Survey survey = null;
        for (Session session : sessions) {
            boolean missing = judge.at(session) == null && (told < wanted || !session.pin.isNone());
            if (missing) {
                // The sessions of an aim's week are alike: what holds of one that is missing holds of all.
                survey = survey == null ? survey(session) : survey;
                all.add(leftOut(session, survey, told < owed));
                told++;
            }
        }
    }

    private LeftOut leftOut(Session session, Survey survey, boolean owed) {
        AimInfo aim = java.util.Objects.requireNonNull(session.aim);
        MissingSession missing = MissingSession.of(aim, owed);
        Pin pin = session.pin.isNone() ? null : outAndDays(session.pin);
        return new LeftOut(
                session.id,
                owed ? "least" : "target",
                missing.level(),
                missing.cost(),
                pin,
                survey.options,
                survey.blockers(),
                survey.cheapest,
                groups.named(session.group, text(session, survey)));
    }

    /** Of a session that lies nowhere only that it is out, and the days barred, can be held. */
    private static Pin outAndDays(Pin pin) {
        return new Pin(false, false, false, false, false, false, pin.out(), pin.notDays());
    }

    /** What was found on trying every option of a session. */
    private static final class Survey {
        final Map<String, int[]> byRule = new LinkedHashMap<>();
        int options;
        int free;

        @Nullable
        CheapestOption cheapest;

        @Nullable
        Cost change;

        List<Blocker> blockers() {
            return byRule.entrySet().stream()
                    .map(entry -> new Blocker(entry.getKey(), entry.getValue()[0], entry.getValue()[1]))
                    .sorted(Comparator.comparingInt((Blocker blocker) -> -blocker.options())
                            .thenComparing(Blocker::rule))
                    .toList();
        }
    }

    private Survey survey(Session session) {
        Survey survey = new Survey();
        for (Stimulus option : problem.thinkable(session)) {
            survey.options++;
            Effect effect = whatIf.of(session, option);
            List<String> musts = effect.mustsBroken();
            musts.forEach(rule -> {
                int[] counts = survey.byRule.computeIfAbsent(rule, id -> new int[2]);
                counts[0]++;
                counts[1] += musts.size() == 1 ? 1 : 0;
            });
            survey.free += musts.isEmpty() ? 1 : 0;
            if (survey.change == null || effect.change().compareLevels(survey.change) < 0) {
                survey.change = effect.change();
                survey.cheapest = cheapest(option, effect.change());
            }
        }
        return survey;
    }

    private CheapestOption cheapest(Stimulus option, Cost change) {
        String facility = option.facility < 0
                ? null
                : problem.facilities.get(option.facility).facility.id();
        return new CheapestOption(problem.calendar.moment(option.start), facility, option.dose, change.totals());
    }

    private String text(Session session, Survey survey) {
        String what = session.family.family.label() + " in " + names.week(7 * session.week) + LEFT_OUT;
        if (session.pin.out()) {
            return what + " on purpose.";
        }
        if (survey.options == 0) {
            boolean anywhere = session.family.family.facility().isEmpty();
            return what + ": " + session.group.group.label() + " has no free time that is long enough for it"
                    + (anywhere ? "." : " with a place of the kind it needs.");
        }
        String options = Names.count(survey.options, "option");
        if (survey.free == 0) {
            return what + ": " + (survey.options == 1 ? "its only option" : "each of " + options)
                    + " breaks something that must hold. What stands in the way: " + blockers(survey) + ".";
        }
        boolean worthIt = survey.change != null && survey.change.compareLevels(new Cost()) < 0;
        return what + ": " + survey.free + " of " + options + (survey.free == 1 ? " breaks" : " break")
                + " nothing that must hold; "
                + (worthIt
                        ? "the best, " + best(survey) + ", would make the plan better."
                        : "but even the best, " + best(survey) + ", brings no more than it costs.");
    }

    /** Why no way to place a session will do, the rest of the plan staying; null where one would. */
    @Nullable
    String inTheWay(Session session) {
        Survey survey = survey(session);
        if (survey.options == 0) {
            return session.group.group.label() + " has no free time that is long enough for it";
        }
        if (survey.free > 0) {
            return null;
        }
        List<String> most = survey.blockers().stream()
                .limit(3)
                .map(blocker -> "\"" + title(blocker) + "\" (" + blocker.options() + ")")
                .toList();
        return (survey.options == 1 ? "the only way" : "each of " + survey.options + " ways")
                + " to place it breaks something that must hold: " + String.join(", ", most);
    }

    private static String title(Blocker blocker) {
        return Rulebook.builtIn().rule(blocker.rule()).title();
    }

    private static String best(Survey survey) {
        CheapestOption best = java.util.Objects.requireNonNull(survey.cheapest);
        return Names.moment(best.start());
    }

    private static String blockers(Survey survey) {
        List<String> words = survey.blockers().stream()
                .limit(3)
                .map(blocker -> title(blocker) + " (" + blocker.options()
                        + (blocker.alone() > 0 ? ", " + blocker.alone() + " by this alone" : "") + ")")
                .toList();
        return String.join("; ", words);
    }
}
