package ribmark.weighup;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ribmark.basics.Side;
import ribmark.scoring.CutYield;
import ribmark.scoring.Verdict;

/** A cut with its yield, the weigh-up it is of, and whether it may be judged. */
public record ScoredCut(CutYield yield, Side side, WeighUp weighUp, boolean judged) {

    /** The id of the cut. */
    public String cut() {
        return yield.row().cut();
    }

    /** From which readings it came. */
    public List<Reading> readings() {
        return weighUp.of(cut());
    }

    /** The word for it; nothing where the balance forbids judging. */
    public Optional<Verdict> verdict() {
        return judged ? Optional.of(yield.verdict()) : Optional.empty();
    }

    /** Its score from 0 to 100; nothing where the balance forbids judging. */
    public OptionalDouble score() {
        return judged ? OptionalDouble.of(yield.score()) : OptionalDouble.empty();
    }
}
