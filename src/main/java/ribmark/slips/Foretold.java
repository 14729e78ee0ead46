package ribmark.slips;

import java.util.Arrays;
import ribmark.slips.Gaussian.Last;

/** What the other weights let one expect at a place, one forecast for each way a line may have gone. */
record Foretold(Last[] ways) {

    /** Reckoned from these weights; what stands at the place itself is not looked at. */
    static Foretold at(Block block, int place, Weights weights) {
        int[] others =
                Arrays.stream(block.observed(weights)).filter(p -> p != place).toArray();
        int[] at = Arrays.copyOf(others, others.length + 1);
        at[others.length] = place;
        Gaussian gaussian = block.gaussian(at, block.variances(weights), weights.coldG(), weights.coldVarianceG2());
        return new Foretold(gaussian.last(block.grams(weights, at)));
    }

    /** How well the others fit, whatever stands at the place. */
    double log() {
        return Logs.sum(Arrays.stream(ways).mapToDouble(Last::log).toArray());
    }

    /** What is expected at the place. */
    double mean() {
        double[] shares = Logs.shares(Arrays.stream(ways).mapToDouble(Last::log).toArray());
        double mean = 0;
        for (int way = 0; way < ways.length; way++) {
            mean += shares[way] * ways[way].mean();
        }
        return mean;
    }

    /** How well the others fit, and how probably the place lies between two weights. */
    double logBetween(double low, double high) {
        return Logs.sum(logsBetween(low, high));
    }

    private double[] logsBetween(double low, double high) {
        return Arrays.stream(ways)
                .mapToDouble(way -> way.log() + Math.log(way.between(low, high)))
                .toArray();
    }

    /** What is expected at the place when it is known to lie between two weights. */
    double meanBetween(double low, double high) {
        double[] shares = Logs.shares(logsBetween(low, high));
        double mean = 0;
        for (int way = 0; way < ways.length; way++) {
            mean += shares[way] > 0 ? shares[way] * ways[way].meanBetween(low, high) : 0;
        }
        return mean;
    }
}
