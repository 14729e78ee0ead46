package ribmark.slips;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** One piece weighed and entered once too often: the extra entry should read what the other does. */
final class Repeated {

    private Repeated() {}

    /** The entries of each cut and side. */
    static Map<List<Object>, List<Integer>> entries(Block block) {
        return IntStream.range(0, block.entries().size())
                .boxed()
                .collect(Collectors.groupingBy(i -> List.of(
                        block.entries().get(i).cut(), block.entries().get(i).side())));
    }

    static Stream<Possibility> all(Block block) {
        Map<List<Object>, List<Integer>> entries = entries(block);
        double logPrior = Possibility.logPrior(block) - Math.log(entries.size());
        return entries.values().stream().flatMap(same -> {
            double each = logPrior - Math.log(same.size() * (same.size() - 1.0));
            return same.stream()
                    .flatMap(extra -> same.stream()
                            .filter(other -> !other.equals(extra))
                            .map(other -> repeated(block, extra, other, each)));
        });
    }

    private static Possibility repeated(Block block, int extra, int other, double logPrior) {
        Weights typed = block.asTyped();
        double spread = Math.sqrt(typed.variance()[extra] + typed.variance()[other]);
        double log = NormalDistribution.of(typed.net()[other], spread).logDensity(typed.net()[extra]);
        Weights meant = typed.without(extra);
        return Possibility.of(Cause.WEIGHED_TWICE, extra, Optional.empty(), logPrior + log + block.log(meant), meant);
    }
}
