package ribmark.slips;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import ribmark.basics.Weight;
import ribmark.scoring.ReferenceTable.Row;

/** Everything weighed of one carcase, and how well any weights for it fit a lamb cut without a slip. */
final class Block {

    private static final double WHOLE_STEP = 1e-6;

    private final Model model;
    private final Whole whole;
    private final List<Typed> entries;
    private final Lamb lamb;
    private final List<Departure> departures;
    private final double[] logPriors;
    private final int[] places;
    private final Weights asTyped;
    private final NormalDistribution carcases;
    private final Gaussian usual;
    private final Foretold[] foretold;

    Block(Model model, List<Row> rows, Whole whole, List<Typed> entries) {
        this.model = model;
        this.whole = whole;
        this.entries = entries;
        this.lamb = Lamb.weighedAs(entries, rows, model.loss());
        this.departures = Departure.all(model, lamb);
        this.logPriors =
                departures.stream().mapToDouble(d -> Math.log(d.prior())).toArray();
        this.places = entries.stream().mapToInt(lamb::placeOf).toArray();
        this.asTyped = typed();
        this.carcases = NormalDistribution.of(
                1000 * model.carcase().meanKg(), 1000 * model.carcase().sdKg());
        this.foretold = new Foretold[lamb.places().size()];
        this.usual = gaussian(observed(asTyped), variances(asTyped), asTyped.coldG(), asTyped.coldVarianceG2());
    }

    private Weights typed() {
        int count = entries.size() + 1;
        Weights weights = new Weights(new double[count], new double[count], new boolean[count], new boolean[count]);
        Arrays.fill(weights.counts(), true);
        for (int i = 0; i < entries.size(); i++) {
            Typed entry = entries.get(i);
            weights.net()[i] = entry.gross().grams() - entry.trayG();
            weights.variance()[i] = entry.varianceG2();
            weights.unshown()[i] = isUnshown(i, entry.gross().grams());
        }
        double read = whole.read().grams();
        weights.net()[count - 1] = whole.coldG(read);
        weights.variance()[count - 1] = whole.varianceG2(read);
        weights.unshown()[count - 1] = isUnshown(count - 1, read);
        return weights;
    }

    Model model() {
        return model;
    }

    Whole whole() {
        return whole;
    }

    List<Typed> entries() {
        return entries;
    }

    Lamb lamb() {
        return lamb;
    }

    List<Departure> departures() {
        return departures;
    }

    Weights asTyped() {
        return asTyped;
    }

    int placeOf(int entry) {
        return places[entry];
    }

    /** What was typed for an entry; after the pieces comes the carcase. */
    String text(int entry) {
        return entry == entries.size() ? whole.text() : entries.get(entry).text();
    }

    /** The step of its scale, in grams. */
    double divisionG(int entry) {
        return entry == entries.size()
                ? whole.scale().divisionG()
                : entries.get(entry).scale().divisionG();
    }

    boolean isUnshown(int entry, double grossG) {
        double steps = grossG / divisionG(entry);
        return Math.abs(steps - Math.rint(steps)) > WHOLE_STEP;
    }

    /** The nearest weight its scale can show, at least one step of it and a gram. */
    Weight shown(int entry, double grossG) {
        double division = divisionG(entry);
        return new Weight(Math.max(1, Math.round(division * Math.max(1, Math.rint(grossG / division)))));
    }

    /** The weights with this much read for one entry, the tray still in it. */
    Weights restored(int entry, double grossG, boolean unshown) {
        if (entry == entries.size()) {
            return asTyped.with(entry, whole.coldG(grossG), whole.varianceG2(grossG), unshown);
        }
        Typed typed = entries.get(entry);
        return asTyped.with(entry, grossG - typed.trayG(), typed.varianceG2(), unshown);
    }

    /** The places something was weighed for. */
    int[] observed(Weights weights) {
        boolean[] weighed = new boolean[lamb.places().size()];
        for (int i = 0; i < places.length; i++) {
            weighed[places[i]] |= weights.counts()[i];
        }
        return IntStream.range(0, weighed.length).filter(i -> weighed[i]).toArray();
    }

    /** The variance of what was read at each place. */
    double[] variances(Weights weights) {
        return perPlace(weights, weights.variance());
    }

    private double[] perPlace(Weights weights, double[] values) {
        double[] sums = new double[lamb.places().size()];
        for (int i = 0; i < places.length; i++) {
            sums[places[i]] += weights.counts()[i] ? values[i] : 0;
        }
        return sums;
    }

    /** What was weighed at these places. */
    double[] grams(Weights weights, int[] at) {
        double[] sums = perPlace(weights, weights.net());
        return Arrays.stream(at).mapToDouble(place -> sums[place]).toArray();
    }

    /** The density of weights at these places, in this order, for a carcase of this weight. */
    Gaussian gaussian(int[] at, double[] variances, double coldG, double coldVarianceG2) {
        double part = coldG / 100;
        double[] mean = new double[at.length];
        double[][] covariance = new double[at.length][at.length];
        for (int i = 0; i < at.length; i++) {
            mean[i] = part * lamb.mean(at[i]);
            for (int j = 0; j < at.length; j++) {
                covariance[i][j] = part * part * lamb.covariance(at[i], at[j])
                        + coldVarianceG2 * lamb.expected(at[i]) * lamb.expected(at[j]) / 10_000
                        + (i == j ? variances[at[i]] : 0);
            }
        }
        return new Gaussian(mean, covariance, moved(at, part), logPriors);
    }

    private double[][] moved(int[] at, double part) {
        double[][] moved = new double[departures.size()][at.length];
        for (int way = 0; way < moved.length; way++) {
            double[] points = departures.get(way).moved();
            for (int i = 0; i < at.length; i++) {
                moved[way][i] = part * points[at[i]];
            }
        }
        return moved;
    }

    /** What the other weights as typed let one expect at a place. */
    Foretold foretold(int place) {
        if (foretold[place] == null) {
            foretold[place] = Foretold.at(this, place, asTyped);
        }
        return foretold[place];
    }

    /** For each way a line may have gone the logarithm of its prior times how well these weights fit it, without {@link #aside}. */
    double[] logs(Weights weights) {
        int[] at = observed(weights);
        boolean asUsual = weights.coldG() == asTyped.coldG()
                && Arrays.equals(weights.counts(), asTyped.counts())
                && Arrays.equals(weights.variance(), asTyped.variance());
        Gaussian gaussian =
                asUsual ? usual : gaussian(at, variances(weights), weights.coldG(), weights.coldVarianceG2());
        return gaussian.logs(grams(weights, at));
    }

    /** The logarithm of how well these weights fit a lamb cut without a slip, whichever line may have been moved. */
    double log(Weights weights) {
        return Logs.sum(logs(weights)) + logOfCarcase(weights.coldG()) + aside(weights);
    }

    /** How probable a carcase of this weight is. */
    double logOfCarcase(double coldG) {
        return carcases.logDensity(coldG);
    }

    /** What counts whatever the lamb: weights no scale can show, and how several pieces of one cut share it (evenly any way). */
    double aside(Weights weights) {
        double log = weights.countUnshown() * Math.log(model.slips().offDivision());
        double[] sums = perPlace(weights, weights.net());
        int[] pieces = new int[sums.length];
        for (int i = 0; i < places.length; i++) {
            if (weights.counts()[i] && ++pieces[places[i]] > 1) {
                log += Math.log((pieces[places[i]] - 1) / sums[places[i]]);
            }
        }
        return log;
    }
}
