package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds small sets of wishes that cannot be had together, though without any one of them the rest can. */
final class Clashing {
    private final Fitting fitting;

    Clashing(Fitting fitting) {
        this.fitting = fitting;
    }

    /**
     * A smallest set that clashes: with all of some wishes, and with as few of others as can be.
     *
     * @param others those that may be in it, the likeliest first
     * @return null where all of them can be had together
     */
    @Nullable
    List<Wish> of(List<Wish> some, List<Wish> others) {
        List<Wish> clash = new ArrayList<>(some);
        List<Wish> rest = others;
        if (fitting.fits(with(clash, rest))) {
            return null;
        }
        while (fitting.fits(clash)) {
            int last = shortest(clash, rest) - 1;
            if (last < 0) {
                return null;
            }
            clash.add(rest.get(last));
            rest = rest.subList(0, last);
        }
        return pared(clash);
    }

    /** How many of the first others it takes to clash, by halving. */
    private int shortest(List<Wish> clash, List<Wish> rest) {
        int fit = 0;
        int tooMany = rest.size();
        while (tooMany - fit > 1) {
            int half = (fit + tooMany) / 2;
            if (fitting.fits(with(clash, rest.subList(0, half)))) {
                fit = half;
            } else {
                tooMany = half;
            }
        }
        return tooMany;
    }

    /** Takes out what the others clash without. */
    private List<Wish> pared(List<Wish> clash) {
        List<Wish> pared = new ArrayList<>(clash);
        for (Wish one : clash) {
            List<Wish> without =
                    pared.stream().filter(other -> !other.equals(one)).toList();
            if (without.size() < pared.size() && !fitting.fits(without)) {
                pared = new ArrayList<>(without);
            }
        }
        return pared;
    }

    private static List<Wish> with(List<Wish> some, List<Wish> more) {
        List<Wish> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }
}
