package ribmark.slips;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.basics.Side;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.slips.Lambs.Lamb;
import ribmark.slips.Lambs.Piece;

/**
 * The probabilities of section "departures" worked out a second time, another way and slowly: left and right are turned into sums
 * and differences; the loss is not put into the covariance but summed over in small steps; makings come from going round, and the
 * density from solving each system afresh by elimination.
 */
final class SlowReckoning {

    private static final int STEPS = 20;

    private record Hypothesis(Group group, double prior, Map<String, Double> sums, Map<String, Double> differences) {}

    private final Lamb lamb;
    private final boolean sided;
    private final List<Row> rows;
    private final double[] makings;
    private final List<Hypothesis> hypotheses = new ArrayList<>();

    private SlowReckoning(Lamb lamb) {
        this.lamb = lamb;
        this.rows = lamb.table().rows();
        this.makings = makings();
        this.sided = lamb.pieces().stream().anyMatch(p -> p.side() != Side.ONCE);
        hypotheses.add(new Hypothesis(Group.NONE, 0.6, Map.of(), Map.of()));
        List<Miscut.Way> ways = Miscut.ways(lamb.table(), sided);
        ways.forEach(way -> add(way, 0.4 / ways.size()));
    }

    private void add(Miscut.Way way, double prior) {
        List<Side> sides =
                sided && way.split().isEmpty() ? List.of(Side.BOTH, Side.LEFT, Side.RIGHT) : List.of(Side.BOTH);
        for (Side side : sides) {
            for (int by = 1; by <= way.steps(); by++) {
                double share = way.steps() == 1 ? 1 : by == 1 ? 2.0 / 3 : 1.0 / 3;
                double each = prior / sides.size() / 2 * share;
                hypotheses.add(hypothesis(way, way.towards(), side, by, each));
                hypotheses.add(hypothesis(way, way.otherwise(), side, -by, each));
            }
        }
    }

    private Hypothesis hypothesis(Miscut.Way way, String towards, Side side, int times, double prior) {
        Map<String, Double> sums = new LinkedHashMap<>();
        Map<String, Double> differences = new LinkedHashMap<>();
        way.points().forEach((cut, points) -> {
            double half = times * points / 2;
            double left = side == Side.RIGHT ? 0 : half;
            double right = side == Side.LEFT ? 0 : half;
            sums.put(cut, left + right);
            differences.put(cut, left - right);
        });
        Set<String> split = way.split();
        rows.stream()
                .filter(row -> split.contains(row.cut()))
                .forEach(row -> differences.put(row.cut(), 2 * 0.03 * times * row.expected()));
        return new Hypothesis(new Group(Optional.of(way.line()), Optional.of(towards), side), prior, sums, differences);
    }

    static Map<Group, Double> of(Lamb lamb) {
        SlowReckoning slow = new SlowReckoning(lamb);
        double[] logs = slow.hypotheses.stream().mapToDouble(slow::log).toArray();
        double best = java.util.Arrays.stream(logs).max().orElseThrow();
        Map<Group, Double> weights = new LinkedHashMap<>();
        for (int i = 0; i < logs.length; i++) {
            Hypothesis hypothesis = slow.hypotheses.get(i);
            weights.merge(hypothesis.group(), hypothesis.prior() * Math.exp(logs[i] - best), Double::sum);
        }
        double all = weights.values().stream().mapToDouble(w -> w).sum();
        weights.replaceAll((group, weight) -> weight / all);
        return weights;
    }

    private double log(Hypothesis hypothesis) {
        double sum = 0;
        for (int step = -STEPS; step <= STEPS; step++) {
            double spreads = 5.0 * step / STEPS;
            double kept = 1 - (0.55 + 0.20 * spreads) / 100;
            sum += Math.exp(-spreads * spreads / 2 + logOfSums(hypothesis, kept) + 700);
        }
        return Math.log(sum) + logOfDifferences(hypothesis);
    }

    private double percent(String cut, boolean difference) {
        double grams = lamb.pieces().stream()
                .filter(p -> p.cut().equals(cut))
                .mapToDouble((Piece p) -> difference && p.side() == Side.RIGHT ? -p.grams() : p.grams())
                .sum();
        return 100 * grams / lamb.carcaseG();
    }

    private double reading(String cut) {
        long readings = lamb.pieces().stream().filter(p -> p.cut().equals(cut)).count();
        return readings * lamb.scale().varianceG2() * 1e4 / Math.pow(lamb.carcaseG(), 2);
    }

    private double logOfSums(Hypothesis hypothesis, double kept) {
        int size = rows.size();
        double total = java.util.Arrays.stream(makings).sum();
        double ofCarcase = lamb.scale().varianceG2() / Math.pow(lamb.carcaseG(), 2);
        double[][] system = new double[size][size + 1];
        double[] residual = new double[size];
        for (int i = 0; i < size; i++) {
            Row row = rows.get(i);
            residual[i] = percent(row.cut(), false)
                    - kept * row.expected()
                    - hypothesis.sums().getOrDefault(row.cut(), 0.0);
            for (int j = 0; j < size; j++) {
                double own = i == j ? kept * kept * makings[i] + reading(row.cut()) : 0;
                system[i][j] = own
                        - kept * kept * makings[i] * makings[j] / total
                        + ofCarcase * row.expected() * rows.get(j).expected();
            }
            system[i][size] = residual[i];
        }
        return -(quadratic(system, residual)) / 2;
    }

    /** Twice the exponent, and the logarithm of the determinant, by elimination; rows are put right by the largest pivot. */
    private static double quadratic(double[][] system, double[] residual) {
        int size = residual.length;
        double logDeterminant = 0;
        for (int column = 0; column < size; column++) {
            logDeterminant += Math.log(system[column][column]);
            for (int row = 0; row < size; row++) {
                double factor = row == column ? 0 : system[row][column] / system[column][column];
                for (int k = column; k <= size; k++) {
                    system[row][k] -= factor * system[column][k];
                }
            }
        }
        double quadratic = logDeterminant;
        for (int i = 0; i < size; i++) {
            quadratic += residual[i] * system[i][size] / system[i][i];
        }
        return quadratic;
    }

    private double logOfDifferences(Hypothesis hypothesis) {
        double log = 0;
        for (Row row : rows) {
            if (sided && row.pair()) {
                double spread = row.pairSpread() * (1 - 0.0055) * row.expected();
                double residual =
                        percent(row.cut(), true) - hypothesis.differences().getOrDefault(row.cut(), 0.0);
                log -= residual * residual / (spread * spread + reading(row.cut())) / 2;
            }
        }
        return log;
    }

    private double[] makings() {
        double[] makings = rows.stream().mapToDouble(row -> row.sd() * row.sd()).toArray();
        for (int round = 0; round < 100; round++) {
            double total = java.util.Arrays.stream(makings).sum();
            for (int i = 0; i < makings.length; i++) {
                makings[i] = Math.pow(rows.get(i).sd(), 2) / (1 - makings[i] / total);
            }
        }
        return makings;
    }
}
