package ribmark.slips;

/** Adds up what is kept as logarithms because it may be too small to write down. */
final class Logs {

    /** A part smaller than this adds nothing a double can hold. */
    private static final double NEGLIGIBLE = -50;

    private Logs() {}

    /** The logarithm of the sum. */
    static double sum(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double log : logs) {
            sum += log - most > NEGLIGIBLE ? Math.exp(log - most) : 0;
        }
        return most + Math.log(sum);
    }

    /** What each is of the sum. */
    static double[] shares(double[] logs) {
        double sum = sum(logs);
        double[] shares = new double[logs.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = sum == Double.NEGATIVE_INFINITY ? 0 : Math.exp(logs[i] - sum);
        }
        return shares;
    }
}
