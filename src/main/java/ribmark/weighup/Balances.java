package ribmark.weighup;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.ReferenceTable.Row;

/** The balance of the carcase, and of every larger piece that was weighed whole and again in parts. */
public final class Balances {

    /** The name of the largest whole. */
    public static final String CARCASE = "carcase";

    private Balances() {}

    static Balance ofCarcase(WeighUp weighUp) {
        var hot = weighUp.tables().get(0).hot();
        double variance = weighUp.carcase().cold(hot).varianceG2();
        return balance(weighUp, Optional.empty(), CARCASE, weighUp.carcase().coldG(hot), variance);
    }

    static List<Balance> inside(WeighUp weighUp) {
        List<Balance> balances = new ArrayList<>();
        for (Row row : weighUp.rows()) {
            boolean whole =
                    weighUp.weighedSides(row.cut()).filter(Side.BOTH::equals).isPresent();
            Optional<String> of = Optional.of(row.cut());
            if (whole && !partsOf(weighUp, of).isEmpty()) {
                Mass mass = sum(weighUp.of(row.cut()));
                BigDecimal grams = BigDecimal.valueOf((long) mass.grams());
                balances.add(balance(weighUp, of, row.cut(), grams, mass.varianceG2()));
            }
        }
        return balances;
    }

    private static Balance balance(
            WeighUp weighUp, Optional<String> of, String name, BigDecimal grams, double variance) {
        Mass parts = sum(partsOf(weighUp, of));
        return new Balance(
                name,
                grams,
                variance,
                (long) parts.grams(),
                parts.varianceG2(),
                missing(weighUp, of),
                weighUp.tables().get(0).gap());
    }

    private static List<Reading> partsOf(WeighUp weighUp, Optional<String> of) {
        return weighUp.readings().stream()
                .filter(reading -> weighUp.wholeOf(reading).equals(of))
                .toList();
    }

    private static List<String> missing(WeighUp weighUp, Optional<String> of) {
        return weighUp.rows().stream()
                .filter(row -> weighUp.wholeOf(row).equals(of))
                .flatMap(row -> missing(row.cut(), weighUp.weighedSides(row.cut())).stream())
                .toList();
    }

    private static Optional<String> missing(String cut, Optional<Side> weighed) {
        if (weighed.isEmpty()) {
            return Optional.of(cut);
        }
        return switch (weighed.get()) {
            case LEFT -> Optional.of(cut + " " + Side.RIGHT.word());
            case RIGHT -> Optional.of(cut + " " + Side.LEFT.word());
            default -> Optional.empty();
        };
    }

    /** What several readings weigh together. */
    public static Weight net(List<Reading> readings) {
        return readings.stream().map(Reading::net).reduce(Weight.NONE, Weight::plus);
    }

    /** What several readings weigh together, and its variance. */
    public static Mass sum(List<Reading> readings) {
        return readings.stream().map(Reading::mass).reduce(new Mass(0, 0), Mass::plus);
    }
}
