package ribmark.slips;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribmark.basics.Weight;

/** Slips of the hand that writes or of the scale's unit: digits swapped, the point moved, pounds for kilograms; the carcase's entry too. */
final class Retyped {

    private final Block block;

    private Retyped(Block block) {
        this.block = block;
    }

    static Stream<Possibility> all(Block block) {
        Retyped retyped = new Retyped(block);
        return IntStream.rangeClosed(0, block.entries().size()).boxed().flatMap(retyped::of);
    }

    private Stream<Possibility> of(int entry) {
        BigDecimal typed = number(block.text(entry));
        List<BigDecimal> moved = List.of(typed.movePointRight(1), typed.movePointLeft(1));
        return Stream.of(
                        each(Cause.DIGITS_SWAPPED, entry, swapped(block.text(entry))),
                        each(Cause.DECIMAL_POINT_MOVED, entry, moved),
                        pounds(entry))
                .flatMap(s -> s);
    }

    private double logPrior(int variants) {
        return Possibility.logPrior(block) - Math.log(block.entries().size() + 1) - Math.log(variants);
    }

    private Stream<Possibility> each(Cause cause, int entry, List<BigDecimal> variants) {
        return variants.stream().flatMap(kilograms -> {
            double grams = 1000 * kilograms.doubleValue();
            Weight likely = new Weight(Math.round(grams));
            return one(cause, entry, grams, block.isUnshown(entry, grams), likely, logPrior(variants.size()));
        });
    }

    /**
     * Pounds are rounded to the last figure typed or to the scale's own step, so the weight meant is the nearest the scale can show
     * in kilograms; when none lies that near, the scale cannot have shown it.
     */
    private Stream<Possibility> pounds(int entry) {
        BigDecimal typed = number(block.text(entry));
        double factor = block.model().slips().poundsAKilogram();
        double grams = 1000 * typed.doubleValue() / factor;
        double lastFigure = 1000 * typed.stripTrailingZeros().ulp().doubleValue();
        Weight meant = block.shown(entry, grams);
        boolean unshown = Math.abs(grams - meant.grams()) > Math.max(lastFigure, block.divisionG(entry)) / 2 / factor;
        return one(Cause.POUNDS_FOR_KILOGRAMS, entry, meant.grams(), unshown, meant, logPrior(1));
    }

    private Stream<Possibility> one(
            Cause cause, int entry, double grams, boolean unshown, Weight likely, double logPrior) {
        Weights meant = block.restored(entry, grams, unshown);
        return meant.allWeighSomething()
                ? Stream.of(Possibility.of(cause, entry, Optional.of(likely), logPrior + block.log(meant), meant))
                : Stream.empty();
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text.strip().replace(',', '.'));
    }

    /** The numbers this one becomes when two neighbouring digits change places, the point staying where it is. */
    static List<BigDecimal> swapped(String text) {
        String plain = text.strip().replace(',', '.');
        List<Integer> digits = IntStream.range(0, plain.length())
                .filter(at -> Character.isDigit(plain.charAt(at)))
                .boxed()
                .toList();
        List<BigDecimal> swapped = new ArrayList<>();
        for (int i = 1; i < digits.size(); i++) {
            int first = digits.get(i - 1);
            int second = digits.get(i);
            if (plain.charAt(first) != plain.charAt(second)) {
                StringBuilder other = new StringBuilder(plain);
                other.setCharAt(first, plain.charAt(second));
                other.setCharAt(second, plain.charAt(first));
                swapped.add(new BigDecimal(other.toString()));
            }
        }
        return swapped;
    }
}
