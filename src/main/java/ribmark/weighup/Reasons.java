package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ribmark.basics.Side;
import ribmark.scoring.Ground;
import ribmark.scoring.Limits;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.TrimConformity;
import ribmark.scoring.TrimMeasure;

/** Where a number comes from, line by line: what was read and how surely, what was expected, and on what ground. */
public final class Reasons {

    private static final String ZETA_RULE =
            "Rule: up to 2 spreads within, below 3 questionable, from 3 outside (ISO 13528); too close to call where a limit"
                    + " lies inside the share’s own doubt.";
    private static final String TRIM_RULE =
            "Rule: within from 95\u00a0%, outside up to 5\u00a0%, between them too close to call (ours).";

    private Reasons() {}

    /** How the gap of a balance is known. */
    public static List<String> of(Balance balance) {
        return List.of(
                "Whole: " + kg(balance.wholeG().doubleValue(), balance.wholeVarianceG2()),
                "Pieces together: " + kg(balance.partsG(), balance.partsVarianceG2()),
                "Gap: " + kg(balance.gapG().doubleValue(), balance.wholeVarianceG2() + balance.partsVarianceG2()) + ", "
                        + Numbers.places(balance.gapPercent(), 2) + "\u00a0% of the whole",
                "Rule: up to " + Numbers.plain(balance.limits().balancedToPercent()) + "\u00a0% balances, up to "
                        + Numbers.plain(balance.limits().queryToPercent())
                        + "\u00a0% is a query, beyond it nothing is scored; more off than on by more than the doubt is not"
                        + " scored either (judgement).");
    }

    /** How a cut came to its verdict. */
    public static List<String> of(ScoredCut cut) {
        List<String> lines = new ArrayList<>();
        cut.readings().forEach(reading -> lines.add(read(reading)));
        var yield = cut.yield();
        lines.add("Share: " + Numbers.places(yield.percent(), 3) + " ± "
                + Numbers.places(yield.expandedUncertainty(), 3) + "\u00a0% of the carcase");
        lines.add("Expected" + (cut.side() == Side.BOTH ? "" : ", for one side of the pair,") + ": "
                + Numbers.places(yield.expected(), 3) + "\u00a0%, spread " + Numbers.places(yield.sd(), 3) + ", "
                + yield.row().moment());
        lines.add("Distance: " + Numbers.places(yield.zeta(), 3) + " spreads (zeta), score "
                + Numbers.places(yield.score(), 1));
        lines.add(ZETA_RULE);
        lines.add("Basis: " + yield.row().basis().word());
        yield.row().grounds().forEach(ground -> lines.add(ground(ground)));
        return lines;
    }

    /** How left against right of a pair came to its verdict. */
    public static List<String> of(PairChecked pair) {
        var difference = pair.difference();
        List<String> lines = new ArrayList<>();
        lines.add("Left: " + kg(difference.left().grams(), difference.left().varianceG2()));
        lines.add("Right: " + kg(difference.right().grams(), difference.right().varianceG2()));
        lines.add("Apart: " + pair.apart());
        lines.add("Tolerance: " + pair.limit() + ", here " + Numbers.kilograms(difference.toleranceG()) + "\u00a0kg");
        lines.add("Probability that they keep it: " + Numbers.places(100 * difference.probability(), 1)
                + "\u00a0% (JCGM 106)");
        lines.add(TRIM_RULE);
        pair.tolerances().grounds().forEach(ground -> lines.add(ground(ground)));
        return lines;
    }

    /** How a trim measure came to its verdict. */
    public static List<String> of(TrimConformity trim) {
        List<String> lines = new ArrayList<>();
        String read = "Read: " + Numbers.plain(trim.value()) + "\u00a0"
                + trim.measure().unit();
        lines.add(
                trim.measure().isCount()
                        ? read + ", counted, so exact"
                        : read + " ± " + Numbers.places(2 * trim.standardUncertainty(), 2) + ", division "
                                + Numbers.plain(trim.division()));
        lines.add("Limit: " + limits(trim.measure()) + ", " + trim.measure().whose());
        lines.add("By how much: " + byHowMuch(trim));
        lines.add("Probability that it keeps the limit: " + Numbers.places(100 * trim.probability(), 1)
                + "\u00a0% (JCGM 106)");
        lines.add(TRIM_RULE);
        lines.add("Basis: " + trim.measure().basis().word());
        trim.measure().grounds().forEach(ground -> lines.add(ground(ground)));
        return lines;
    }

    /** By how much a reading misses or keeps its limit: {@code over by 1 mm}, {@code 2 mm to spare}, {@code just on the limit}. */
    public static String byHowMuch(TrimConformity trim) {
        double beyond = Math.rint(trim.beyond() * 1e6) / 1e6;
        TrimMeasure measure = trim.measure();
        String far = Numbers.plain(Math.abs(beyond)) + (measure.unit().equals("mm") ? "\u00a0mm" : "");
        if (beyond == 0) {
            return "just on the limit";
        }
        boolean over = trim.value() > measure.highest().orElse(Double.POSITIVE_INFINITY);
        return beyond < 0 ? far + " to spare" : (over ? "over by " : "under by ") + far;
    }

    /** The limits in words: {@code at most 5 mm}. */
    public static String limits(TrimMeasure measure) {
        return Limits.say(measure);
    }

    /** How the yield score and the trim score came about. */
    public static List<String> ofScores(WeighUpScore score) {
        List<String> lines = new ArrayList<>();
        score.yieldScore()
                .ifPresent(yield -> lines.add("Yield: "
                        + score.cuts().stream()
                                .map(cut -> Numbers.places(cut.yield().expected(), 2) + " × "
                                        + Numbers.places(cut.yield().score(), 1))
                                .collect(Collectors.joining(" + "))
                        + ", by the sum of what is expected: " + Numbers.places(yield, 3)));
        score.trimScore()
                .ifPresent(trim -> lines.add("Trim: "
                        + score.trim().measured().stream()
                                .map(m -> Numbers.plain(m.measure().weight()) + " × " + Numbers.places(m.score(), 1))
                                .collect(Collectors.joining(" + "))
                        + ", by the sum of the weights: " + Numbers.places(trim, 3)));
        return lines;
    }

    /** How the levels were made to agree, entry by entry. */
    public static List<String> of(Reconciliation reconciliation) {
        List<String> lines = new ArrayList<>();
        reconciliation
                .entries()
                .forEach(entry -> lines.add(entry.cut()
                        + entry.side().map(side -> " " + side).orElse("") + ": "
                        + Numbers.places(entry.reconciledG(), 3) + "\u00a0g, " + Numbers.places(entry.z(), 3)
                        + " spreads moved"));
        lines.add(
                "Rule: adjusted where the global test stays below the limit, 95\u00a0% of chi-squared with as many degrees of"
                        + " freedom as balances.");
        return lines;
    }

    /** What stands under every score: that the table informs and how well it is known. */
    public static String standing(WeighUp weighUp) {
        return "Scores inform; they do not decide. Tables: "
                + weighUp.tables().stream().map(ReferenceTable::title).collect(Collectors.joining("; ")) + " ("
                + weighUp.tables().stream()
                        .map(ReferenceTable::standing)
                        .distinct()
                        .collect(Collectors.joining(", "))
                + ").";
    }

    /** What one reading showed, how surely, and on which scale. */
    public static String read(Reading reading) {
        String side = reading.side() == Side.ONCE ? "" : reading.side().word() + " ";
        String tray = reading.tare()
                .map(t -> " (" + reading.weight() + " less a tray of " + t + ", two readings)")
                .orElse("");
        return "Read: " + side + kg(reading.net().grams(), reading.mass().varianceG2()) + tray + ", scale "
                + Numbers.plain(reading.scale().divisionG()) + "\u00a0g, scatter "
                + Numbers.plain(reading.scale().repeatabilityG()) + "\u00a0g";
    }

    private static String kg(double grams, double varianceG2) {
        return Numbers.kilograms(grams) + " ± " + Numbers.kilograms(2 * Math.sqrt(varianceG2)) + "\u00a0kg";
    }

    private static String ground(Ground ground) {
        return "– " + ground.fact() + " (" + ground.source() + ", "
                + ground.basis().word() + ")";
    }
}
