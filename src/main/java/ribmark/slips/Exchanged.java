package ribmark.slips;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.basics.Weight;
import ribmark.slips.Possibility.Guess;

/** Two pieces of different cuts, each entered under the other's name. */
final class Exchanged {

    private Exchanged() {}

    static Stream<Possibility> all(Block block) {
        List<int[]> pairs = IntStream.range(0, block.entries().size())
                .boxed()
                .flatMap(one -> IntStream.range(one + 1, block.entries().size())
                        .filter(two -> !cut(block, one).equals(cut(block, two)))
                        .mapToObj(two -> new int[] {one, two}))
                .toList();
        double logPrior = Possibility.logPrior(block) - Math.log(pairs.size());
        return pairs.stream().map(pair -> exchanged(block, pair[0], pair[1], logPrior));
    }

    private static String cut(Block block, int entry) {
        return block.entries().get(entry).cut();
    }

    private static Possibility exchanged(Block block, int one, int two, double logPrior) {
        Weights meant = block.asTyped().exchanged(one, two);
        List<Guess> guesses = List.of(guess(block, one, meant), guess(block, two, meant));
        return new Possibility(Optional.of(Cause.PIECES_EXCHANGED), guesses, logPrior + block.log(meant), meant);
    }

    private static Guess guess(Block block, int entry, Weights meant) {
        double gross = meant.net()[entry] + block.entries().get(entry).trayG();
        return new Guess(entry, Optional.of(new Weight(Math.round(gross))));
    }
}
