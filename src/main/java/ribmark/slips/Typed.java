package ribmark.slips;

import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.Scale;

/**
 * One entry of a weigh-up as somebody typed it: the row of the table it was typed under, left, right or neither, the kilograms as
 * text and as a weight with the tray still in it, the tray, and the scale.
 */
public record Typed(String cut, Side side, String text, Weight gross, Optional<Weight> tare, Scale scale) {

    /** An entry whose text is not known any more: it counts as typed with three places. */
    public static Typed of(String cut, Side side, Weight gross, Optional<Weight> tare, Scale scale) {
        return new Typed(cut, side, gross.kilograms(), gross, tare, scale);
    }

    double trayG() {
        return tare.map(Weight::grams).orElse(0L);
    }

    /** The variance of what was read; with a tray taken off it is two readings. */
    double varianceG2() {
        return (tare.isPresent() ? 2 : 1) * scale.varianceG2();
    }
}
