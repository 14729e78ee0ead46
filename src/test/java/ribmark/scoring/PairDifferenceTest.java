package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.scoring.CutYield.Mass;

/** Left against right, worked by hand; the rule is that of JCGM 106, the tolerance the college's own. */
class PairDifferenceTest {

    /**
     * Scale of 5 g, 2 g: u² = 25/12 + 4 = 6.08333 a reading, so u = √12.16667 = 3.48807 g between two. Of 2,000 g together 5 % are 100 g:
     * 93 apart is 7/3.48807 = 2.00684 inside, Φ = 0.97762; 100 apart is an even chance; 107 is 1 − 0.97762.
     */
    @ParameterizedTest
    @CsvSource({
        "1046.5, 953.5, 0.97762, WITHIN",
        "1050, 950, 0.5, TOO_CLOSE_TO_CALL",
        "950, 1050, 0.5, TOO_CLOSE_TO_CALL",
        "1053.5, 946.5, 0.02238, OUTSIDE",
        "1000, 1000, 1, WITHIN"
    })
    void left_and_right_may_lie_apart_by_their_tolerance(
            double left, double right, double probability, Verdict verdict) {
        PairDifference pair = new PairDifference(new Mass(left, 25.0 / 12 + 4), new Mass(right, 25.0 / 12 + 4), 5);
        assertThat(pair.toleranceG()).isCloseTo(100, within(1e-9));
        assertThat(pair.probability()).isCloseTo(probability, within(5e-6));
        assertThat(pair.verdict()).isEqualTo(verdict);
    }

    @Test
    void the_difference_is_told_in_percent_of_both() {
        PairDifference pair = new PairDifference(new Mass(900, 0), new Mass(1100, 0), 5);
        assertThat(pair.percent()).isEqualTo(-10);
        assertThat(pair.verdict()).isEqualTo(Verdict.OUTSIDE);
    }
}
