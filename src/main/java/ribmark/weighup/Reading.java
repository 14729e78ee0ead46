package ribmark.weighup;

import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.scoring.CutYield.Mass;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;

/**
 * One piece on the scale once. An empty moment means the moment its reference row names; an empty sheet, that nobody was
 * being watched; {@code partOf} names the larger piece it came out of where no reference row says so; {@code typed} is the
 * text of the weight.
 */
public record Reading(
        String cut,
        Side side,
        Weight weight,
        Optional<Weight> tare,
        Scale scale,
        String moment,
        String sheet,
        String partOf,
        String typed) {

    /** Refuses a tray heavier than what stood on it. */
    public Reading {
        if (tare.isPresent() && tare.get().compareTo(weight) > 0) {
            throw new IllegalArgumentException("The tray cannot weigh more than the tray with " + cut + " on it");
        }
    }

    /** A reading of which only the weight was kept: it counts as typed with three places. */
    public Reading(
            String cut,
            Side side,
            Weight weight,
            Optional<Weight> tare,
            Scale scale,
            String moment,
            String sheet,
            String partOf) {
        this(cut, side, weight, tare, scale, moment, sheet, partOf, weight.kilograms());
    }

    /** A piece weighed without a tray, at the moment its row names, with nobody being watched. */
    public static Reading of(String cut, Side side, Weight weight, Scale scale) {
        return new Reading(cut, side, weight, Optional.empty(), scale, "", "", "");
    }

    /** The same reading with a tray to be taken off. */
    public Reading withTare(Weight tray) {
        return new Reading(cut, side, weight, Optional.of(tray), scale, moment, sheet, partOf, typed);
    }

    /** The same reading with the very text somebody typed for its weight. */
    public Reading asTyped(String text) {
        return new Reading(cut, side, weight, tare, scale, moment, sheet, partOf, text);
    }

    /** The same reading on a scale of this class, where none is known. */
    public Reading ruledBy(Optional<PermissibleErrors> errors) {
        return new Reading(cut, side, weight, tare, scale.ruledBy(errors), moment, sheet, partOf, typed);
    }

    /** What the piece itself weighs. */
    public Weight net() {
        return weight.minus(tare.orElse(Weight.NONE));
    }

    /** The same in grams. */
    long netG() {
        return weight.grams() - (tare.isPresent() ? tare.get().grams() : 0);
    }

    /** The variance of the net weight in square grams: with a tray taken off, it is two readings. */
    public double varianceG2() {
        return (tare.isPresent() ? 2 : 1) * scale.varianceG2();
    }

    /** The net weight and its variance. */
    public Mass mass() {
        return new Mass(net().grams(), varianceG2());
    }

    /** Whether it was weighed when this row means it. */
    boolean isAtTheMomentOf(Row row) {
        return moment.isEmpty() || moment.equals(row.moment());
    }
}
