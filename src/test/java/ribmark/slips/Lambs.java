package ribmark.slips;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.Conditions;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;

/**
 * Invented lambs, drawn from a table by rules of their own: closed percentages, a loss spread evenly from 0.2 to 0.9 percent, left
 * and right apart by the pair's spread, then read on a scale.
 */
final class Lambs {

    /** One weighed piece. */
    record Piece(String cut, Side side, long grams) {}

    /** One lamb: its carcase as read, and its pieces. */
    record Lamb(ReferenceTable table, Scale scale, long carcaseG, List<Piece> pieces) {

        Lamb with(int piece, long grams) {
            List<Piece> other = new ArrayList<>(pieces);
            other.set(piece, new Piece(other.get(piece).cut(), other.get(piece).side(), grams));
            return new Lamb(table, scale, carcaseG, other);
        }

        Lamb without(int piece) {
            List<Piece> other = new ArrayList<>(pieces);
            other.remove(piece);
            return new Lamb(table, scale, carcaseG, other);
        }

        Lamb and(Piece piece) {
            List<Piece> other = new ArrayList<>(pieces);
            other.add(piece);
            return new Lamb(table, scale, carcaseG, other);
        }

        Lamb ofCarcase(long grams) {
            return new Lamb(table, scale, grams, pieces);
        }

        Finding find(Model model) {
            Conditions conditions = new Conditions(carcaseG / 1000.0, true, Optional.empty());
            return Slips.of(model, table.under(conditions).rows(), whole(), typed());
        }

        Whole whole() {
            return Whole.cold("carcase", new Weight(carcaseG), scale);
        }

        List<Typed> typed() {
            return pieces.stream()
                    .map(p -> Typed.of(p.cut(), p.side(), new Weight(p.grams()), Optional.empty(), scale))
                    .toList();
        }

        /** Whether the pieces make up the carcase to one percent and are not more than it by more than the scales explain. */
        boolean balances() {
            double gap = carcaseG - pieces.stream().mapToLong(Piece::grams).sum();
            double doubt = 2 * scale.standardUncertaintyG() * Math.sqrt(pieces.size() + 1.0);
            return gap >= -doubt && gap <= carcaseG / 100.0;
        }
    }

    private final Random random;
    private final ReferenceTable table;
    private final boolean sided;
    private final Scale scale;

    Lambs(long seed, ReferenceTable table, boolean sided, Scale scale) {
        this.random = new Random(seed);
        this.table = table;
        this.sided = sided;
        this.scale = scale;
        System.out.printf(
                "drill: seed %d, %s%s, scale %.0f g%n", seed, table.id(), sided ? " by side" : "", scale.divisionG());
    }

    ReferenceTable table() {
        return table;
    }

    boolean sided() {
        return sided;
    }

    Random random() {
        return random;
    }

    /** A lamb cut as meant. */
    Lamb clean() {
        return lamb(Map.of(), Side.BOTH, Map.of());
    }

    /** A lamb with points moved between its cuts, on one side or both, and shares moved from right to left. */
    Lamb lamb(Map<String, Double> points, Side on, Map<String, Double> toTheLeft) {
        double carcase = carcase();
        double kept = 1 - (0.2 + 0.7 * random.nextDouble()) / 100;
        Map<String, Double> percents = percents();
        List<Piece> pieces = new ArrayList<>();
        for (Row row : table.rows()) {
            double sum = kept * percents.get(row.cut());
            double move = points.getOrDefault(row.cut(), 0.0);
            if (sided && row.pair()) {
                double apart = row.pairSpread() * kept * row.expected() * random.nextGaussian();
                double split = toTheLeft.getOrDefault(row.cut(), 0.0) * row.expected();
                double left = (sum + apart) / 2 + (on == Side.RIGHT ? 0 : move / 2) + split;
                double right = (sum - apart) / 2 + (on == Side.LEFT ? 0 : move / 2) - split;
                pieces.add(new Piece(row.cut(), Side.LEFT, read(left * carcase / 100)));
                pieces.add(new Piece(row.cut(), Side.RIGHT, read(right * carcase / 100)));
            } else {
                double moved = on == Side.BOTH ? move : move / 2;
                pieces.add(new Piece(row.cut(), Side.ONCE, read((sum + moved) * carcase / 100)));
            }
        }
        return new Lamb(table, scale, read(carcase), List.copyOf(pieces));
    }

    private double carcase() {
        double drawn;
        do {
            drawn = 20_000 + 4_000 * random.nextGaussian();
        } while (drawn < 16_050 || drawn > 23_950);
        return drawn;
    }

    /** Drawn freely, then what is over or short of a hundred is shared out by the makings. */
    private Map<String, Double> percents() {
        double[] makings = makings();
        double total = java.util.Arrays.stream(makings).sum();
        double[] free = java.util.Arrays.stream(makings)
                .map(t -> Math.sqrt(t) * random.nextGaussian())
                .toArray();
        double over = java.util.Arrays.stream(free).sum();
        Map<String, Double> percents = new LinkedHashMap<>();
        for (int i = 0; i < free.length; i++) {
            Row row = table.rows().get(i);
            percents.put(row.cut(), Math.max(0.05, row.expected() + free[i] - makings[i] * over / total));
        }
        return percents;
    }

    /** By going round: each cut's makings from its spread and the total of the round before. */
    private double[] makings() {
        double[] makings =
                table.rows().stream().mapToDouble(row -> row.sd() * row.sd()).toArray();
        for (int round = 0; round < 200; round++) {
            double total = java.util.Arrays.stream(makings).sum();
            for (int i = 0; i < makings.length; i++) {
                double sd = table.rows().get(i).sd();
                makings[i] = sd * sd / (1 - makings[i] / total);
            }
        }
        return makings;
    }

    long read(double grams) {
        double shown = grams + scale.repeatabilityG() * random.nextGaussian();
        return Math.round(Math.max(1, Math.rint(shown / scale.divisionG())) * scale.divisionG());
    }
}
