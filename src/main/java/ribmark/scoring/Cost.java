package ribmark.scoring;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a breakdown was worth beside the one the table expects, cut by cut. Nothing is rounded, so the parts are exactly the whole; rounded
 * for reading, they still are.
 */
public record Cost(String currency, List<Part> parts) {

    private static final BigDecimal GRAMS = BigDecimal.valueOf(1000);

    /** One cut: what came off, what was expected, both in grams, and the price of a kilogram. */
    public record Part(String cut, String name, BigDecimal grams, BigDecimal expectedG, BigDecimal perKg) {

        /** How much more came off than expected; less than nothing where it was less. */
        public BigDecimal moreG() {
            return grams.subtract(expectedG);
        }

        /** What that is worth. */
        public BigDecimal value() {
            return moreG().multiply(perKg).divide(GRAMS);
        }
    }

    /** Keeps its own copy. */
    public Cost {
        parts = List.copyOf(parts);
    }

    /** What all cuts together were worth more, or with a minus less, than expected. */
    public BigDecimal total() {
        return parts.stream().map(Part::value).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The total to so many places. */
    public BigDecimal total(int places) {
        return total().setScale(places, RoundingMode.HALF_EVEN);
    }

    /** The value of each part to so many places, so that they add up to the rounded total: what is over goes to the largest remainders. */
    public List<BigDecimal> rounded(int places) {
        List<BigDecimal> down = new ArrayList<>();
        parts.forEach(part -> down.add(part.value().setScale(places, RoundingMode.FLOOR)));
        BigDecimal sum = down.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal step = BigDecimal.ONE.movePointLeft(places);
        int over = total(places).subtract(sum).divide(step).intValueExact();
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparing(
                                (Integer at) -> parts.get(at).value().subtract(down.get(at)))
                        .reversed())
                .limit(over)
                .forEach(at -> down.set(at, down.get(at).add(step)));
        return down;
    }
}
