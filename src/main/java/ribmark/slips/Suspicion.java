package ribmark.slips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.slips.Possibility.Guess;

/** What may have happened to a set of weights, weighed against each other: no slip, or one. */
final class Suspicion {

    /** What a reader can tell apart: the entry, the cause and the weight that should stand there. */
    private record Told(Cause because, List<Named> entries) {}

    private record Named(String cut, Optional<Side> side, Optional<Weight> likely) {}

    private final Block block;
    private final List<Possibility> possible;
    private final double[] shares;

    Suspicion(Block block) {
        this.block = block;
        this.possible = Stream.of(
                        Stream.of(Possibility.noSlip(block)),
                        Retyped.all(block),
                        Untared.all(block),
                        Exchanged.all(block),
                        Repeated.all(block),
                        Unrelated.all(block))
                .flatMap(s -> s)
                .toList();
        this.shares =
                Logs.shares(possible.stream().mapToDouble(Possibility::log).toArray());
    }

    /** How probably nothing slipped. */
    double noSlip() {
        return shares[0];
    }

    /** A row for each piece that has no weight yet, then those for what was weighed, the most probable first. */
    List<Suspect> suspects() {
        List<Suspect> all = new ArrayList<>(missing());
        if (noSlip() < block.model().slips().suspectBelow()) {
            told().entrySet().stream()
                    .filter(told -> told.getValue() >= block.model().slips().listedFrom())
                    .sorted(Map.Entry.<Told, Double>comparingByValue(Comparator.reverseOrder()))
                    .forEach(told -> told.getKey()
                            .entries()
                            .forEach(named -> all.add(new Suspect(
                                    named.cut(),
                                    named.side(),
                                    named.likely(),
                                    told.getKey().because(),
                                    told.getValue()))));
        }
        return all;
    }

    private Map<Told, Double> told() {
        Map<Told, Double> told = new LinkedHashMap<>();
        for (int i = 1; i < shares.length; i++) {
            Possibility one = possible.get(i);
            List<Named> entries = one.guesses().stream().map(this::named).toList();
            told.merge(new Told(one.cause().orElseThrow(), entries), shares[i], Double::sum);
        }
        return told;
    }

    private Named named(Guess guess) {
        if (guess.entry() == block.entries().size()) {
            return new Named(block.whole().name(), Optional.empty(), guess.likely());
        }
        Typed typed = block.entries().get(guess.entry());
        return new Named(typed.cut(), told(typed.side()), guess.likely());
    }

    private static Optional<Side> told(Side side) {
        return Optional.of(side).filter(s -> s == Side.LEFT || s == Side.RIGHT);
    }

    /** What has no weight yet is certain to be missing; what it should weigh is told by what most probably happened to the rest. */
    private List<Suspect> missing() {
        Weights typed = block.asTyped();
        int[] observed = block.observed(typed);
        int best = noSlip() < block.model().slips().suspectBelow() ? mostProbable() : 0;
        return IntStream.range(0, block.lamb().places().size())
                .filter(place -> Arrays.stream(observed).noneMatch(p -> p == place))
                .mapToObj(place -> missing(place, possible.get(best).meant()))
                .toList();
    }

    private int mostProbable() {
        return IntStream.range(0, shares.length)
                .boxed()
                .max(Comparator.comparingDouble(i -> shares[i]))
                .orElseThrow();
    }

    private Suspect missing(int at, Weights weights) {
        Place place = block.lamb().places().get(at);
        double grams = Foretold.at(block, at, weights).mean();
        int finest = IntStream.range(0, block.entries().size() + 1)
                .boxed()
                .min(Comparator.comparingDouble(block::divisionG))
                .orElseThrow();
        return new Suspect(
                place.row().cut(), told(place.side()), Optional.of(block.shown(finest, grams)), Cause.PIECE_MISSING, 1);
    }
}
