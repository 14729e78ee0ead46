package ribmark.scoring;

import java.util.Locale;
import java.util.Optional;

/** A stretch of the backbone, from head to tail in the order its vertebrae are counted. */
public enum Region {
    CERVICAL,
    THORACIC,
    LUMBAR,
    SACRAL,
    CAUDAL;

    /** The word in files and sentences. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The region a word names, if it names one. */
    public static Optional<Region> of(String word) {
        for (Region region : values()) {
            if (region.word().equals(word)) {
                return Optional.of(region);
            }
        }
        return Optional.empty();
    }
}
