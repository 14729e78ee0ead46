package ribmark.weighing;

import java.util.List;
import ribmark.scoring.ReferenceTable.Losses;

/** The linear algebra of several balances at once: each whole less its parts less its expected loss should be nothing. */
final class Closure {

    private final List<Weighed> weighed;
    private final List<Balance> balances;
    private final double[] residuals;
    private final double[][] inverse;

    Closure(List<Weighed> weighed, List<Balance> balances, Losses losses) {
        this.weighed = weighed;
        this.balances = balances;
        this.residuals = new double[balances.size()];
        double[][] covariance = new double[balances.size()][balances.size()];
        for (int row = 0; row < balances.size(); row++) {
            double whole = balances.get(row).wholeG().doubleValue();
            boolean carcase = balances.get(row).of().equals(Balances.CARCASE);
            residuals[row] = balances.get(row).gapG().doubleValue() - losses.expectedG(whole, carcase);
            covariance[row][row] = losses.varianceG2(whole, carcase);
            for (int column = 0; column < balances.size(); column++) {
                covariance[row][column] += shared(balances.get(row), balances.get(column));
            }
        }
        this.inverse = SmallMatrix.inverse(covariance);
    }

    private double shared(Balance one, Balance other) {
        return weighed.stream()
                .mapToDouble(w -> w.signIn(one) * w.signIn(other) * w.varianceG2())
                .sum();
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
            sum += sign(entry, row) * multiplier(row);
        }
        return weighed.get(entry).varianceG2() * sum;
    }

    /** The same in spreads of the adjustment. */
    double z(int entry) {
        double sum = 0;
        for (int row = 0; row < residuals.length; row++) {
            for (int column = 0; column < residuals.length; column++) {
                sum += sign(entry, row) * inverse[row][column] * sign(entry, column);
            }
        }
        return Math.abs(adjustment(entry)) / (weighed.get(entry).varianceG2() * Math.sqrt(sum));
    }

    private int sign(int entry, int row) {
        return weighed.get(entry).signIn(balances.get(row));
    }
}
