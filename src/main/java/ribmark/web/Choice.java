package ribmark.web;

/** One thing to choose: what is sent, the word beside it, and a hint or nothing. */
public record Choice(String value, String label, String hint) {

    /** A choice whose word is what is sent. */
    public static Choice of(String word) {
        return new Choice(word, word, null);
    }

    /** A choice with a word of its own. */
    public static Choice of(String value, String label) {
        return new Choice(value, label, null);
    }
}
