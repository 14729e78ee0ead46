package ribmark.weighup;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import ribmark.basics.Words;
import ribmark.scoring.CutYield;
import ribmark.scoring.ReferenceTable.GapLimits;

/** Whether the parts make up the whole they came out of, and how sure the scales are of it. */
public record Balance(
        String of,
        BigDecimal wholeG,
        double wholeVarianceG2,
        long partsG,
        double partsVarianceG2,
        List<String> missing,
        GapLimits limits,
        BigDecimal gapG) {

    /** What a balance is called. */
    public enum Verdict {
        INCOMPLETE,
        BALANCED,
        QUERY,
        NOT_SCORED;

        /** The word on the page and in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Its gap is the whole less its parts; below nothing when more came off than went on. */
    public Balance(
            String of,
            BigDecimal wholeG,
            double wholeVarianceG2,
            long partsG,
            double partsVarianceG2,
            List<String> missing,
            GapLimits limits) {
        this(
                of,
                wholeG,
                wholeVarianceG2,
                partsG,
                partsVarianceG2,
                missing,
                limits,
                wholeG.subtract(BigDecimal.valueOf(partsG)));
    }

    /** Keeps its own copy of what is missing. */
    public Balance {
        missing = List.copyOf(missing);
    }

    /** The gap in percent of the whole. */
    public double gapPercent() {
        return 100 * gapG.doubleValue() / wholeG.doubleValue();
    }

    /** Twice the standard uncertainty of the gap: independent readings add as squares (JCGM 100:2008, 5.1.2; clause number from memory). */
    public double gapExpandedUncertaintyG() {
        return CutYield.COVERAGE * Math.sqrt(wholeVarianceG2 + partsVarianceG2);
    }

    /** More came off than went on, by more than the scales can explain. */
    public boolean moreCameOff() {
        return gapG.signum() < 0 && gapG.doubleValue() < -gapExpandedUncertaintyG();
    }

    /** The verdict; a gap below nothing that the scales can explain balances. */
    public Verdict verdict() {
        if (!missing.isEmpty()) {
            return Verdict.INCOMPLETE;
        }
        double percent = Math.rint(gapPercent() * 1e9) / 1e9;
        if (moreCameOff() || percent > limits.queryToPercent()) {
            return Verdict.NOT_SCORED;
        }
        return percent > limits.balancedToPercent() ? Verdict.QUERY : Verdict.BALANCED;
    }

    /** The verdict in one line, with the gap, its doubt and what would balance; cuts are named by their ids. */
    public String sentence() {
        String word = Words.capital(verdict().word()) + ". ";
        if (verdict() == Verdict.INCOMPLETE) {
            return word + "No weight yet for " + Words.list(missing) + ".";
        }
        double gap = gapG.doubleValue();
        String amount = kg(Math.abs(gap)) + " ± " + kg(gapExpandedUncertaintyG()) + "\u00a0kg";
        if (gap < 0) {
            return word + "The pieces are " + amount + " more than the " + of
                    + (moreCameOff() ? ": more came off than went on." : ", which the scales can explain.");
        }
        return word + "The pieces are " + amount + " short of the " + of + "; up to "
                + kg(wholeG.doubleValue() * limits.balancedToPercent() / 100) + "\u00a0kg ("
                + Numbers.plain(limits.balancedToPercent()) + "\u00a0%) balances.";
    }

    private static String kg(double grams) {
        return Numbers.kilograms(grams);
    }
}
