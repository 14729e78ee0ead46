package ribmark.scoring;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** How likely it is that something measured keeps its limits, and the word for that. */
final class Conformity {

    /** Called within from this probability, outside from one minus it; between them it is too close to call (ours). */
    static final double CALLED_FROM = 0.95;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private Conformity() {}

    /** Probability of conformity between two limits (JCGM 106:2012, section 7); without doubt it is nothing or one. */
    static double probability(double value, double u, double lowest, double highest) {
        if (u == 0) {
            return lowest <= value && value <= highest ? 1 : 0;
        }
        return STANDARD.probability((lowest - value) / u, (highest - value) / u);
    }

    static Verdict verdict(double probability) {
        if (probability >= CALLED_FROM) {
            return Verdict.WITHIN;
        }
        return probability <= 1 - CALLED_FROM ? Verdict.OUTSIDE : Verdict.TOO_CLOSE_TO_CALL;
    }
}
