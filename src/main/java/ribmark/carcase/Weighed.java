package ribmark.carcase;

import ribmark.basics.Weight;

/** A carcase weight with what must never leave it: whether the meat was hot or cold. */
public record Weighed(Weight weight, boolean hot) {

    /** The word beside the weight. */
    public String word() {
        return hot ? "hot" : "cold";
    }

    /** Weight and word: {@code 20.120 kg cold}. */
    @Override
    public String toString() {
        return weight + " " + word();
    }
}
