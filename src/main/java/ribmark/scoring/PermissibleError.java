package ribmark.scoring;

import java.util.OptionalDouble;

/**
 * How far a weighing instrument may be off by law, in the unit of its load: half a step of its scale, one, or one and a half, by how
 * many steps lie on it (OIML R 76-1, table 6), and twice that in service. Which class a scale has stands on its plate.
 */
public enum PermissibleError {
    CLASS_II(50, 5_000, 20_000, 100_000),
    CLASS_III(20, 500, 2_000, 10_000),
    CLASS_IIII(10, 50, 200, 1_000);

    /** A display that rounds to its step is off by up to half of it; spread evenly, its standard uncertainty is the step over root 12. */
    private static final double ROOT_TWELVE = Math.sqrt(12);

    private static final double[] STEPS = {0.5, 1, 1.5};
    private static final double IN_SERVICE = 2;

    private final double from;
    private final double[] upTo;

    PermissibleError(double from, double... upTo) {
        this.from = from;
        this.upTo = upTo;
    }

    /** The lightest load it is meant for: below so many steps the error is too large a part of it (table 3, from memory). */
    public double lightest(double step) {
        return from * step;
    }

    /** When it is verified for the first time; nothing beyond its range. A limit belongs to the smaller error. */
    public OptionalDouble initial(double load, double step) {
        for (int range = 0; range < upTo.length; range++) {
            if (load <= upTo[range] * step) {
                return OptionalDouble.of(STEPS[range] * step);
            }
        }
        return OptionalDouble.empty();
    }

    /** When it is in use. */
    public OptionalDouble inService(double load, double step) {
        OptionalDouble initial = initial(load, step);
        return initial.isPresent() ? OptionalDouble.of(IN_SERVICE * initial.getAsDouble()) : initial;
    }

    /** Twice the standard uncertainty a display of this step leaves in a load, in percent of the load: 12 for 100 g shown to 20 g. */
    public static double coarseness(double load, double step) {
        return 100 * CutYield.COVERAGE * step / ROOT_TWELVE / load;
    }
}
