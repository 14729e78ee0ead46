package ribmark.scoring;

import java.util.OptionalDouble;

/** The mean of the scores of some cuts, each counting by its expected share; it informs and decides nothing. */
public final class YieldScore {

    private final WeightedMean scores = new WeightedMean();

    /** One cut more that a table could judge. */
    public void add(CutYield cut) {
        scores.add(cut.score(), cut.expected());
    }

    /** The mean; nothing when no cut could be judged. */
    public OptionalDouble mean() {
        return scores.mean();
    }
}
