package ribmark.slips;

import java.util.Arrays;

/**
 * The weights of every entry as they stand or as they may have been meant, in grams: net, with the variance of their reading,
 * whether they count, and whether the scale could have shown them. The carcase's own stands last.
 */
record Weights(double[] net, double[] variance, boolean[] counts, boolean[] unshown) {

    private Weights copy() {
        return new Weights(net.clone(), variance.clone(), counts.clone(), unshown.clone());
    }

    int carcase() {
        return net.length - 1;
    }

    double coldG() {
        return net[carcase()];
    }

    double coldVarianceG2() {
        return variance[carcase()];
    }

    /** The same with one entry restored. */
    Weights with(int entry, double netG, double varianceG2, boolean notShown) {
        Weights other = copy();
        other.net[entry] = netG;
        other.variance[entry] = varianceG2;
        other.unshown[entry] = notShown;
        return other;
    }

    /** The same with two entries exchanged, each with the scale it was read on. */
    Weights exchanged(int one, int two) {
        return with(one, net[two], variance[two], unshown[two]).with(two, net[one], variance[one], unshown[one]);
    }

    /** The same with one entry struck. */
    Weights without(int entry) {
        Weights other = copy();
        other.counts[entry] = false;
        other.unshown[entry] = false;
        return other;
    }

    /** How many stand there that no scale of theirs can show. */
    int countUnshown() {
        int count = 0;
        for (boolean one : unshown) {
            count += one ? 1 : 0;
        }
        return count;
    }

    boolean allWeighSomething() {
        return Arrays.stream(net).allMatch(n -> n > 0);
    }
}
