package weekwright.engine.recalculation;

import java.util.List;
import java.util.function.Consumer;
import weekwright.model.rulebook.RuleLevel;

/** What the judges of every theme need: numbers of rules, shares of heads, names of subjects. */
abstract class Judge {
    final Case the;
    private final Ledger ledger;
    private int heads = 1;

    Judge(Case the, Ledger ledger) {
        this.the = the;
        this.ledger = ledger;
    }

    /** Judges all rules of the theme. */
    abstract void judge();

    /** One person's part of a broken must; the points hold where a scenario makes a want of it. */
    final void must(String rule, String subjects, String group, Fraction share) {
        ledger.add(rule, subjects, group, number(rule, "points", group), share);
    }

    /** The same of a must in hours, which as a want costs by the hours that are short. */
    final void mustHours(String rule, String subjects, String group, Fraction hoursShort, Fraction share) {
        ledger.add(rule, subjects, group, pointsForHours(rule, group, hoursShort), share);
    }

    /** One person's part of a want, where there is one. */
    final void want(String rule, String subjects, String group, Fraction points, Fraction share) {
        if (points.positive()) {
            ledger.add(rule, subjects, group, points, share);
        }
    }

    /** Whether the group's settings make a mere want of a rule. */
    final boolean isWant(String rule, String group) {
        return the.settings().get(group).level(rule) == RuleLevel.WANT;
    }

    final Ledger ledger() {
        return ledger;
    }

    final Fraction number(String rule, String name, String group) {
        return Fraction.of(the.settings().get(group).number(rule, name));
    }

    /** A point an hour at first, more for each hour beyond. */
    final Fraction pointsForHours(String rule, String group, Fraction hoursShort) {
        Fraction beyond = number(rule, "beyondHours", group);
        Fraction first = hoursShort.min(beyond).max(Fraction.ZERO);
        Fraction rest = hoursShort.minus(beyond).max(Fraction.ZERO);
        return first.times(number(rule, "pointsAnHour", group))
                .plus(rest.times(number(rule, "pointsAnHourBeyond", group)));
    }

    /** Points for a gap that is shorter than the hours wanted less the tolerance. */
    final Fraction pointsForGap(String rule, String group, Fraction hoursWanted, Fraction gap) {
        Fraction counted = hoursWanted.minus(number(rule, "toleranceHours", group));
        return pointsForHours(rule, group, counted.minus(gap));
    }

    /** People of whom all the same is known are judged once, and weigh as many as they are. */
    final void forEachCohort(Consumer<Person> judged) {
        for (List<Person> cohort : the.cohorts()) {
            heads = cohort.size();
            judged.accept(cohort.get(0));
        }
        heads = 1;
    }

    /** What those who are judged weigh in a group: one person, or one cohort. */
    final Fraction share(String group) {
        return Fraction.of(heads, the.roster().heads(group));
    }

    /** What those who take part weigh in the group of a placement. */
    final Fraction shareOfThosePresent(Thing placement) {
        return Fraction.of(placement.present().size(), the.roster().heads(placement.group()));
    }

    /** The group that a pair belongs to: the later one's, or that of the only placement. */
    static String groupOf(Thing earlier, Thing later) {
        return later.placed() ? later.group() : earlier.group();
    }

    static boolean isOurs(Thing one, Thing other) {
        return one.placed() || other.placed();
    }

    static boolean isOurs(List<Thing> things) {
        return things.stream().anyMatch(Thing::placed);
    }

    static String names(Object... subjects) {
        return List.of(subjects).toString();
    }
}
