package ribmark.bench;

import java.util.List;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighup.Reading;
import ribmark.weighup.WeighUp;

/**
 * The floor: the numbers of one weigh-up written down by hand over plain arrays, for this one table, a cold carcase with its kidneys
 * in and every piece at its moment. It looks nothing up, keeps no words and makes no objects.
 */
final class HandLoop {

    private static final int LEFT = 1;
    private static final int RIGHT = 2;

    private final double[] expected = new double[Lambs.TABLE.rows().size()];
    private final double[] sd = new double[expected.length];
    private final double[] sideSd = new double[expected.length];

    private final double[] grams = new double[expected.length];
    private final double[] variance = new double[expected.length];
    private final int[] sides = new int[expected.length];

    final double[] expects = new double[expected.length];
    final double[] percent = new double[expected.length];
    final double[] uncertainty = new double[expected.length];
    final double[] zeta = new double[expected.length];
    final double[] score = new double[expected.length];
    final int[] verdict = new int[expected.length];
    double yieldScore;
    double gap;
    double gapUncertainty;
    int balance;

    /** A weigh-up as numbers: which row each piece is of, on which side, its grams and variance. */
    record Input(double carcase, double carcaseVariance, int[] row, int[] side, double[] grams, double[] variance) {

        static Input of(WeighUp weighUp) {
            List<Reading> all = weighUp.readings();
            List<String> cuts = Lambs.TABLE.rows().stream().map(Row::cut).toList();
            return new Input(
                    weighUp.carcase().weight().grams(),
                    weighUp.carcase().scale().varianceG2(),
                    all.stream().mapToInt(r -> cuts.indexOf(r.cut())).toArray(),
                    all.stream().mapToInt(HandLoop::side).toArray(),
                    all.stream().mapToDouble(r -> r.net().grams()).toArray(),
                    all.stream().mapToDouble(r -> r.mass().varianceG2()).toArray());
        }
    }

    private static int side(Reading reading) {
        return switch (reading.side()) {
            case LEFT -> LEFT;
            case RIGHT -> RIGHT;
            default -> LEFT | RIGHT;
        };
    }

    HandLoop() {
        for (int i = 0; i < expected.length; i++) {
            Row row = Lambs.TABLE.rows().get(i);
            expected[i] = row.expected();
            sd[i] = row.sd();
            sideSd[i] = row.oneSide().sd();
        }
    }

    void score(Input of) {
        double parts = 0;
        double partsVariance = 0;
        for (int i = 0; i < expected.length; i++) {
            grams[i] = 0;
            variance[i] = 0;
            sides[i] = 0;
        }
        for (int i = 0; i < of.row.length; i++) {
            grams[of.row[i]] += of.grams[i];
            variance[of.row[i]] += of.variance[i];
            sides[of.row[i]] |= of.side[i];
            parts += of.grams[i];
            partsVariance += of.variance[i];
        }
        balance(of, parts, partsVariance);
        cuts(of);
    }

    private void balance(Input of, double parts, double partsVariance) {
        gap = of.carcase - parts;
        gapUncertainty = 2 * Math.sqrt(of.carcaseVariance + partsVariance);
        boolean complete = true;
        for (int both : sides) {
            complete &= both == (LEFT | RIGHT);
        }
        double percentGap = Math.rint(100 * gap / of.carcase * 1e9) / 1e9;
        if (!complete) {
            balance = 0;
        } else if (gap < -gapUncertainty || percentGap > 2) {
            balance = 3;
        } else {
            balance = percentGap > 1 ? 2 : 1;
        }
    }

    private void cuts(Input of) {
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            if (sides[i] != 0) {
                boolean whole = sides[i] == (LEFT | RIGHT);
                expects[i] = whole ? expected[i] : expected[i] / 2;
                double spread = whole ? sd[i] : sideSd[i];
                double share = grams[i] / of.carcase;
                percent[i] = 100 * share;
                uncertainty[i] = 100 * Math.sqrt(variance[i] + share * share * of.carcaseVariance) / of.carcase;
                zeta[i] = (percent[i] - expects[i]) / Math.hypot(spread, uncertainty[i]);
                verdict[i] = verdict(Math.abs(percent[i] - expects[i]), spread, 2 * uncertainty[i], Math.abs(zeta[i]));
                score[i] = Math.max(0, Math.min(100, 100 - 50 * (Math.abs(zeta[i]) - 1)));
                weights += expects[i];
                sum += expects[i] * score[i];
            }
        }
        yieldScore = balance == 3 ? Double.NaN : sum / weights;
    }

    private static int verdict(double distance, double spread, double doubt, double zeta) {
        if (Math.abs(distance - 2 * spread) <= doubt || Math.abs(distance - 3 * spread) <= doubt) {
            return 3;
        }
        double rounded = Math.rint(zeta * 1e9) / 1e9;
        return rounded <= 2 ? 0 : rounded < 3 ? 1 : 2;
    }
}
