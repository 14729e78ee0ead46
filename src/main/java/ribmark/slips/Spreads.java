package ribmark.slips;

import java.util.Arrays;
import java.util.Optional;
import ribmark.basics.Refused;

/**
 * The variances of the cuts as they would be if no sum held them together. Percentages that always add up vary less than their
 * makings do: a cut with makings t among a total S keeps the variance t − t²/S, which has to be the square of the table's spread.
 */
final class Spreads {

    private static final int HALVINGS = 200;

    private final double[] variances;
    private final int widest;

    private Spreads(double[] variances) {
        this.variances = variances;
        int at = 0;
        for (int i = 1; i < variances.length; i++) {
            at = variances[i] > variances[at] ? i : at;
        }
        this.widest = at;
    }

    /** Refuses spreads no closed sum can have: one larger than the others together can make up. */
    static double[] unclosed(double[] sds) {
        whyNot(sds).ifPresent(why -> {
            throw new Refused(why);
        });
        return new Spreads(squares(sds)).solve();
    }

    /** Why no closed sum can have these spreads, or nothing when one can. */
    static Optional<String> whyNot(double[] sds) {
        Spreads spreads = new Spreads(squares(sds));
        double widest = spreads.variances[spreads.widest];
        boolean overHalf = spreads.excess(4 * widest, false) < 0;
        return overHalf && 2 * widest >= Arrays.stream(spreads.variances).sum()
                ? Optional.of(
                        "One cut spreads more than all others together can make up, so their shares cannot add up.")
                : Optional.empty();
    }

    private static double[] squares(double[] sds) {
        return Arrays.stream(sds).map(sd -> sd * sd).toArray();
    }

    private double[] solve() {
        double least = 4 * variances[widest];
        boolean overHalf = excess(least, false) < 0;
        double total = root(least, overHalf);
        double[] shares = shares(total, overHalf);
        return Arrays.stream(shares).map(share -> share * total).toArray();
    }

    private double root(double least, boolean overHalf) {
        boolean sign = excess(least, overHalf) < 0;
        double low = least;
        double high = 2 * least;
        while (excess(high, overHalf) < 0 == sign) {
            high *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (excess(middle, overHalf) < 0 == sign) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double excess(double total, boolean overHalf) {
        return Arrays.stream(shares(total, overHalf)).sum() - 1;
    }

    /** What each cut makes up of the total; the widest may make up more than half. */
    private double[] shares(double total, boolean overHalf) {
        double[] shares = new double[variances.length];
        for (int i = 0; i < shares.length; i++) {
            double root = Math.sqrt(Math.max(0, 1 - 4 * variances[i] / total));
            shares[i] = (overHalf && i == widest ? 1 + root : 1 - root) / 2;
        }
        return shares;
    }
}
