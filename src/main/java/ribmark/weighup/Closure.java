package ribmark.weighup;

import java.util.List;
import ribmark.scoring.ReferenceTable.Losses;

/**
 * The linear algebra of several balances at once: each whole less its parts less its expected loss should be nothing. {@code signs} says
 * for every entry how it stands in every balance, {@code residuals} what each balance leaves, {@code variances} how unsure each entry is.
 */
final class Closure {

    private final double[][] signs;
    private final double[] residuals;
    private final double[] variances;
    private final double[][] inverse;

    Closure(double[][] signs, double[] residuals, double[] variances, double[] lossVariances) {
        this.signs = signs;
        this.residuals = residuals;
        this.variances = variances;
        double[][] covariance = new double[residuals.length][residuals.length];
        for (int row = 0; row < residuals.length; row++) {
            covariance[row][row] = lossVariances[row];
            for (int column = 0; column < residuals.length; column++) {
                covariance[row][column] += shared(row, column);
            }
        }
        this.inverse = SmallMatrix.inverse(covariance);
    }

    /** The closure of some weighed entries in some balances. */
    static Closure of(List<Weighed> weighed, List<Balance> balances, Losses losses) {
        double[] residuals = new double[balances.size()];
        double[] lossVariances = new double[balances.size()];
        for (int row = 0; row < balances.size(); row++) {
            double whole = balances.get(row).wholeG().doubleValue();
            boolean carcase = balances.get(row).of().equals(Balances.CARCASE);
            residuals[row] = balances.get(row).gapG().doubleValue() - losses.expectedG(whole, carcase);
            lossVariances[row] = losses.varianceG2(whole, carcase);
        }
        double[][] signs = weighed.stream()
                .map(entry -> balances.stream().mapToDouble(entry::signIn).toArray())
                .toArray(double[][]::new);
        double[] variances = weighed.stream().mapToDouble(Weighed::varianceG2).toArray();
        return new Closure(signs, residuals, variances, lossVariances);
    }

    private double shared(int row, int column) {
        double sum = 0;
        for (int entry = 0; entry < variances.length; entry++) {
            sum += signs[entry][row] * signs[entry][column] * variances[entry];
        }
        return sum;
    }

    /** Chi-squared distributed, with a degree of freedom a balance, when nothing is wrong. */
    double globalTest() {
        double sum = 0;
        for (int row = 0; row < residuals.length; row++) {
            sum += residuals[row] * multiplier(row);
        }
        return sum;
    }

    private double multiplier(int row) {
        double sum = 0;
        for (int column = 0; column < residuals.length; column++) {
            sum += inverse[row][column] * residuals[column];
        }
        return sum;
    }

    /** How much an entry has to give way so that everything agrees. */
    double adjustment(int entry) {
        double sum = 0;
        for (int row = 0; row < residuals.length; row++) {
            sum += signs[entry][row] * multiplier(row);
        }
        return variances[entry] * sum;
    }

    /** The same in spreads of the adjustment. */
    double z(int entry) {
        double sum = 0;
        for (int row = 0; row < residuals.length; row++) {
            for (int column = 0; column < residuals.length; column++) {
                sum += signs[entry][row] * inverse[row][column] * signs[entry][column];
            }
        }
        return Math.abs(adjustment(entry)) / (variances[entry] * Math.sqrt(sum));
    }
}
