package ribmark.scoring;

/** What one cut came to in percent of its carcase, beside what the table expects of it. */
public record CutYield(ReferenceTable.Row row, double percent, double standardUncertainty, double zeta) {

    /** Two standard uncertainties: about 95 in 100 results lie this close to the truth (JCGM 100:2008, 6.2 and 6.3; clause numbers from memory). */
    public static final double COVERAGE = 2;

    private static final double[] CLASS_LIMITS = {2, 3};

    /** Its zeta is how many spreads, the scale's own doubt included, the share lies from what was expected. */
    public CutYield(ReferenceTable.Row row, double percent, double standardUncertainty) {
        this(row, percent, standardUncertainty, (percent - row.expected()) / Math.hypot(row.sd(), standardUncertainty));
    }

    /** A mass and the variance of what was read for it, in grams and square grams. */
    public record Mass(double grams, double varianceG2) {

        /** Two masses together. */
        public Mass plus(Mass other) {
            return new Mass(grams + other.grams, varianceG2 + other.varianceG2);
        }
    }

    /** The share with the uncertainty of a quotient of two independent readings (JCGM 100:2008, 5.1.2; clause number from memory). */
    public static CutYield of(ReferenceTable.Row row, Mass cut, Mass carcase) {
        double share = cut.grams() / carcase.grams();
        double variance = cut.varianceG2() + share * share * carcase.varianceG2();
        return new CutYield(row, 100 * share, 100 * Math.sqrt(variance) / carcase.grams());
    }

    /** The share expected. */
    public double expected() {
        return row.expected();
    }

    /** The spread around it. */
    public double sd() {
        return row.sd();
    }

    /** Twice the standard uncertainty, in percent of the carcase. */
    public double expandedUncertainty() {
        return COVERAGE * standardUncertainty;
    }

    /** The word for it; where a class limit lies within the scale's own doubt the class is not called. */
    public Verdict verdict() {
        return scaleCannotSettleIt() ? Verdict.TOO_CLOSE_TO_CALL : Verdict.ofZeta(zeta);
    }

    private boolean scaleCannotSettleIt() {
        double distance = Math.abs(percent - expected());
        for (double limit : CLASS_LIMITS) {
            if (Math.abs(distance - limit * sd()) <= expandedUncertainty()) {
                return true;
            }
        }
        return false;
    }

    /** From 100 down: full up to one spread, 50 at two, nothing from three (ours). */
    public double score() {
        double distance = Math.abs(zeta);
        return Math.max(0, Math.min(100, 100 - 50 * (distance - 1)));
    }
}
