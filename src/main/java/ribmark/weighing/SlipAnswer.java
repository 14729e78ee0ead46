package ribmark.weighing;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.people.Person;
import ribmark.slips.Cause;
import ribmark.weighing.PageLine.Fact;

/**
 * How somebody at the block answered the question whether what they typed is right; it stays with the reading, or where it is about
 * none, with the weight of the carcase. {@code record} is its place in the log.
 */
public record SlipAnswer(
        List<UUID> readings, Cause because, Choice choice, String words, Person by, Instant at, long record) {

    /** The three answers: take the likely weight, weigh the piece again, or keep what was typed and say why. */
    public enum Choice {
        USE,
        AGAIN,
        KEEP;

        /** What a form sends and the table holds. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The choice a form sent, if it is one. */
        public static Optional<Choice> of(String word) {
            return Stream.of(values())
                    .filter(choice -> choice.word().equals(word))
                    .findFirst();
        }
    }

    /** Keeps its own copy. */
    public SlipAnswer {
        readings = List.copyOf(readings);
    }

    /** Whether the reading was kept as typed; then the same is not asked again. */
    boolean kept() {
        return choice == Choice.KEEP;
    }

    /** Whether it is about the weight of the whole carcase. */
    boolean isAboutCarcase() {
        return readings.isEmpty();
    }

    /** The readings it is about, in no order. */
    Set<UUID> about() {
        return Set.copyOf(readings);
    }

    /** A line to stand with the reading: what was asked, who answered, when, and how. */
    Fact fact(ZoneId zone) {
        String who = by.name() + ", " + Words.moment(at, zone) + ": ";
        String how = switch (choice) {
            case USE -> "the likely weight was taken instead";
            case AGAIN -> "weighed again";
            case KEEP -> "kept as it was, “" + words + "”";
        };
        return new Fact("Asked: " + because.words() + "?", who + how);
    }
}
