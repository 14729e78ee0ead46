package ribmark.feedback;

import java.util.List;

/** One thing weighed or measured for a sheet, ready to be read: the verdict, what it is about, and why. */
public record VerdictLine(
        Kind kind,
        String stepId,
        String word,
        String thing,
        String figure,
        String rest,
        String opener,
        List<Fact> facts,
        List<String> sentences) {

    /** Which of the two it is. */
    public enum Kind {
        YIELD,
        TRIM
    }

    /** A pair in the reason: {@code Share}, {@code 36.33 ± 0.03 %}. */
    public record Fact(String caption, String value) {}
}
