package ribmark.anatomy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ribmark.basics.Side;

/** The way a saw runs through a bone: across it, or down the midline of the animal. */
public enum Plane {
    ACROSS,
    MIDLINE;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The plane a word names, if it names one. */
    public static Optional<Plane> of(String word) {
        for (Plane plane : values()) {
            if (plane.word().equals(word)) {
                return Optional.of(plane);
            }
        }
        return Optional.empty();
    }

    /** The two halves a saw in this plane makes of something. */
    List<Halves> halvesOf(Halves whole) {
        return this == ACROSS
                ? List.of(whole.at(End.NEAR), whole.at(End.FAR))
                : List.of(whole.on(Side.LEFT), whole.on(Side.RIGHT));
    }
}
