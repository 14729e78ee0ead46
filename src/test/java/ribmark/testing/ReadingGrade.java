package ribmark.testing;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How many years of school a text asks of its reader: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid and others,
 * 1975; formula from memory). Syllables are counted as groups of vowels, less a silent e; a colon ends a sentence too.
 */
public final class ReadingGrade {

    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private ReadingGrade() {}

    /** The grade of a text with at least one word. */
    public static double of(String text) {
        long sentences = Arrays.stream(text.split("[.!?:;]+"))
                .filter(part -> part.matches("(?s).*[A-Za-z].*"))
                .count();
        String[] words = Arrays.stream(text.split("[^A-Za-z’'-]+"))
                .filter(word -> word.matches(".*[A-Za-z].*"))
                .toArray(String[]::new);
        double syllables =
                Arrays.stream(words).mapToLong(ReadingGrade::syllables).sum();
        return 0.39 * words.length / sentences + 11.8 * syllables / words.length - 15.59;
    }

    private static long syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "").replaceAll("(?<=[a-z]{2})(?<!l)e$", "");
        return Math.max(1, VOWELS.matcher(plain).results().count());
    }
}
