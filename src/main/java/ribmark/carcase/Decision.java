package ribmark.carcase;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What happens to a carcase: it is taken in, it hangs apart until somebody decides, or it goes no further. */
public enum Decision {
    ACCEPT("accepted"),
    HOLD("on hold"),
    REFUSE("refused");

    private final String standing;

    Decision(String standing) {
        this.standing = standing;
    }

    /** The word on the form and in the record: {@code hold}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How the carcase then stands: {@code on hold}. */
    public String standing() {
        return standing;
    }

    /** What may be decided next: a refused carcase stays refused, a held one may stay held for a further reason. */
    public List<Decision> next() {
        return switch (this) {
            case ACCEPT -> List.of(HOLD, REFUSE);
            case HOLD -> List.of(ACCEPT, HOLD, REFUSE);
            case REFUSE -> List.of();
        };
    }

    /** The decision a word names, if it names one. */
    public static Optional<Decision> of(String word) {
        return Arrays.stream(values()).filter(d -> d.word().equals(word)).findFirst();
    }
}
