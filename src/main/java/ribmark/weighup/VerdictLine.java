package ribmark.weighup;

import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.TrimConformity;

/** A verdict in one line: the word, what was measured, what it is held against, and the score last. */
public final class VerdictLine {

    private VerdictLine() {}

    /** {@code Within. Shoulders, left against right: left 0.120 ± 0.010 kg heavier …}. */
    public static String of(PairChecked pair) {
        return Words.capital(pair.difference().verdict().word()) + ". "
                + pair.row().name() + ", left against right: " + pair.apart() + ". Tolerance: " + pair.limit() + ".";
    }

    /** {@code Within. Fores: 7.310 kg, 36.33 %. Expected: 36.30 ± 1.50 %. Score 100.} */
    public static String of(ScoredCut cut) {
        Mass mass = Balances.sum(cut.readings());
        String side = cut.side() == Side.BOTH ? "" : " " + cut.side().word();
        String word = cut.verdict().map(v -> Words.capital(v.word())).orElse("Not judged");
        String score =
                cut.score().isPresent() ? " Score " + Numbers.places(cut.score().getAsDouble(), 0) + "." : "";
        return word + ". " + cut.yield().row().name() + side + ": " + Numbers.kilograms(mass.grams()) + "\u00a0kg, "
                + Numbers.places(cut.yield().percent(), 2) + "\u00a0%. Expected: "
                + Numbers.places(cut.yield().expected(), 2) + " ± "
                + Numbers.places(cut.yield().sd(), 2) + "\u00a0%."
                + score;
    }

    /** {@code Outside. Fat over the eye of the loin: 6 mm. Limit: at most 5 mm. Score 0.} */
    public static String of(TrimConformity trim) {
        boolean bare = trim.measure().isCount() || trim.measure().unit().equals("ratio");
        String unit = bare ? "" : "\u00a0" + trim.measure().unit();
        return Words.capital(trim.verdict().word()) + ". " + trim.measure().name() + ": "
                + Numbers.plain(trim.value()) + unit + ". Limit: " + Reasons.limits(trim.measure()) + ". Score "
                + Numbers.places(trim.score(), 0) + ".";
    }

    /** Whether the levels could be made to agree, in one line; nothing where no level was weighed twice. */
    public static Optional<String> of(Reconciliation reconciliation) {
        if (reconciliation.globalTest().isEmpty()) {
            return Optional.empty();
        }
        String test =
                "global test " + Numbers.places(reconciliation.globalTest().getAsDouble(), 3) + ", limit "
                        + Numbers.places(reconciliation.limit().getAsDouble(), 3) + ".";
        return Optional.of(
                reconciliation.adjusted()
                        ? "The levels agree within their scales and losses: " + test
                        : "The levels do not agree, nothing is adjusted: " + test);
    }

    /** {@code Yield 97.3 of 100}, or that nothing could be scored. */
    public static String ofYield(WeighUpScore score) {
        return score.yieldScore().isPresent()
                ? "Yield " + Numbers.places(score.yieldScore().getAsDouble(), 1) + " of 100."
                : "Yield not scored.";
    }

    /** {@code Trim 50.0 of 100}, or that nothing was measured. */
    public static String ofTrim(WeighUpScore score) {
        return score.trimScore().isPresent()
                ? "Trim " + Numbers.places(score.trimScore().getAsDouble(), 1) + " of 100."
                : "Trim not measured.";
    }
}
