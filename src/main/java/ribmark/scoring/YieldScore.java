package ribmark.scoring;

import java.util.List;
import java.util.OptionalDouble;

/** The cuts of one weigh-up that a table could judge, and their mean; it informs and decides nothing. */
public record YieldScore(List<CutYield> cuts) {

    /** Keeps its own copy. */
    public YieldScore {
        cuts = List.copyOf(cuts);
    }

    /** The mean of the scores, each counting by its expected share; nothing when no cut could be judged. */
    public OptionalDouble score() {
        double weights = cuts.stream().mapToDouble(CutYield::expected).sum();
        double sum =
                cuts.stream().mapToDouble(cut -> cut.expected() * cut.score()).sum();
        return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
    }
}
