package ribmark.feedback;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** What an apprentice answered to the feedback of one sheet; a later answer stands beside it and takes nothing back. */
public record Reply(UUID id, UUID sheetId, Agrees agrees, String words, Instant repliedAt) {

    /** Whether it was as the assessor saw it. */
    public enum Agrees {
        YES,
        PARTLY,
        NO;

        /** The word on the page, in forms and in tables. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The one a word names, if it names one. */
        public static Optional<Agrees> of(String word) {
            return Arrays.stream(values()).filter(a -> a.word().equals(word)).findFirst();
        }

        /** All words, in the order offered. */
        public static List<String> words() {
            return Arrays.stream(values()).map(Agrees::word).toList();
        }
    }
}
