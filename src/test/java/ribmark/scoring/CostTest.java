package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import ribmark.scoring.Cost.Part;

/** What a breakdown cost, cut by cut; prices and weights are invented. */
class CostTest {

    /** By hand: 0.050 kg more at 8.00 is 0.40, 0.030 kg less at 12.50 is −0.375; together 0.025. */
    @Test
    void each_cut_is_worth_its_difference_times_its_price() {
        Cost cost = new Cost("GBP", List.of(part("fores", 7310, "7260", "8.00"), part("loins", 1970, "2000", "12.50")));
        assertThat(cost.parts().get(0).value()).isEqualByComparingTo("0.40");
        assertThat(cost.parts().get(1).value()).isEqualByComparingTo("-0.375");
        assertThat(cost.total()).isEqualByComparingTo("0.025");
        assertThat(cost.total(2)).isEqualByComparingTo("0.02");
        assertThat(cost.rounded(2)).containsExactly(new BigDecimal("0.40"), new BigDecimal("-0.38"));
    }

    /** The value of what came off, less the value of what was expected, is the sum of the parts: exactly, and rounded too. */
    @RepeatedTest(5)
    void whatever_came_off_the_parts_add_up_exactly() {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        for (int lamb = 0; lamb < 400; lamb++) {
            List<Part> parts = new ArrayList<>();
            BigDecimal actual = BigDecimal.ZERO;
            BigDecimal expected = BigDecimal.ZERO;
            for (int cut = 0; cut < 1 + random.nextInt(9); cut++) {
                Part part = new Part(
                        "x",
                        "x",
                        BigDecimal.valueOf(random.nextInt(9_000)),
                        BigDecimal.valueOf(random.nextInt(9_000_000), 3),
                        BigDecimal.valueOf(random.nextInt(3_000) - 200, 2));
                parts.add(part);
                actual = actual.add(part.grams().multiply(part.perKg()).movePointLeft(3));
                expected = expected.add(part.expectedG().multiply(part.perKg()).movePointLeft(3));
            }
            Cost cost = new Cost("GBP", parts);
            assertThat(cost.total()).as("seed " + seed).isEqualByComparingTo(actual.subtract(expected));
            assertThat(cost.rounded(2).stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                    .as("seed " + seed)
                    .isEqualByComparingTo(cost.total(2));
        }
    }

    private static Part part(String cut, long grams, String expected, String perKg) {
        return new Part(cut, cut, BigDecimal.valueOf(grams), new BigDecimal(expected), new BigDecimal(perKg));
    }
}
