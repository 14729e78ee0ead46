package ribmark.weighup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import ribmark.basics.Side;

/**
 * The weights of several levels made to agree by moving each as little as its scale allows, if they can agree at all. Linear data
 * reconciliation by Lagrange multipliers with a global test, as in textbooks of process data reconciliation (Kuehn and Davidson
 * 1961, from memory).
 */
public record Reconciliation(OptionalDouble globalTest, OptionalDouble limit, boolean adjusted, List<Entry> entries) {

    /** One weighed entry: what it would be if everything agreed, and how far it lies from that in its own spreads. */
    public record Entry(String cut, Optional<String> side, double reconciledG, double z) {}

    private static final double CONFIDENCE = 0.95;

    /** Keeps its own copy. */
    public Reconciliation {
        entries = List.copyOf(entries);
    }

    /** Reckons it from every balance in which nothing is missing. */
    static Reconciliation of(WeighUp weighUp, List<Balance> balances) {
        List<Balance> complete =
                balances.stream().filter(b -> b.missing().isEmpty()).toList();
        if (complete.isEmpty()) {
            return new Reconciliation(OptionalDouble.empty(), OptionalDouble.empty(), false, List.of());
        }
        List<Weighed> weighed = Weighed.in(weighUp, complete);
        Closure closure = Closure.of(weighed, complete, weighUp.tables().get(0).losses());
        double limit = ChiSquaredDistribution.of(complete.size()).inverseCumulativeProbability(CONFIDENCE);
        boolean agree = closure.globalTest() <= limit;
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < weighed.size(); i++) {
            Weighed one = weighed.get(i);
            Optional<String> side = one.side() == Side.ONCE
                    ? Optional.empty()
                    : Optional.of(one.side().word());
            double moved = agree ? closure.adjustment(i) : 0;
            entries.add(new Entry(one.cut(), side, one.grams() - moved, closure.z(i)));
        }
        return new Reconciliation(OptionalDouble.of(closure.globalTest()), OptionalDouble.of(limit), agree, entries);
    }
}
