package ribmark.slips;

/** What may be said of the lines, and never more than that: the weights would fit one, nothing stands out, or they cannot tell. */
public enum Say {
    FITS("fits"),
    NOTHING_STANDS_OUT("nothing stands out"),
    CANNOT_TELL("cannot tell");

    private final String words;

    Say(String words) {
        this.words = words;
    }

    /** The words in files. */
    public String words() {
        return words;
    }
}
