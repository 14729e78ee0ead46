package ribmark.scoring;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How a figure is known, from the firmest ground to the weakest. */
public enum Basis {
    OWN,
    PUBLISHED,
    DERIVED,
    COMMON_PRACTICE,
    JUDGEMENT,
    FROM_MEMORY;

    /** The word on the page and in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The basis a word names, if it names one. */
    public static Optional<Basis> of(String word) {
        for (Basis basis : values()) {
            if (basis.word().equals(word)) {
                return Optional.of(basis);
            }
        }
        return Optional.empty();
    }

    /** A figure stands no firmer than the weakest thing it rests on. */
    public static Basis weakest(Collection<Basis> all) {
        return all.stream().max(Comparator.naturalOrder()).orElse(FROM_MEMORY);
    }
}
