package ribmark.blocksheet;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** What the apprentice knew when asked one of a step's questions. */
public record Answer(UUID id, String stepId, String questionId, Known answered) {

    /** How well it was known. */
    public enum Known {
        RIGHT,
        PARTLY,
        NOT_KNOWN;

        /** The word in files and in the database. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The words on the page. */
        public String words() {
            return switch (this) {
                case RIGHT -> "answered right";
                case PARTLY -> "answered partly";
                case NOT_KNOWN -> "not known";
            };
        }

        /** The one a code names, if it names one. */
        public static Optional<Known> of(String code) {
            for (Known known : values()) {
                if (known.code().equals(code)) {
                    return Optional.of(known);
                }
            }
            return Optional.empty();
        }
    }
}
