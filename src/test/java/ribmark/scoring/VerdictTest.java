package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.scoring.CutYield.Mass;

class VerdictTest {

    /** ISO 13528, classes of z scores: up to 2, between 2 and 3, from 3; the values recomputed in Python and R. */
    @ParameterizedTest
    @CsvSource({
        "0, WITHIN",
        "1.99, WITHIN",
        "2.0, WITHIN",
        "2.0000001, QUESTIONABLE",
        "2.5, QUESTIONABLE",
        "2.9999999, QUESTIONABLE",
        "3.0, OUTSIDE",
        "-2.0, WITHIN",
        "-2.1, QUESTIONABLE",
        "-3.0, OUTSIDE",
        "7.3, OUTSIDE"
    })
    void classes_at_their_boundaries(double zeta, Verdict verdict) {
        assertThat(Verdict.ofZeta(zeta)).isEqualTo(verdict);
    }

    @Test
    void the_tenth_decimal_does_not_decide() {
        assertThat(Verdict.ofZeta(2.0000000004)).isEqualTo(Verdict.WITHIN);
        assertThat(Verdict.ofZeta(2.9999999996)).isEqualTo(Verdict.OUTSIDE);
    }

    /** Mean 10, spread 1, carcase 20 kg exactly known; the piece alone has a doubt of 5 g, that is 0.025 points, U = 0.05. */
    @ParameterizedTest
    @CsvSource({
        "2380, WITHIN", // 11.90 %: limit 12 is 0.10 away
        "2391, TOO_CLOSE_TO_CALL", // 11.955 %: 0.045 away
        "2409, TOO_CLOSE_TO_CALL", // 12.045 %
        "2411, QUESTIONABLE", // 12.055 %
        "2588, QUESTIONABLE", // 12.94 %
        "2592, TOO_CLOSE_TO_CALL", // 12.96 %
        "2611, OUTSIDE", // 13.055 %
        "1591, TOO_CLOSE_TO_CALL", // 7.955 %: below, the same
        "1389, OUTSIDE" // 6.945 %
    })
    void a_class_limit_within_the_scales_own_doubt_is_too_close_to_call(double grams, Verdict verdict) {
        assertThat(yieldOf(grams, 25).verdict()).isEqualTo(verdict);
    }

    /** Full up to one spread, 50 at two, nothing from three. */
    @ParameterizedTest
    @CsvSource({"2000, 100", "2200, 100", "2300, 75", "2400, 50", "2500, 25", "2600, 0", "2700, 0", "1700, 75"})
    void the_score_falls_straight_from_one_spread_to_three(double grams, double score) {
        assertThat(yieldOf(grams, 0).score()).isCloseTo(score, within(1e-9));
    }

    @Test
    void the_yield_score_counts_each_cut_by_its_expected_share() {
        CutYield large = new CutYield(row(30), 30, 0);
        CutYield small = new CutYield(row(10), 12, 0);
        assertThat(new YieldScore(List.of(large, small)).score().getAsDouble()).isCloseTo(87.5, within(1e-9));
        assertThat(new YieldScore(List.of()).score()).isEmpty();
    }

    private static CutYield yieldOf(double grams, double varianceG2) {
        return CutYield.of(row(10), new Mass(grams, varianceG2), new Mass(20_000, 0));
    }

    private static ReferenceTable.Row row(double expected) {
        return new ReferenceTable.Row("x", "x", true, 0.02, "", expected, 1, List.of(), List.of());
    }
}
