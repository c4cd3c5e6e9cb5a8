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
    private final Problem problem;
    private final Judge judge;
    private final WhatIf whatIf;
    private final List<Fact> standing;

    /** Answers about a plan: each session at its place, by session. */
    public WhyNots(Problem problem, @Nullable Stimulus[] at) {
        this.problem = problem;
        judge = Judge.of(problem, at);
        whatIf = new WhatIf(problem, judge);
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
                .map(words(session)::said)
                .orElse(null);
    }

    /** The answer for a session, on all days of its week or on one of them. */
    public WhyNot of(Session session, @Nullable Integer onlyDay) {
        List<Tried> all = tried(session).stream()
                .filter(one -> onlyDay == null || one.at().day == onlyDay)
                .toList();
        WhyNotWords words = words(session);
        int first = 7 * session.week;
        List<WhyNotDay> days = new ArrayList<>();
        for (int day = first; day < first + problem.calendar.daysIn(session.week); day++) {
            if (onlyDay == null || day == onlyDay) {
                days.add(day(words, day, onDay(all, day)));
            }
        }
        Stimulus now = judge.at(session);
        return new WhyNot(
                session.id,
                now == null ? null : spot(now),
                whatIf.before().totals(),
                all.stream().map(one -> option(words, one)).toList(),
                days,
                words.text(all));
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

    private WhyNotDay day(WhyNotWords words, int day, List<Tried> tried) {
        List<Tried> possible = WhyNotWords.possible(tried);
        Tried best = possible.isEmpty() ? null : words.best(possible);
        return new WhyNotDay(
                problem.calendar.date(day),
                best == null ? null : option(words, best),
                words.day(day, tried, possible, best));
    }

    private WhyNotWords words(Session session) {
        return new WhyNotWords(problem, judge, whatIf, standing, session);
    }

    private WhyNotOption option(WhyNotWords words, Tried one) {
        boolean possible = one.effect().possible();
        return new WhyNotOption(
                problem.calendar.moment(one.at().start),
                place(one.at()),
                one.at().dose,
                possible,
                one.change().totals(),
                one.effect().breaks(),
                one.effect().clears(),
                possible ? null : words.reasons(one, 1));
    }
}
