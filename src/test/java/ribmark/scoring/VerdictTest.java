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

    /**
     * CCQM-K30, lead in wine (Metrologia 45:08001, 2008): results with their expanded uncertainties against the reference 2.99 with
     * U 0.06, as carried in the R package metRology; zeta recomputed in Python and R.
     */
    @ParameterizedTest
    @CsvSource({
        "1.62, 2, 0.088, -25.72571499196228, OUTSIDE",
        "2.893, 2.13, 0.044, -2.6630639158696523, QUESTIONABLE",
        "2.936, 2, 0.025, -1.6615384615384698, WITHIN",
        "2.94, 2, 0.033, -1.4603597887944195, WITHIN",
        "2.96, 2.4, 0.08, -0.6689647316224553, WITHIN",
        "2.98, 1.99, 0.2, -0.09534298684650327, WITHIN",
        "3.0, 2, 0.1, 0.17149858514250518, WITHIN",
        "3.001, 2, 0.136, 0.14800140907796996, WITHIN",
        "3.07, 2, 0.17, 0.8875203139603624, WITHIN",
        "3.13, 2, 0.12, 2.086996778999799, QUESTIONABLE",
        "7.71, 2, 1.98, 4.765489258147677, OUTSIDE"
    })
    void zeta_is_that_of_an_interlaboratory_comparison(
            double result, double coverage, double expanded, double zeta, Verdict verdict) {
        var reference = new ReferenceTable.Row("x", "x", false, 0, "", 2.99, 0.06 / 2, List.of(), List.of());
        CutYield compared = new CutYield(reference, result, expanded / coverage);
        assertThat(compared.zeta()).isCloseTo(zeta, within(1e-7));
        assertThat(Verdict.ofZeta(compared.zeta())).isEqualTo(verdict);
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
        YieldScore score = new YieldScore();
        assertThat(score.mean()).isEmpty();
        score.add(large);
        score.add(small);
        assertThat(score.mean().getAsDouble()).isCloseTo(87.5, within(1e-9));
    }

    private static CutYield yieldOf(double grams, double varianceG2) {
        return CutYield.of(row(10), new Mass(grams, varianceG2), new Mass(20_000, 0));
    }

    private static ReferenceTable.Row row(double expected) {
        return new ReferenceTable.Row("x", "x", true, 0.02, "", expected, 1, List.of(), List.of());
    }
}
