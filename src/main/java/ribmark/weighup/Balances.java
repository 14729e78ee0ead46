package ribmark.weighup;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.Yardstick;

/** The balance of the carcase, and of every larger piece that was weighed whole and again in parts. */
public final class Balances {

    /** The name of the largest whole. */
    public static final String CARCASE = "carcase";

    private final Yardstick yardstick;
    private final Tally tally;

    Balances(WeighUp weighUp, Tally tally) {
        this.yardstick = weighUp.yardstick();
        this.tally = tally;
    }

    Balance ofCarcase(CarcaseReading carcase, Mass cold) {
        return balance(CARCASE, Yardstick.NONE, carcase.coldG(yardstick.first().hot()), cold.varianceG2());
    }

    List<Balance> inside() {
        List<Balance> balances = new ArrayList<>();
        for (int place = 0; place < yardstick.size(); place++) {
            if (tally.isParted(place) && tally.sides(place) == Side.BOTH) {
                Mass mass = tally.cut(place);
                BigDecimal grams = BigDecimal.valueOf((long) mass.grams());
                balances.add(balance(yardstick.row(place).cut(), place, grams, mass.varianceG2()));
            }
        }
        return balances;
    }

    private Balance balance(String name, int place, BigDecimal grams, double variance) {
        Mass parts = tally.partsOf(place);
        return new Balance(
                name,
                grams,
                variance,
                (long) parts.grams(),
                parts.varianceG2(),
                missing(place),
                yardstick.first().gap());
    }

    private List<String> missing(int whole) {
        List<String> missing = new ArrayList<>();
        for (int place = 0; place < yardstick.size(); place++) {
            if (yardstick.whole(place) == whole) {
                String cut = yardstick.row(place).cut();
                if (!tally.isWeighed(place)) {
                    missing.add(cut);
                } else if (tally.sides(place) != Side.BOTH) {
                    missing.add(cut + " " + tally.sides(place).other().word());
                }
            }
        }
        return missing;
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
