package ribmark.slips;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Weight;

/**
 * One thing that may have happened: the slip and the entries it befell, or no slip; the logarithm of its prior times how well the
 * weights fit; and the weights as they were meant.
 */
record Possibility(Optional<Cause> cause, List<Guess> guesses, double log, Weights meant) {

    /** What should stand in the field of an entry, if anything. */
    record Guess(int entry, Optional<Weight> likely) {}

    static Possibility noSlip(Block block) {
        double prior = Math.log(block.model().slips().none());
        return new Possibility(Optional.empty(), List.of(), prior + block.log(block.asTyped()), block.asTyped());
    }

    static Possibility of(Cause cause, int entry, Optional<Weight> likely, double log, Weights meant) {
        return new Possibility(Optional.of(cause), List.of(new Guess(entry, likely)), log, meant);
    }

    /** The logarithm of the prior of one cause. */
    static double logPrior(Block block) {
        return Math.log((1 - block.model().slips().none()) / Cause.values().length);
    }
}
