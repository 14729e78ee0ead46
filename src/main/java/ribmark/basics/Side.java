package ribmark.basics;

import java.util.Locale;
import java.util.Optional;

/** Which side of the animal, seen from the animal; a step or piece without sides is done once. */
public enum Side {
    ONCE,
    LEFT,
    RIGHT,
    BOTH;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The word on the page and in files. */
    public String word() {
        return word;
    }

    /** The side across; what has none is its own. */
    public Side other() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            default -> this;
        };
    }

    /** The side a word names, if it names one. */
    public static Optional<Side> of(String word) {
        for (Side side : values()) {
            if (side.word().equals(word)) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }
}
