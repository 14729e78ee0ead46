package ribmark.weighup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribmark.basics.Side;
import ribmark.scoring.CutYield.Mass;

/** One entry of a balance: a cut, on one side or as a whole, with what all its readings add up to. */
record Weighed(String cut, Side side, double grams, double varianceG2, String partOf) {

    /** Every entry that stands in one of these balances, as a whole or as a part; the carcase last. */
    static List<Weighed> in(WeighUp weighUp, List<Balance> balances) {
        List<String> names = balances.stream().map(Balance::of).toList();
        Map<List<Object>, Mass> masses = new LinkedHashMap<>();
        for (Reading reading : weighUp.readings()) {
            masses.merge(List.of(reading.cut(), reading.side(), wholeOf(weighUp, reading)), reading.mass(), Mass::plus);
        }
        List<Weighed> all = new ArrayList<>();
        masses.forEach((key, mass) -> {
            String cut = (String) key.get(0);
            String whole = (String) key.get(2);
            if (names.contains(cut) || names.contains(whole)) {
                all.add(new Weighed(cut, (Side) key.get(1), mass.grams(), mass.varianceG2(), whole));
            }
        });
        if (names.contains(Balances.CARCASE)) {
            Mass mass = weighUp.carcase().cold(weighUp.tables().get(0).hot());
            all.add(new Weighed(Balances.CARCASE, Side.ONCE, mass.grams(), mass.varianceG2(), ""));
        }
        return all;
    }

    private static String wholeOf(WeighUp weighUp, Reading reading) {
        return weighUp.wholeOf(reading).orElse(Balances.CARCASE);
    }

    /** How this entry counts in the balance of that whole: itself the whole, one of its parts, or neither. */
    int signIn(Balance balance) {
        if (cut.equals(balance.of())) {
            return 1;
        }
        return partOf.equals(balance.of()) ? -1 : 0;
    }
}
