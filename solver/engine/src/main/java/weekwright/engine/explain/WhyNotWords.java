package weekwright.engine.explain;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.WhyNots.Tried;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.scenario.Dose;

/** Says of one session in words what its other times, places and doses would do. */
final class WhyNotWords {
    private static final int MOST_REASONS = 2;

    private final Problem problem;
    private final Judge judge;
    private final WhatIf whatIf;
    private final List<Fact> standing;
    private final Session session;
    private final Names names;
    private final Wording wording;

    /**
     * Words about a session of a judged plan.
     *
     * @param standing all that is told of the plan as it is
     */
    WhyNotWords(Problem problem, Judge judge, WhatIf whatIf, List<Fact> standing, Session session) {
        this.problem = problem;
        this.judge = judge;
        this.whatIf = whatIf;
        this.standing = standing;
        this.session = session;
        names = new Names(problem);
        wording = new Wording(problem);
    }

    /** What an option would do, in a sentence or two. */
    String said(Tried one) {
        if (one.at() == judge.at(session)) {
            return "It lies here now.";
        }
        String price = one.effect().possible() ? Prices.said(one.change()) : "not possible";
        String because = because(one);
        return Character.toUpperCase(price.charAt(0)) + price.substring(1) + (because.isEmpty() ? "." : ". " + because);
    }

    /**
     * What there is to say of a day.
     *
     * @param tried all the options that it has
     * @param possible those of them that are possible
     * @param best the best of these, or null where there is none
     */
    String day(int day, List<Tried> tried, List<Tried> possible, @Nullable Tried best) {
        String said = best == null ? impossible(tried) : said(possible, best);
        return names.day(day) + MatchDays.inBrackets(session.group, day) + ": " + said;
    }

    private String impossible(List<Tried> tried) {
        return tried.stream()
                .min(Comparator.comparingInt(Tried::musts).thenComparing(Tried::change, Cost::compareLevels))
                .map(nearest -> "not possible; at " + names.time(nearest.at()) + ", which comes nearest: "
                        + reasons(nearest, 1))
                .orElseGet(() -> session.group.group.label() + " has no free hours that are long enough.");
    }

    /** Those that break nothing that must hold. */
    static List<Tried> possible(List<Tried> some) {
        return some.stream().filter(one -> one.effect().possible()).toList();
    }

    /** What costs least; of equals where it stands, then what resembles that, then the earliest. */
    Tried best(List<Tried> some) {
        Stimulus now = judge.at(session);
        return some.stream()
                .min(Comparator.comparing((Tried one) -> one.change(), Cost::compareLevels)
                        .thenComparing(one -> one.at() != now)
                        .thenComparing(one -> now != null && one.at().day != now.day)
                        .thenComparing(one -> now != null && one.at().dose != now.dose)
                        .thenComparing(one -> now != null && one.at().facility != now.facility)
                        .thenComparing(one -> one.at().dose)
                        .thenComparing(one -> one.at().start))
                .orElseThrow();
    }

    private String said(List<Tried> possible, Tried best) {
        Stimulus now = judge.at(session);
        boolean here = now != null && possible.get(0).at().day == now.day;
        if (here && best.at() == now) {
            return "it lies here now, at " + names.time(now) + "; nothing else on this day is better.";
        }
        String because = because(best);
        return when(possible, best, here) + ", " + Prices.said(best.change())
                + (because.isEmpty() ? "." : ": " + because);
    }

    private String when(List<Tried> possible, Tried best, boolean here) {
        String where = where(best.at());
        if (here) {
            return "it lies here now, at " + names.time(Objects.requireNonNull(judge.at(session))) + "; best at "
                    + where;
        }
        List<Integer> starts = starts(possible);
        return starts.size() == 1
                ? "can only start at " + where
                : "can start " + new StartTimes(problem).said(starts) + "; best at " + where;
    }

    private static List<Integer> starts(List<Tried> some) {
        return some.stream().map(one -> one.at().start).distinct().sorted().toList();
    }

    /** The time, with place and dose where these are not what goes without saying. */
    private String where(Stimulus at) {
        Stimulus now = judge.at(session);
        boolean samePlace = now != null && now.facility == at.facility;
        String place = samePlace || at.facility < 0
                ? ""
                : ", " + problem.facilities.get(at.facility).facility.label();
        boolean sameDose = now != null && now.dose == at.dose;
        return names.time(at) + place + (sameDose || at.dose == fullest() ? "" : ", " + at.dose.id() + " dose");
    }

    private Dose fullest() {
        return session.aim == null ? Dose.FULL : session.aim.fullest;
    }

    /** What there is to say of it in all, of all the options that were tried. */
    String text(List<Tried> all) {
        Stimulus now = judge.at(session);
        String what = session.family.family.label() + " of " + session.group.group.label();
        String stands = now == null
                ? what + " is left out in " + names.week(7 * session.week) + "."
                : what + " lies on " + Names.moment(problem.calendar.moment(now.start)) + "."
                        + (session.pin.isNone() ? "" : " It is pinned; the answer looks past the pin.");
        List<Tried> possible =
                possible(all).stream().filter(one -> one.at() != now).toList();
        if (possible.isEmpty()) {
            boolean others = all.stream().anyMatch(one -> one.at() != now);
            return stands
                    + (others
                            ? " Everything else breaks something that must hold."
                            : " There is no other start for it.");
        }
        Tried best = best(possible);
        boolean better = best.change().compareLevels(new Cost()) < 0;
        String day = names.day(best.at().day) + " " + where(best.at());
        return stands
                + (better ? " Better would be " : now == null ? " The best that it could have: " : " Best elsewhere: ")
                + day + ", " + Prices.said(best.change()) + ".";
    }

    /** Why it costs more, or what makes it better; empty where nothing changes. */
    private String because(Tried one) {
        boolean better = one.change().compareLevels(new Cost()) < 0;
        return better ? sentences(standing, one.effect().gains(), MOST_REASONS) : reasons(one, MOST_REASONS);
    }

    /** The gravest reasons why an option is dearer, in sentences; empty where nothing is. */
    String reasons(Tried one, int most) {
        List<Broken> reasons = one.effect().reasons();
        return reasons.isEmpty() ? "" : sentences(whatIf.facts(session, one.at()), reasons, most);
    }

    private String sentences(List<Fact> facts, List<Broken> some, int most) {
        return String.join(
                " ",
                some.stream()
                        .limit(most)
                        .map(broken -> wording.text(fact(facts, broken.key())))
                        .toList());
    }

    private static Fact fact(List<Fact> facts, Key key) {
        return facts.stream().filter(fact -> fact.key().equals(key)).findFirst().orElseThrow();
    }
}
