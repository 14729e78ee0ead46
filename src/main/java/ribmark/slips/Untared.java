package ribmark.slips;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.basics.Weight;

/** A tray left in the weight: one that stands beside another entry, or any tray when none does. */
final class Untared {

    private final Block block;
    private final List<Long> trays;

    private Untared(Block block) {
        this.block = block;
        this.trays = block.entries().stream()
                .flatMap(entry -> entry.tare().stream())
                .map(Weight::grams)
                .filter(grams -> grams > 0)
                .distinct()
                .sorted()
                .toList();
    }

    static Stream<Possibility> all(Block block) {
        int[] without = IntStream.range(0, block.entries().size())
                .filter(i -> block.entries().get(i).tare().isEmpty())
                .toArray();
        Untared untared = new Untared(block);
        double logPrior = Possibility.logPrior(block) - Math.log(without.length);
        return IntStream.of(without)
                .boxed()
                .flatMap(entry -> untared.trays.isEmpty()
                        ? untared.anyTray(entry, logPrior)
                        : untared.knownTrays(entry, logPrior - Math.log(untared.trays.size())));
    }

    private Stream<Possibility> knownTrays(int entry, double logPrior) {
        Typed typed = block.entries().get(entry);
        return trays.stream().filter(tray -> tray < typed.gross().grams()).map(tray -> {
            Weight net = typed.gross().minus(new Weight(tray));
            Weights meant = block.asTyped()
                    .with(
                            entry,
                            net.grams(),
                            2 * typed.varianceG2(),
                            block.asTyped().unshown()[entry]);
            return Possibility.of(Cause.TARE_FORGOTTEN, entry, Optional.of(net), logPrior + block.log(meant), meant);
        });
    }

    private Stream<Possibility> anyTray(int entry, double logPrior) {
        Weights typed = block.asTyped();
        int place = block.placeOf(entry);
        double lightest = block.model().slips().trayLowestG();
        double heaviest = block.model().slips().trayHighestG();
        double all = block.grams(typed, new int[] {place})[0];
        Foretold foretold = block.foretold(place);
        double log = foretold.logBetween(all - heaviest, all - lightest) - Math.log(heaviest - lightest);
        if (typed.net()[entry] <= lightest || log == Double.NEGATIVE_INFINITY) {
            return Stream.empty();
        }
        double others = all - typed.net()[entry];
        double net = foretold.meanBetween(all - heaviest, all - lightest) - others;
        double total = logPrior + log + block.logOfCarcase(typed.coldG()) + block.aside(typed);
        return Stream.of(Possibility.of(
                Cause.TARE_FORGOTTEN, entry, Optional.of(block.shown(entry, net)), total, typed.without(entry)));
    }
}
