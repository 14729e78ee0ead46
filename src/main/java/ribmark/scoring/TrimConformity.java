package ribmark.scoring;

/** One trim measure as read, and how likely it is that the piece keeps its limits. */
public record TrimConformity(TrimMeasure measure, double value, double division) {

    /** Called within from this probability, outside from one minus it; between them it is too close to call (ours). */
    public static final double CALLED_FROM = Conformity.CALLED_FROM;

    /** How far the reading may be off: a rule read to its division, or more where the measure says so; a count is exact. */
    public double standardUncertainty() {
        return measure.isCount() ? 0 : Math.max(division / Math.sqrt(12), measure.standardUncertainty());
    }

    /** Probability of conformity between two limits (JCGM 106:2012, section 7). */
    public double probability() {
        double lowest = measure.lowest().orElse(Double.NEGATIVE_INFINITY);
        double highest = measure.highest().orElse(Double.POSITIVE_INFINITY);
        return Conformity.probability(value, standardUncertainty(), lowest, highest);
    }

    /** The word for it. */
    public Verdict verdict() {
        return Conformity.verdict(probability());
    }

    /** How far the reading lies beyond its nearer limit; less than nothing is what it has to spare. */
    public double beyond() {
        double above = value - measure.highest().orElse(Double.POSITIVE_INFINITY);
        double below = measure.lowest().orElse(Double.NEGATIVE_INFINITY) - value;
        return Math.max(above, below);
    }

    /** A hundred times the probability. */
    public double score() {
        return 100 * probability();
    }
}
