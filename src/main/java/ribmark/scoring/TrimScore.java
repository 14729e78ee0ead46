package ribmark.scoring;

import java.util.List;
import java.util.OptionalDouble;

/** Every trim measure taken, and their mean; it informs and decides nothing. */
public record TrimScore(List<TrimConformity> measured) {

    /** Keeps its own copy. */
    public TrimScore {
        measured = List.copyOf(measured);
    }

    /** A hundred times the mean probability, weighted as the trim file says; nothing when nothing was measured. */
    public OptionalDouble score() {
        WeightedMean scores = new WeightedMean();
        measured.forEach(trim -> scores.add(trim.score(), trim.measure().weight()));
        return scores.mean();
    }
}
