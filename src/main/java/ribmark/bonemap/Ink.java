package ribmark.bonemap;

/** The inks and papers of the pages by day; a picture is a sheet of paper and stays one at night. */
final class Ink {

    static final String INK = "#1a1710";
    static final String LEAF = "#fffefa";
    static final String PAPER = "#f4f2e9";
    static final String BUFF = "#e5dcc3";
    static final String RULE = "#665c42";

    private Ink() {}
}
