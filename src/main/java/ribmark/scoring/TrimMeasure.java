package ribmark.scoring;

import java.util.List;
import java.util.OptionalDouble;

/** Something measured on a piece, between which limits it should lie, and whose limits those are. */
public record TrimMeasure(
        String id,
        String step,
        String name,
        String unit,
        double division,
        OptionalDouble lowest,
        OptionalDouble highest,
        double weight,
        String whose,
        String text,
        double standardUncertainty,
        List<Ground> grounds) {

    /** Refuses a measure that cannot be read, or whose limits are crossed or missing. */
    public TrimMeasure {
        if (!(division > 0 && weight > 0 && standardUncertainty >= 0)) {
            throw new IllegalArgumentException("Measure " + id + " needs a division and a weight");
        }
        if (lowest.isEmpty() && highest.isEmpty()
                || lowest.orElse(Double.NEGATIVE_INFINITY) > highest.orElse(Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("Measure " + id + " has no limit, or crossed ones");
        }
        grounds = List.copyOf(grounds);
    }

    /** Counted things are exact. */
    public boolean isCount() {
        return unit.equals("count");
    }

    /** The weakest ground its limits stand on. */
    public Basis basis() {
        return Basis.weakest(grounds.stream().map(Ground::basis).toList());
    }
}
