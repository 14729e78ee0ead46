package ribmark.scoring;

import java.util.OptionalDouble;

/** A mean in which some values count for more. */
final class WeightedMean {

    private final Sum weights = new Sum();
    private final Sum weighted = new Sum();

    /** A sum that carries along what it loses in rounding (Kahan 1965). */
    private static final class Sum {
        private double sum;
        private double lost;

        void add(double more) {
            double whole = more - lost;
            double both = sum + whole;
            lost = both - sum - whole;
            sum = both;
        }

        double all() {
            return sum - lost;
        }
    }

    void add(double value, double weight) {
        weights.add(weight);
        weighted.add(weight * value);
    }

    /** Nothing when nothing counts. */
    OptionalDouble mean() {
        return weights.all() > 0 ? OptionalDouble.of(weighted.all() / weights.all()) : OptionalDouble.empty();
    }
}
