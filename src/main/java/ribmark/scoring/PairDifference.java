package ribmark.scoring;

import ribmark.scoring.CutYield.Mass;

/** Left against right of one pair, in grams, and how far apart they may lie in percent of both together. */
public record PairDifference(Mass left, Mass right, double tolerancePercent) {

    /** How much more the left weighs; less than nothing where the right weighs more. */
    public double grams() {
        return left.grams() - right.grams();
    }

    /** The same in percent of both together. */
    public double percent() {
        return 100 * grams() / (left.grams() + right.grams());
    }

    /** How far the scale leaves the difference in doubt: one standard uncertainty, in grams. */
    public double standardUncertaintyG() {
        return Math.sqrt(left.varianceG2() + right.varianceG2());
    }

    /** The most that left and right may lie apart, in grams. */
    public double toleranceG() {
        return tolerancePercent * (left.grams() + right.grams()) / 100;
    }

    /** How likely it is that they lie no further apart than they may. */
    public double probability() {
        return Conformity.probability(grams(), standardUncertaintyG(), -toleranceG(), toleranceG());
    }

    /** The word for it, by the rule for trim measures. */
    public Verdict verdict() {
        return Conformity.verdict(probability());
    }
}
