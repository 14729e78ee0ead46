package ribmark.export;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** A progress report that somebody took away: who, of whom, in which form, how many rows, and the digest of the file. */
public record Export(
        UUID id, UUID byId, Covers covers, UUID subjectId, Format format, int rows, String digest, Instant takenAt) {

    /** Whether it is about one person or a group. */
    public enum Covers {
        APPRENTICE,
        GROUP;

        /** The word in the database. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The form it was taken in. */
    public enum Format {
        CSV(CsvFile.TYPE),
        HTML("text/html; charset=utf-8"),
        JSON("application/json; charset=utf-8");

        private final String type;

        Format(String type) {
            this.type = type;
        }

        /** What the file calls itself when it is fetched. */
        public String type() {
            return type;
        }

        /** The word in forms and at the end of the file's name. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The form a word names, if it names one. */
        public static Optional<Format> of(String word) {
            for (Format format : values()) {
                if (format.word().equals(word)) {
                    return Optional.of(format);
                }
            }
            return Optional.empty();
        }
    }
}
