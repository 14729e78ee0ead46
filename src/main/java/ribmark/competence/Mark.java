package ribmark.competence;

import java.util.Locale;
import java.util.Optional;

/** The assessor's word for one step, on one side, on one block sheet; no mark means not seen. */
public enum Mark {
    UNAIDED,
    PROMPTED,
    NOT_YET,
    STOPPED;

    /** The word on the page: {@code not yet}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The id in files and addresses: {@code not-yet}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The mark a word or an id names, if it names one. */
    public static Optional<Mark> of(String wordOrCode) {
        for (Mark mark : values()) {
            if (mark.code().equals(wordOrCode) || mark.word().equals(wordOrCode)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** Whether earlier evidence no longer counts after this mark. */
    public boolean startsAfresh() {
        return this == NOT_YET || this == STOPPED;
    }
}
