package ribmark.anatomy;

import java.util.Locale;
import java.util.Optional;

/**
 * Where on a bone something sits: near is towards the head, the spine or the trunk, far is the other end, both is all
 * along it.
 */
public enum End {
    NEAR,
    FAR,
    BOTH;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The word in files and in the names of parts. */
    public String word() {
        return word;
    }

    /** The end a word names, if it names one. */
    public static Optional<End> of(String word) {
        for (End end : values()) {
            if (end.word().equals(word)) {
                return Optional.of(end);
            }
        }
        return Optional.empty();
    }
}
