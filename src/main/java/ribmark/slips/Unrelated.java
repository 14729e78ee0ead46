package ribmark.slips;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Something else: a weight that has nothing to do with its piece, or with the carcase. It may be anything up to the carcase's weight. */
final class Unrelated {

    /** The carcase's own weight is summed over in steps of half a spread, six spreads to either side. */
    private static final int STEPS = 12;

    private static final double STEP = 0.5;

    private final Block block;
    private final double logPrior;

    private Unrelated(Block block) {
        this.block = block;
        this.logPrior = Possibility.logPrior(block)
                - Math.log(block.entries().size() + 1)
                - Math.log(block.asTyped().coldG());
    }

    static Stream<Possibility> all(Block block) {
        Unrelated unrelated = new Unrelated(block);
        Stream<Possibility> pieces =
                IntStream.range(0, block.entries().size()).boxed().flatMap(unrelated::piece);
        return block.entries().isEmpty() ? pieces : Stream.concat(pieces, Stream.of(unrelated.carcase()));
    }

    /** Whatever it may weigh, a piece weighs more than nothing beside what else was typed for its cut. */
    private Stream<Possibility> piece(int entry) {
        Weights typed = block.asTyped();
        int place = block.placeOf(entry);
        Foretold foretold = block.foretold(place);
        double others = block.grams(typed, new int[] {place})[0] - typed.net()[entry];
        double most = others + typed.coldG();
        double fit = foretold.logBetween(others, most);
        if (fit == Double.NEGATIVE_INFINITY) {
            return Stream.empty();
        }
        double gross = foretold.meanBetween(others, most)
                - others
                + block.entries().get(entry).trayG();
        Weights believed =
                block.restored(entry, block.entries().get(entry).gross().grams(), false);
        double log = logPrior + fit + block.logOfCarcase(typed.coldG()) + block.aside(believed);
        return Stream.of(Possibility.of(
                Cause.SOMETHING_ELSE, entry, Optional.of(block.shown(entry, gross)), log, typed.without(entry)));
    }

    private Possibility carcase() {
        Weights typed = block.asTyped();
        int[] at = block.observed(typed);
        double[] grams = block.grams(typed, at);
        double share = Arrays.stream(at).mapToDouble(block.lamb()::mean).sum() / 100;
        double centre = Arrays.stream(grams).sum() / share;
        double spread = spread(at, centre);
        double[] logs = new double[2 * STEPS + 1];
        double[] carcases = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            carcases[i] = centre * Math.exp((i - STEPS) * STEP * spread);
            Gaussian gaussian = block.gaussian(at, block.variances(typed), carcases[i], 0);
            logs[i] = Logs.sum(gaussian.logs(grams))
                    + block.logOfCarcase(carcases[i])
                    + Math.log(STEP * spread * carcases[i]);
        }
        return carcase(logs, carcases);
    }

    /** How far the pieces together may lie from their expected share, as a part of it. */
    private double spread(int[] at, double carcaseG) {
        double variance = 0;
        double mean = 0;
        for (int one : at) {
            mean += block.lamb().mean(one);
            for (int other : at) {
                variance += block.lamb().covariance(one, other);
            }
        }
        double read = Arrays.stream(block.variances(block.asTyped())).sum();
        return Math.sqrt(variance + read * 10_000 / (carcaseG * carcaseG)) / mean;
    }

    private Possibility carcase(double[] logs, double[] carcases) {
        double[] shares = Logs.shares(logs);
        double cold = 0;
        for (int i = 0; i < shares.length; i++) {
            cold += shares[i] * carcases[i];
        }
        int entry = block.entries().size();
        double read = cold / block.whole().toCold().multiplyBy();
        Weights meant = block.restored(entry, read, false);
        double log = logPrior + Logs.sum(logs) + block.aside(meant);
        return Possibility.of(Cause.SOMETHING_ELSE, entry, Optional.of(block.shown(entry, read)), log, meant);
    }
}
