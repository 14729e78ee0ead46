package ribmark.bench;

import ribmark.weighup.ScoredCut;
import ribmark.weighup.WeighUpScore;

/** That the program and the loop by hand come to the same numbers: otherwise their times cannot be compared. */
final class Same {

    private static final double CLOSE = 1e-9;

    private Same() {}

    static void check(WeighUpScore score, HandLoop hand) {
        for (int i = 0; i < score.cuts().size(); i++) {
            ScoredCut cut = score.cuts().get(i);
            same("percent", cut.yield().percent(), hand.percent[i]);
            same("uncertainty", cut.yield().standardUncertainty(), hand.uncertainty[i]);
            same("expected", cut.yield().expected(), hand.expects[i]);
            same("zeta", cut.yield().zeta(), hand.zeta[i]);
            same("verdict", cut.yield().verdict().ordinal(), hand.verdict[i]);
            same("score", cut.yield().score(), hand.score[i]);
        }
        same("yield", score.yieldScore().orElse(Double.NaN), hand.yieldScore);
        same("gap", score.balance().gapG().doubleValue(), hand.gap);
        same("gap uncertainty", score.balance().gapExpandedUncertaintyG(), hand.gapUncertainty);
        same("balance", score.balance().verdict().ordinal(), hand.balance);
    }

    private static void same(String what, double program, double hand) {
        if (!(Math.abs(program - hand) <= CLOSE) && !(Double.isNaN(program) && Double.isNaN(hand))) {
            throw new IllegalStateException(what + " is " + program + ", by hand " + hand);
        }
    }
}
