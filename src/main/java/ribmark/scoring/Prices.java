package ribmark.scoring;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a kilogram of each cut is worth to the college, in its own currency; they judge nobody. */
public record Prices(String currency, String since, String text, Map<String, BigDecimal> perKg, List<Ground> grounds) {

    /** Keeps its own copies. */
    public Prices {
        perKg = Map.copyOf(perKg);
        grounds = List.copyOf(grounds);
    }

    /** The price of one cut, where it has one. */
    public Optional<BigDecimal> of(String cut) {
        return Optional.ofNullable(perKg.get(cut));
    }
}
