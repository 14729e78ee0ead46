package ribmark.scoring;

import java.util.List;
import java.util.Optional;
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
        Optional<Region> follows,
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

    /** The same measure on an animal with other vertebrae: limits that follow a region move by as much as it differs. */
    public TrimMeasure on(Vertebrae vertebrae) {
        int more = follows.map(vertebrae::more).orElse(0);
        if (more == 0) {
            return this;
        }
        String moved = (text + " Limit moved by " + (more > 0 ? "+" : "−") + Math.abs(more)
                        + ", as this animal was counted.")
                .strip();
        return new TrimMeasure(
                id,
                step,
                name,
                unit,
                division,
                moved(lowest, more),
                moved(highest, more),
                weight,
                whose,
                moved,
                standardUncertainty,
                follows,
                grounds);
    }

    private static OptionalDouble moved(OptionalDouble limit, int by) {
        return limit.isPresent() ? OptionalDouble.of(limit.getAsDouble() + by) : limit;
    }
}
