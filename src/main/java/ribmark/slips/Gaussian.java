package ribmark.slips;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The normal density of some weights together, once for every way a line may have gone: the ways move the means and leave the
 * covariance, so it is factored once (Cholesky) and every mean is carried through the factor once.
 */
final class Gaussian {

    private static final double LOG_ROOT_TWO_PI = Math.log(2 * Math.PI) / 2;

    /** The last weight as the others let one expect it, under one way: the logarithm of how well the others fit, mean and spread. */
    record Last(double log, double mean, double sd) {

        /** How probably it lies between two weights. */
        double between(double low, double high) {
            return NormalDistribution.of(mean, sd).probability(low, high);
        }

        /** What it is on average when it is known to lie between two weights. */
        double meanBetween(double low, double high) {
            NormalDistribution normal = NormalDistribution.of(mean, sd);
            double inside = normal.probability(low, high);
            return mean + sd * sd * (normal.density(low) - normal.density(high)) / inside;
        }
    }

    private final double[][] factor;
    private final double[] mean;
    private final double[][] moved;
    private final double[] logPriors;
    private final double logScale;

    /** Takes the mean and covariance in grams, and what each way does to the mean. */
    Gaussian(double[] mean, double[][] covariance, double[][] moved, double[] logPriors) {
        this.mean = mean;
        this.factor = factor(covariance);
        this.logPriors = logPriors;
        this.moved = Arrays.stream(moved).map(this::through).toArray(double[][]::new);
        double logs = 0;
        for (int i = 0; i < mean.length; i++) {
            logs -= Math.log(factor[i][i]) + LOG_ROOT_TWO_PI;
        }
        this.logScale = logs;
    }

    private static double[][] factor(double[][] covariance) {
        double[][] lower = new double[covariance.length][covariance.length];
        for (int i = 0; i < lower.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
            }
        }
        return lower;
    }

    private double[] through(double[] vector) {
        double[] solved = new double[vector.length];
        for (int i = 0; i < solved.length; i++) {
            double sum = vector[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[i][k] * solved[k];
            }
            solved[i] = sum / factor[i][i];
        }
        return solved;
    }

    private double[] scaled(double[] grams) {
        double[] residual = new double[grams.length];
        for (int i = 0; i < residual.length; i++) {
            residual[i] = grams[i] - mean[i];
        }
        return through(residual);
    }

    /** For each way the logarithm of its prior times the density of these weights. */
    double[] logs(double[] grams) {
        double[] scaled = scaled(grams);
        double[] logs = new double[moved.length];
        for (int way = 0; way < logs.length; way++) {
            logs[way] = logPriors[way] + logScale - squares(scaled, moved[way], scaled.length) / 2;
        }
        return logs;
    }

    private static double squares(double[] one, double[] other, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double difference = one[i] - other[i];
            sum += difference * difference;
        }
        return sum;
    }

    /** For each way the last weight as the others let one expect it; what stands there for it is not looked at. */
    Last[] last(double[] grams) {
        int end = mean.length - 1;
        double[] scaled = scaled(grams);
        double withoutLast = logScale + Math.log(factor[end][end]) + LOG_ROOT_TWO_PI;
        Last[] all = new Last[moved.length];
        for (int way = 0; way < all.length; way++) {
            double log = logPriors[way] + withoutLast - squares(scaled, moved[way], end) / 2;
            double expected = grams[end] - factor[end][end] * (scaled[end] - moved[way][end]);
            all[way] = new Last(log, expected, factor[end][end]);
        }
        return all;
    }
}
