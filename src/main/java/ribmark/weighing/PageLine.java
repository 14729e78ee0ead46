package ribmark.weighing;

import java.util.List;
import java.util.UUID;

/**
 * One thing weighed or measured, ready to be read: the verdict, what it is about, and why. The assessor and the apprentice read the
 * same line.
 */
public record PageLine(
        Kind kind,
        String stepId,
        String word,
        String thing,
        String figure,
        String rest,
        String opener,
        List<Fact> facts,
        List<String> sentences) {

    /** What sort of line it is: of the scale or of the rule. */
    public enum Kind {
        YIELD,
        TRIM
    }

    /** A pair in the reason: {@code Share}, {@code 36.33 ± 0.03 %}. */
    public record Fact(String caption, String value) {}

    /** The lines of one block sheet under the name of the apprentice who was watched. */
    public record OfSheet(UUID sheet, String apprentice, List<PageLine> lines) {}

    /** Keeps its own copies. */
    public PageLine {
        facts = List.copyOf(facts);
        sentences = List.copyOf(sentences);
    }
}
