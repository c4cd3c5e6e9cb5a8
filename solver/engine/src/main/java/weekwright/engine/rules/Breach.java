package weekwright.engine.rules;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus;

/** One breach as a judge finds it, cohort by cohort. Reused: a view hands out the same one again and again. */
public final class Breach {
    private int[] cohorts = new int[8];
    private int count;
    private int heads;
    private long units;
    private int measured;
    private int limit;
    private int lowest;
    private int highest;
    private boolean found;
    private boolean told;
    private int firstDay;
    private int lastDay;
    private int detail;
    private @Nullable Stimulus first;
    private @Nullable Stimulus second;
    private List<String> athletes = List.of();

    /** Starts anew. */
    Breach none() {
        count = 0;
        heads = 0;
        units = 0;
        found = false;
        told = false;
        detail = 0;
        first = null;
        second = null;
        athletes = List.of();
        return this;
    }

    /** Says which days it is about; two things, and a session that is placed, have their own. */
    Breach days(int first, int last) {
        firstDay = first;
        lastDay = last;
        return this;
    }

    /** Says which week of the plan it is about. */
    Breach week(int number) {
        return days(7 * number, 7 * number + 6);
    }

    /** Says which of several forms of the rule is broken. */
    Breach detail(int form) {
        detail = form;
        return this;
    }

    /** Says whom it concerns by name, where those are not all of the cohorts concerned. */
    Breach named(List<String> ids) {
        athletes = List.copyOf(ids);
        return this;
    }

    /** Says which thing it is about, where the view does not tell. */
    Breach about(@Nullable Stimulus thing) {
        return about(thing, null);
    }

    /** Says which two things it is about, in order of start. */
    Breach about(@Nullable Stimulus one, @Nullable Stimulus other) {
        first = one;
        second = other;
        return this;
    }

    /**
     * Adds a cohort for whom the rule is broken.
     *
     * @param cost units of cost a head
     */
    Breach add(int cohort, int itsHeads, int cost, int itsMeasured, int itsLimit) {
        if (count == cohorts.length) {
            cohorts = java.util.Arrays.copyOf(cohorts, 2 * count);
        }
        cohorts[count++] = cohort;
        addAmount(itsHeads, cost, itsMeasured, itsLimit);
        return this;
    }

    /**
     * Adds a cohort for whom the rule is broken. Where all that it comes from is fixed for one cohort and not for another,
     * the breach is about the other; where it is for all of them, it is told at no cost.
     *
     * @param cost units of cost a head
     * @param fixed whether all that it comes from is fixed
     */
    void add(int cohort, int itsHeads, int cost, int itsMeasured, int itsLimit, boolean fixed) {
        if (fixed && found && !told) {
            return;
        }
        if (!fixed && told) {
            int form = detail;
            Stimulus one = first;
            Stimulus other = second;
            none().detail(form).about(one, other);
        }
        told = fixed;
        add(cohort, itsHeads, cost, itsMeasured, itsLimit);
    }

    /** Adds a breach that concerns a session or a week as such, and no cohort more than another. */
    void addAmount(int itsHeads, int cost, int itsMeasured, int itsLimit) {
        heads += itsHeads;
        units += (long) cost * itsHeads;
        if (!found || Math.abs(itsLimit - itsMeasured) > Math.abs(limit - measured)) {
            measured = itsMeasured;
            limit = itsLimit;
        }
        lowest = found ? Math.min(lowest, itsMeasured) : itsMeasured;
        highest = found ? Math.max(highest, itsMeasured) : itsMeasured;
        found = true;
    }

    /** Says that nobody here can mend it: all that it comes from is fixed. */
    void told() {
        told = true;
    }

    /** Whether anything is broken. */
    boolean any() {
        return found;
    }

    /** Whether it is told at no cost. */
    public boolean isTold() {
        return told;
    }

    /** Heads concerned. */
    public int heads() {
        return heads;
    }

    /** Units of cost times heads, summed. */
    public long units() {
        return units;
    }

    /** What was measured where it is worst, in the rule's own whole unit. */
    public int measured() {
        return measured;
    }

    /** The limit where it is worst. */
    public int limit() {
        return limit;
    }

    /** The least that was measured of those concerned. */
    int lowest() {
        return lowest;
    }

    /** The most that was measured of those concerned. */
    int highest() {
        return highest;
    }

    /** Whether not the same was measured of all concerned. */
    boolean differs() {
        return lowest != highest;
    }

    /** First day that it is about. */
    public int firstDay() {
        return firstDay;
    }

    /** Last day that it is about. */
    public int lastDay() {
        return lastDay;
    }

    /** Which of several forms of the rule is broken. */
    public int detail() {
        return detail;
    }

    /** What it is about, in order of start, where the view does not tell; otherwise nothing. */
    public List<Stimulus> about() {
        return Stream.of(first, second).filter(Objects::nonNull).toList();
    }

    /** Ids of those concerned, where they are not all of the cohorts concerned; otherwise nothing. */
    public List<String> athletes() {
        return athletes;
    }

    /** Cohorts concerned. */
    public int[] cohorts() {
        return java.util.Arrays.copyOf(cohorts, count);
    }
}
