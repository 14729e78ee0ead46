package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrimConformityTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    /**
     * JCGM 106:2012, section 7, voltage and burst strength (figures from memory, printed there as 0.92 and 0.955); recomputed to these
     * digits in Python, R and Apache Commons Math.
     */
    @Test
    void probability_of_conformity_at_one_limit() {
        assertThat(probability(NONE, OptionalDouble.of(-5.4), 0.05, -5.47)).isCloseTo(0.9192433407662273, within(1e-9));
        assertThat(probability(OptionalDouble.of(490), NONE, 10, 507)).isCloseTo(0.955434537241457, within(1e-9));
    }

    /** JCGM 106:2012, guarded acceptance: limit 20, u 0.15; figures our own, recomputed in Python, R and Apache Commons Math. */
    @ParameterizedTest
    @CsvSource({
        "19.7, 0.9772498680518211, WITHIN",
        "19.75, 0.9522096477271853, WITHIN",
        "19.76, 0.9452007083004409, TOO_CLOSE_TO_CALL",
        "19.9, 0.7475074624530801, TOO_CLOSE_TO_CALL"
    })
    void within_is_called_from_95_percent(double value, double probability, Verdict verdict) {
        TrimConformity trim = trim(NONE, OptionalDouble.of(20), 0.15, value);
        assertThat(trim.probability()).isCloseTo(probability, within(1e-9));
        assertThat(trim.verdict()).isEqualTo(verdict);
    }

    /** By hand: 5 mm read to 1 mm against at most 5: a half. Between 0 and 15: 0.3 mm is Φ(0.3 √12) = Φ(1.0392) = 0.85065. */
    @Test
    void a_reading_on_its_limit_is_an_even_chance() {
        TrimMeasure fat = measure("mm", NONE, OptionalDouble.of(5), 0);
        TrimConformity onTheLimit = new TrimConformity(fat, 5, 1);
        assertThat(onTheLimit.score()).isCloseTo(50, within(1e-9));
        assertThat(onTheLimit.verdict()).isEqualTo(Verdict.TOO_CLOSE_TO_CALL);
        TrimMeasure clearance = measure("mm", OptionalDouble.of(0), OptionalDouble.of(15), 0);
        assertThat(new TrimConformity(clearance, 0.3, 1).probability()).isCloseTo(0.85065, within(5e-6));
    }

    /** JCGM 106:2012, guarded acceptance at a risk of 5 %: the guard is 1.645 u = 0.2467280440427208, so 19.753271955957278 is accepted last. */
    @Test
    void the_last_value_called_within_is_the_guarded_limit() {
        double last = 19.753271955957278;
        assertThat(20 - last).isCloseTo(0.2467280440427208, within(1e-9));
        assertThat(trim(NONE, OptionalDouble.of(20), 0.15, last).probability()).isCloseTo(0.95, within(1e-9));
        assertThat(trim(NONE, OptionalDouble.of(20), 0.15, last - 1e-6).verdict())
                .isEqualTo(Verdict.WITHIN);
        assertThat(trim(NONE, OptionalDouble.of(20), 0.15, last + 1e-6).verdict())
                .isEqualTo(Verdict.TOO_CLOSE_TO_CALL);
    }

    @Test
    void how_far_beyond_its_nearer_limit_a_reading_lies() {
        TrimMeasure clearance = measure("mm", OptionalDouble.of(0), OptionalDouble.of(15), 0);
        assertThat(new TrimConformity(clearance, 17, 1).beyond()).isEqualTo(2);
        assertThat(new TrimConformity(clearance, -3, 1).beyond()).isEqualTo(3);
        assertThat(new TrimConformity(clearance, 12, 1).beyond()).isEqualTo(-3);
    }

    @Test
    void a_count_is_exact() {
        TrimMeasure ribs = measure("count", OptionalDouble.of(6), OptionalDouble.of(6), 0);
        assertThat(new TrimConformity(ribs, 6, 1).verdict()).isEqualTo(Verdict.WITHIN);
        assertThat(new TrimConformity(ribs, 7, 1).score()).isZero();
        assertThat(new TrimConformity(ribs, 5, 1).verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    void the_trim_score_is_weighted_as_the_file_says() {
        TrimMeasure once = measure("count", NONE, OptionalDouble.of(0), 0);
        TrimMeasure thrice = new TrimMeasure(
                "y", "s", "y", "count", 1, NONE, OptionalDouble.of(0), 3, "ours", "", 0, Optional.empty(), List.of());
        TrimScore score = new TrimScore(List.of(new TrimConformity(once, 0, 1), new TrimConformity(thrice, 1, 1)));
        assertThat(score.score().getAsDouble()).isEqualTo(25);
        assertThat(new TrimScore(List.of()).score()).isEmpty();
    }

    private static double probability(OptionalDouble lowest, OptionalDouble highest, double u, double value) {
        return trim(lowest, highest, u, value).probability();
    }

    private static TrimConformity trim(OptionalDouble lowest, OptionalDouble highest, double u, double value) {
        return new TrimConformity(measure("mm", lowest, highest, u), value, 1e-6);
    }

    private static TrimMeasure measure(String unit, OptionalDouble lowest, OptionalDouble highest, double u) {
        return new TrimMeasure("x", "s", "x", unit, 1, lowest, highest, 1, "ours", "", u, Optional.empty(), List.of());
    }
}
