package ribmark.basics;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word somebody probably meant when they typed one that does not exist. */
public final class Suggest {

    /** Farther away than this many slips (a letter wrong, missing, added or two swapped) nothing is suggested. */
    public static final int FARTHEST = 2;

    private Suggest() {}

    /**
     * The nearest of the known words, if one is near enough and shares at least something with what was typed; a word
     * that differs only in capitals is nearest of all.
     */
    public static Optional<String> nearest(String typed, Collection<String> known) {
        return known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= FARTHEST)
                .filter(word -> slips(typed, word) <= FARTHEST && slips(typed, word) < typed.length())
                .min(Comparator.<String>comparingInt(word -> slips(typed, word))
                        .thenComparingInt(word -> Math.abs(word.length() - typed.length()))
                        .thenComparingInt(word -> -sameStart(typed, word))
                        .thenComparingInt(word -> apart(typed, word)));
    }

    /** The tail of a sentence that asks whether the nearest word was meant, or nothing. */
    public static String orNothing(String typed, Collection<String> known) {
        return nearest(typed, known)
                .map(word -> " (did you mean “" + word + "”?)")
                .orElse("");
    }

    /** Slips between two words: the optimal string alignment distance, capitals ignored. */
    public static int slips(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = cheapest(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cheapest(int[][] cost, String a, String b, int i, int j) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        int changed = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(changed, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, 1 + cost[i - 2][j - 2]) : best;
    }

    private static int sameStart(String a, String b) {
        int at = 0;
        while (at < Math.min(a.length(), b.length()) && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return at;
    }

    /** So that of two numbers equally many slips away the nearer one wins. */
    private static int apart(String a, String b) {
        int sum = 0;
        for (int at = 0; at < Math.min(a.length(), b.length()); at++) {
            sum += Math.abs(a.charAt(at) - b.charAt(at));
        }
        return sum;
    }
}
