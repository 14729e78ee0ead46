package ribmark.study;

/** What the figures of a question say to whoever looks after it; every threshold is ours. */
public enum Behaviour {
    MISLEADING("misleading", "those who know the rest have it wrong more often"),
    TOO_HARD("too hard", "at most three in ten have it right"),
    TOO_EASY("too easy", "at least 19 in 20 have it right"),
    FITS("fits", "neither too easy nor too hard, and it goes with the rest"),
    NOT_ENOUGH("not enough answers", "fewer than eight people have answered");

    /** Fewer people say nothing (ours). */
    static final int LEAST_PEOPLE = 8;

    /** From this share on a question tells nobody apart (ours). */
    static final double EASY = 0.95;

    /** Up to this share it is hardly more than guessing among four (ours). */
    static final double HARD = 0.30;

    /** From nought down to this it may be chance (ours). */
    static final double AGAINST = -0.10;

    private final String word;
    private final String gloss;

    Behaviour(String word, String gloss) {
        this.word = word;
        this.gloss = gloss;
    }

    static Behaviour of(ItemAnalysis.Item item) {
        if (item.answers() < LEAST_PEOPLE) {
            return NOT_ENOUGH;
        }
        if (item.pointBiserial().orElse(0) <= AGAINST) {
            return MISLEADING;
        }
        return item.difficulty() <= HARD ? TOO_HARD : item.difficulty() >= EASY ? TOO_EASY : FITS;
    }

    /** The word on the page. */
    public String word() {
        return word;
    }

    /** What the word means. */
    public String gloss() {
        return gloss;
    }

    /** Whether somebody should look at the question. */
    public boolean calls() {
        return ordinal() < FITS.ordinal();
    }
}
