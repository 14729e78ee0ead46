package ribmark.scoring;

import java.util.Optional;
import java.util.OptionalDouble;

/** A scale, by what its display can tell apart, how well it repeats itself, and how wrong its class lets it be. */
public record Scale(
        String id, String name, double divisionG, double repeatabilityG, Optional<PermissibleErrors> permissible) {

    /** A scale of which the class is not known. */
    public Scale(String id, String name, double divisionG, double repeatabilityG) {
        this(id, name, divisionG, repeatabilityG, Optional.empty());
    }

    /** The same scale, taken to be of this class. */
    public Scale ruledBy(Optional<PermissibleErrors> errors) {
        return new Scale(id, name, divisionG, repeatabilityG, errors);
    }

    /** Refuses a scale without a division, or with less than no scatter. */
    public Scale {
        if (!(divisionG > 0 && divisionG < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A scale's division must be more than nothing: " + divisionG + " g");
        }
        if (!(repeatabilityG >= 0 && repeatabilityG < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A scale cannot repeat better than exactly: " + repeatabilityG + " g");
        }
    }

    /**
     * Variance of one reading, in square grams: a display that rounds to its division adds d²/12 (JCGM 100:2008, 4.3.7,
     * clause number from memory), to which the scatter of repeated readings is added.
     */
    public double varianceG2() {
        return divisionG * divisionG / 12 + repeatabilityG * repeatabilityG;
    }

    /** How far one reading may be off: one standard uncertainty, in grams. */
    public double standardUncertaintyG() {
        return Math.sqrt(varianceG2());
    }

    /** How far its class lets it be wrong in use under this load, in grams. */
    public OptionalDouble permissibleG(double loadG) {
        return permissible.map(errors -> errors.inUse(loadG, divisionG)).orElse(OptionalDouble.empty());
    }
}
