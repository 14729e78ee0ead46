package ribmark.slips;

import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable.Hot;
import ribmark.scoring.Scale;

/** The entry of the carcase itself: what to call it, what was typed, and the factor that makes a cold weight of it, 1 when it was cold. */
public record Whole(String name, String text, Weight read, Hot toCold, Scale scale) {

    /** A carcase weighed cold. */
    public static Whole cold(String name, Weight read, Scale scale) {
        return new Whole(name, read.kilograms(), read, new Hot(1, 0), scale);
    }

    /** What it would weigh cold, had the scale shown this many grams. */
    double coldG(double readG) {
        return toCold.multiplyBy() * readG;
    }

    /** The variance of that cold weight, in square grams. */
    double varianceG2(double readG) {
        double ofFactor = toCold.standardUncertainty() * readG;
        return toCold.multiplyBy() * toCold.multiplyBy() * scale.varianceG2() + ofFactor * ofFactor;
    }
}
