package ribmark.drills;

/** What a made question asks about, and how it is called on a page. */
public enum DrillKind {
    NAME_BONE("name-bone", "Name this bone"),
    RIBS("ribs", "Count the ribs at a line"),
    JOINT("joint", "Which joint opens"),
    ORDER("order", "What comes before what"),
    FREE("free", "What comes free"),
    CUT("cut", "Which cut is this"),
    MOVED("moved", "A line that ran elsewhere"),
    WORD("word", "Trade word and bones");

    private final String code;
    private final String word;

    DrillKind(String code, String word) {
        this.code = code;
        this.word = word;
    }

    /** The word in ids of cards. */
    public String code() {
        return code;
    }

    /** The words on a page. */
    public String word() {
        return word;
    }
}
