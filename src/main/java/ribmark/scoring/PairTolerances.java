package ribmark.scoring;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** How far left and right of a pair may lie apart, in percent of both together, and whose limit that is. */
public record PairTolerances(Map<String, Double> percents, String whose, List<Ground> grounds) {

    /** Nobody has set any. */
    public static final PairTolerances NONE = new PairTolerances(Map.of(), "", List.of());

    /** Keeps its own copies. */
    public PairTolerances {
        percents = Map.copyOf(percents);
        grounds = List.copyOf(grounds);
    }

    /** The tolerance of one cut, where there is one. */
    public OptionalDouble of(String cut) {
        return percents.containsKey(cut) ? OptionalDouble.of(percents.get(cut)) : OptionalDouble.empty();
    }
}
