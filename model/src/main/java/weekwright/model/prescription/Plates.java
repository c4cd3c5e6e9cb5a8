package weekwright.model.prescription;

import java.util.BitSet;
import java.util.OptionalDouble;

/**
 * What a bar and pairs of plates can make: as many pairs of each as are wanted. Weights in the unit of the plates, exact
 * to a hundredth.
 */
public final class Plates {
    /** A 20 kg bar with pairs down to 1.25 kg (bar: IWF, from memory; smallest pair: common practice, no source). */
    public static final Plates KILOGRAMS = new Plates(20, 25, 20, 15, 10, 5, 2.5, 1.25);
    /** A 45 lb bar with pairs down to 2.5 lb (common practice, no source). */
    public static final Plates POUNDS = new Plates(45, 45, 35, 25, 10, 5, 2.5);

    private static final int HUNDREDTHS = 100;
    private static final int HEAVIEST = 1_500;
    private static final double EXACT = 1e-9;

    private final double bar;
    /** Weights of one side that can be made, in hundredths. */
    private final BitSet sides = new BitSet();

    /**
     * A bar with plates.
     *
     * @param plates weight of one plate of each pair
     */
    public Plates(double bar, double... plates) {
        this.bar = bar;
        sides.set(0);
        int most = HEAVIEST * HUNDREDTHS / 2;
        for (double plate : plates) {
            int weight = (int) Math.round(plate * HUNDREDTHS);
            if (weight <= 0) {
                throw new IllegalArgumentException("a plate weighs more than nothing, not " + plate);
            }
            for (int side = weight; side <= most; side++) {
                if (sides.get(side - weight)) {
                    sides.set(side);
                }
            }
        }
    }

    /** Weight of the bar. */
    public double bar() {
        return bar;
    }

    /** Whether exactly this weight can be made. */
    public boolean makes(double weight) {
        double side = (weight - bar) * HUNDREDTHS / 2;
        return side >= -EXACT && Math.abs(side - Math.rint(side)) < 1e-6 && sides.get((int) Math.rint(side));
    }

    /** The heaviest weight that can be made and is not heavier; none where the bar alone is. */
    public OptionalDouble down(double weight) {
        double side = (weight - bar) * HUNDREDTHS / 2;
        if (side < -EXACT) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(whole(sides.previousSetBit((int) Math.floor(side + EXACT))));
    }

    /** The nearest weight that can be made; of two equally near the lighter; none where the bar alone is heavier. */
    public OptionalDouble nearest(double weight) {
        OptionalDouble below = down(weight);
        if (below.isEmpty()) {
            return below;
        }
        int next = sides.nextSetBit((int) Math.ceil((weight - bar) * HUNDREDTHS / 2 - EXACT));
        double above = next < 0 ? below.getAsDouble() : whole(next);
        boolean lower = weight - below.getAsDouble() <= above - weight + EXACT;
        return lower ? below : OptionalDouble.of(above);
    }

    /** What goes on each side of the bar. */
    public double side(double weight) {
        return (weight - bar) / 2;
    }

    private double whole(int side) {
        return bar + 2.0 * side / HUNDREDTHS;
    }
}
