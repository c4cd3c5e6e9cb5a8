package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.answer.Spot;
import weekwright.model.answer.WhyNot;
import weekwright.model.answer.WhyNotDay;
import weekwright.model.answer.WhyNotOption;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/** Says of one session what every other time, place and dose would do, and day by day why it does not lie there. */
public final class WhyNots {
    private static final int MOST_REASONS = 2;

    private final Problem problem;
    private final Judge judge;
    private final WhatIf whatIf;
    private final Names names;
    private final Wording wording;
    private final List<Fact> standing;

    /** Answers about a plan: each session at its place, by session. */
    public WhyNots(Problem problem, @Nullable Stimulus[] at) {
        this.problem = problem;
        judge = Judge.of(problem, at);
        whatIf = new WhatIf(problem, judge);
        names = new Names(problem);
        wording = new Wording(problem);
        standing = FactSink.all(problem, judge);
    }

    /** An option with what it would do. */
    record Tried(Stimulus at, Effect effect) {
        Cost change() {
            return effect.change();
        }

        int musts() {
            return (int) effect.broken().stream().filter(Broken::must).count();
        }
    }

    /** The change of the totals for every option of a session, and nothing in words: the quick part. */
    public List<Cost> changes(Session session) {
        return problem.thinkable(session).stream()
                .map(option -> whatIf.change(session, option))
                .toList();
    }

    /**
     * Every option of a session with what it would do, and nothing in words: quick enough to be asked for while a coach
     * holds a session in the hand.
     */
    public List<WhyNotOption> weighed(Session session) {
        return tried(session).stream().map(this::weighed).toList();
    }

    private WhyNotOption weighed(Tried one) {
        Effect effect = one.effect();
        return new WhyNotOption(
                problem.calendar.moment(one.at().start),
                place(one.at()),
                one.at().dose,
                effect.possible(),
                one.change().totals(),
                effect.possible() ? effect.breaks() : effect.mustsBroken(),
                effect.clears(),
                null);
    }

    /**
     * What a session would do at a time, place and dose, in words; null where that is none of its options.
     *
     * @param facility id of the place, or null
     */
    public @Nullable String said(Session session, Moment start, @Nullable String facility, Dose dose) {
        return tried(session).stream()
                .filter(one -> one.at().dose == dose
                        && problem.calendar.moment(one.at().start).equals(start)
                        && Objects.equals(place(one.at()), facility))
                .findFirst()
                .map(one -> said(session, one))
                .orElse(null);
    }

    private String said(Session session, Tried one) {
        if (one.at() == judge.at(session)) {
            return "It lies here now.";
        }
        String price = one.effect().possible() ? Prices.said(one.change()) : "not possible";
        String because = one.change().compareLevels(new Cost()) < 0
                ? gains(one, MOST_REASONS)
                : sentences(session, one, MOST_REASONS);
        return Character.toUpperCase(price.charAt(0)) + price.substring(1) + (because.isEmpty() ? "." : ". " + because);
    }

    /** The answer for a session, on all days of its week or on one of them. */
    public WhyNot of(Session session, @Nullable Integer onlyDay) {
        List<Tried> all = tried(session).stream()
                .filter(one -> onlyDay == null || one.at().day == onlyDay)
                .toList();
        int first = 7 * session.week;
        List<WhyNotDay> days = new ArrayList<>();
        for (int day = first; day < first + problem.calendar.daysIn(session.week); day++) {
            if (onlyDay == null || day == onlyDay) {
                days.add(day(session, day, onDay(all, day)));
            }
        }
        Stimulus now = judge.at(session);
        return new WhyNot(
                session.id,
                now == null ? null : spot(now),
                whatIf.before().totals(),
                all.stream().map(one -> option(session, one)).toList(),
                days,
                text(session, all));
    }

    /** Where it stands is one of the options, off the grid or not. */
    List<Tried> tried(Session session) {
        List<Tried> all = new ArrayList<>();
        Stimulus now = judge.at(session);
        boolean met = now == null;
        for (Stimulus option : problem.thinkable(session)) {
            boolean same = now != null && same(now, option);
            met |= same;
            Stimulus at = same ? now : option;
            all.add(new Tried(Objects.requireNonNull(at), whatIf.of(session, at)));
        }
        if (!met && now != null) {
            all.add(new Tried(now, whatIf.of(session, now)));
        }
        all.sort(Comparator.comparingInt((Tried one) -> one.at().start)
                .thenComparing(one -> one.at().facility)
                .thenComparing(one -> one.at().dose));
        return all;
    }

    private static boolean same(Stimulus a, Stimulus b) {
        return a.start == b.start && a.end == b.end && a.facility == b.facility && a.dose == b.dose;
    }

    private static List<Tried> onDay(List<Tried> all, int day) {
        return all.stream().filter(one -> one.at().day == day).toList();
    }

    private Spot spot(Stimulus at) {
        return new Spot(problem.calendar.moment(at.start), place(at), at.dose);
    }

    private @Nullable String place(Stimulus at) {
        return at.facility < 0
                ? null
                : problem.facilities.get(at.facility).facility.id();
    }

    private WhyNotOption option(Session session, Tried one) {
        boolean possible = one.effect().possible();
        return new WhyNotOption(
                problem.calendar.moment(one.at().start),
                place(one.at()),
                one.at().dose,
                possible,
                one.change().totals(),
                one.effect().breaks(),
                one.effect().clears(),
                possible ? null : sentences(session, one, 1));
    }

    /** The gravest reasons why an option is dearer, in sentences; empty where nothing is. */
    private String sentences(Session session, Tried one, int most) {
        List<Broken> reasons = one.effect().reasons();
        return reasons.isEmpty() ? "" : sentences(whatIf.facts(session, one.at()), reasons, most);
    }

    /** What an option would put right, gravest first. */
    private String gains(Tried one, int most) {
        return sentences(standing, one.effect().gains(), most);
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

    private WhyNotDay day(Session session, int day, List<Tried> tried) {
        String head = names.day(day) + MatchDays.inBrackets(session.group, day) + ": ";
        List<Tried> possible =
                tried.stream().filter(one -> one.effect().possible()).toList();
        if (tried.isEmpty()) {
            String text = session.group.group.label() + " has no free hours that are long enough.";
            return new WhyNotDay(problem.calendar.date(day), null, head + text);
        }
        if (possible.isEmpty()) {
            Tried nearest = tried.stream()
                    .min(Comparator.comparingInt(Tried::musts).thenComparing(one -> one.change(), Cost::compareLevels))
                    .orElseThrow();
            String text = "not possible; at " + names.time(nearest.at()) + ", which comes nearest: "
                    + sentences(session, nearest, 1);
            return new WhyNotDay(problem.calendar.date(day), null, head + text);
        }
        Tried best = best(session, possible);
        return new WhyNotDay(
                problem.calendar.date(day), option(session, best), head + possible(session, possible, best));
    }

    /** What costs least; of equals where it stands, then what resembles that, then the earliest. */
    private Tried best(Session session, List<Tried> some) {
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

    private String possible(Session session, List<Tried> possible, Tried best) {
        Stimulus now = judge.at(session);
        boolean here = now != null && possible.get(0).at().day == now.day;
        if (here && best.at() == now) {
            return "it lies here now, at " + names.time(now) + "; nothing else on this day is better.";
        }
        String because = best.change().compareLevels(new Cost()) < 0
                ? gains(best, MOST_REASONS)
                : sentences(session, best, MOST_REASONS);
        return when(session, possible, best, here) + ", " + Prices.said(best.change())
                + (because.isEmpty() ? "." : ": " + because);
    }

    private String when(Session session, List<Tried> possible, Tried best, boolean here) {
        String where = where(session, best.at());
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
    private String where(Session session, Stimulus at) {
        Stimulus now = judge.at(session);
        boolean samePlace = now != null && now.facility == at.facility;
        String place = samePlace || at.facility < 0
                ? ""
                : ", " + problem.facilities.get(at.facility).facility.label();
        boolean sameDose = now != null && now.dose == at.dose;
        return names.time(at) + place + (sameDose || at.dose == fullest(session) ? "" : ", " + at.dose.id() + " dose");
    }

    private static Dose fullest(Session session) {
        return session.aim == null ? Dose.FULL : session.aim.fullest;
    }

    private String text(Session session, List<Tried> all) {
        Stimulus now = judge.at(session);
        String what = session.family.family.label() + " of " + session.group.group.label();
        String stands = now == null
                ? what + " is left out in " + names.week(7 * session.week) + "."
                : what + " lies on " + Names.moment(problem.calendar.moment(now.start)) + "."
                        + (session.pin.isNone() ? "" : " It is pinned; the answer looks past the pin.");
        List<Tried> possible = all.stream()
                .filter(one -> one.effect().possible() && one.at() != now)
                .toList();
        if (possible.isEmpty()) {
            boolean others = all.stream().anyMatch(one -> one.at() != now);
            return stands
                    + (others
                            ? " Everything else breaks something that must hold."
                            : " There is no other start for it.");
        }
        Tried best = best(session, possible);
        boolean better = best.change().compareLevels(new Cost()) < 0;
        String day = names.day(best.at().day) + " " + where(session, best.at());
        return stands
                + (better ? " Better would be " : now == null ? " The best that it could have: " : " Best elsewhere: ")
                + day + ", " + Prices.said(best.change()) + ".";
    }
}
