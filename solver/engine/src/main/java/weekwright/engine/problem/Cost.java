package weekwright.engine.problem;

import weekwright.model.plan.Totals;

/**
 * What is broken, by level, in whole tenths, and the same as one weighted sum for the search. Mutable: the inner loop adds
 * to it and takes away from it.
 */
public final class Cost {
    /** Breaches of what must hold, ten each. */
    public long must;
    /** What is owed of key aims, ten for each session missing. */
    public long key;
    /** What is owed of main aims, ten for each session missing. */
    public long main;
    /** Wishes unmet, in tenths of a point. */
    public long want;
    /** Sessions beyond the number wanted: of plans that are otherwise as good, the one with fewer is better. */
    public long beyond;
    /** Weighted sum of must breaches, with their amounts. */
    public long mustSlope;
    /** Weighted sum of all other breaches. */
    public long restSlope;

    /** Sets all to nothing. */
    public void clear() {
        must = 0;
        key = 0;
        main = 0;
        want = 0;
        beyond = 0;
        mustSlope = 0;
        restSlope = 0;
    }

    /** Adds another cost. */
    public void add(Cost other) {
        must += other.must;
        key += other.key;
        main += other.main;
        want += other.want;
        beyond += other.beyond;
        mustSlope += other.mustSlope;
        restSlope += other.restSlope;
    }

    /** Takes another cost away. */
    public void subtract(Cost other) {
        must -= other.must;
        key -= other.key;
        main -= other.main;
        want -= other.want;
        beyond -= other.beyond;
        mustSlope -= other.mustSlope;
        restSlope -= other.restSlope;
    }

    /** Takes over another cost. */
    public void set(Cost other) {
        must = other.must;
        key = other.key;
        main = other.main;
        want = other.want;
        beyond = other.beyond;
        mustSlope = other.mustSlope;
        restSlope = other.restSlope;
    }

    /** A copy. */
    public Cost copy() {
        Cost copy = new Cost();
        copy.set(this);
        return copy;
    }

    /** Compares in the order must, key, main, want, sessions beyond the number wanted; negative when this one is better. */
    public int compareLevels(Cost other) {
        if (must != other.must) {
            return Long.compare(must, other.must);
        }
        if (key != other.key) {
            return Long.compare(key, other.key);
        }
        if (main != other.main) {
            return Long.compare(main, other.main);
        }
        if (want != other.want) {
            return Long.compare(want, other.want);
        }
        return Long.compare(beyond, other.beyond);
    }

    /** The sums as totals of the plan document. */
    public Totals totals() {
        return new Totals(must / 10.0, key / 10.0, main / 10.0, want / 10.0);
    }

    /** Whether nothing is broken at any level and no session lies beyond the number wanted: no plan is better. */
    public boolean clean() {
        return must == 0 && key == 0 && main == 0 && want == 0 && beyond == 0;
    }

    /** Whether the sums and the slopes are equal. */
    public boolean same(Cost other) {
        return compareLevels(other) == 0 && mustSlope == other.mustSlope && restSlope == other.restSlope;
    }
}
