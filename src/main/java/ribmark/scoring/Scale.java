package ribmark.scoring;

/** A scale, by what its display can tell apart and how well it repeats itself. */
public record Scale(String id, String name, double divisionG, double repeatabilityG) {

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
}
