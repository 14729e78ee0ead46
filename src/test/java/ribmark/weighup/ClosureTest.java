package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;

/** Balances reconciled by weighted least squares, against examples from outside; recomputed in Python, R and Apache Commons Math. */
class ClosureTest {

    /**
     * Teaching module "Basic concepts in data reconciliation" (North Carolina State University and University of Ottawa, 2003), a network
     * of cooling water, as a public course notebook prints it: 103.24010825, 65.41556049, 37.82454776. The flows as printed hold a gross
     * error: 221.3 is far beyond the limit of 9.49, so nothing may be adjusted.
     */
    @Test
    void a_network_with_a_gross_error_is_refused() {
        double[][] balances = {{1, -1, -1, 0, 0, 0}, {0, 1, 0, -1, 0, 0}, {0, 0, 1, 0, -1, 0}, {0, 0, 0, 1, 1, -1}};
        double[] flows = {110.5, 60.8, 35.0, 68.9, 38.6, 101.4};
        double[] variances = {0.6724, 0.2809, 0.2116, 0.5041, 0.2025, 1.44};
        Closure closure = closure(balances, flows, variances);
        double[] reconciled = {
            103.24010824868768,
            65.41556048765828,
            37.82454776102939,
            65.41556048765828,
            37.82454776102939,
            103.24010824868768
        };
        for (int i = 0; i < flows.length; i++) {
            assertThat(flows[i] - closure.adjustment(i)).isCloseTo(reconciled[i], within(1e-9));
        }
        assertThat(closure.globalTest()).isCloseTo(221.3343113555849, within(1e-6));
        assertThat(closure.globalTest()).isGreaterThan(limit(4));
    }

    /** Figures our own: a whole of 20.480 kg and six parts that miss it by 0.020 kg; each moves in proportion to its variance. */
    @Test
    void a_small_gap_is_shared_out_by_variance_and_may_be_adjusted() {
        double[][] balances = {{1, -1, -1, -1, -1, -1, -1}};
        double[] weights = {20.48, 4.92, 3.61, 2.18, 5.05, 3.29, 1.41};
        double[] variances = {0.000144, 0.000036, 0.000036, 0.000036, 0.000036, 0.000036, 0.000036};
        Closure closure = closure(balances, weights, variances);
        double[] reconciled = {20.472, 4.922, 3.612, 2.182, 5.052, 3.292, 1.412};
        for (int i = 0; i < weights.length; i++) {
            assertThat(weights[i] - closure.adjustment(i)).isCloseTo(reconciled[i], within(1e-9));
        }
        assertThat(closure.globalTest()).isCloseTo(1.111111111111286, within(1e-9));
        assertThat(closure.globalTest()).isLessThan(limit(1));
    }

    private static Closure closure(double[][] balances, double[] values, double[] variances) {
        double[] residuals = new double[balances.length];
        double[][] signs = new double[values.length][balances.length];
        for (int row = 0; row < balances.length; row++) {
            for (int entry = 0; entry < values.length; entry++) {
                residuals[row] += balances[row][entry] * values[entry];
                signs[entry][row] = balances[row][entry];
            }
        }
        return new Closure(signs, residuals, variances, new double[balances.length]);
    }

    private static double limit(int balances) {
        return ChiSquaredDistribution.of(balances).inverseCumulativeProbability(0.95);
    }
}
