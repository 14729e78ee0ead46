package ribmark.bonemap;

import ribmark.competence.Standing;

/**
 * What a bone is filled with, and the word for it. The first six patterns stay apart in grey and in print; slanting and close
 * slanting lines never lie side by side.
 */
enum Fill {
    SLANT("slanting lines", "<path d=\"M-3,3L3,-3M0,12L12,0M9,15L15,9\" stroke-width=\"1.5\"/>"),
    DOTS("dots", "<circle cx=\"3\" cy=\"3\" r=\"1.5\"/><circle cx=\"9\" cy=\"9\" r=\"1.5\"/>"),
    LEVEL("level lines", "<path d=\"M0,3H12M0,9H12\" stroke-width=\"1.5\"/>"),
    UPRIGHT("upright lines", "<path d=\"M3,0V12M9,0V12\" stroke-width=\"1.5\"/>"),
    CROSS("crossing lines", "<path d=\"M0,0L12,12M0,12L12,0\" stroke-width=\"1.2\"/>"),
    CLOSE(
            "close slanting lines",
            "<path d=\"M-3,3L3,-3M0,6L6,0M0,12L12,0M6,12L12,6M9,15L15,9\" stroke-width=\"1.5\"/>"),
    PLAIN("plain", ""),
    SOLID("filled in", ""),
    OPEN("plain, thick edge", ""),
    GAPPED("filled in with gaps", "<path d=\"M-3,3L9,15M3,-3L15,9\" stroke-width=\"2.6\"/>");

    /** How many pieces can be told apart by pattern. */
    static final int PATTERNS = 6;

    /** A tile is so much of itself wide on the screen; dots are set closer. */
    private static final double TILE = 0.8;

    private static final double TILE_OF_DOTS = 0.62;

    /** A thick edge, in usual ones: ours. */
    private static final double THICK = 2.4;

    private final String word;
    private final String tile;

    Fill(String word, String tile) {
        this.word = word;
        this.tile = tile;
    }

    String word() {
        return word;
    }

    boolean isPattern() {
        return !tile.isEmpty();
    }

    /** How a standing is filled: solid is settled, outline is open, dots and hatching are on the way; due again is solid, cut through. */
    static Fill of(Standing standing) {
        return switch (standing) {
            case NOT_STARTED -> PLAIN;
            case PRACTISING -> DOTS;
            case THIN_EVIDENCE -> SLANT;
            case READY_TO_SIGN -> OPEN;
            case SIGNED_OFF -> SOLID;
            case DUE_AGAIN -> GAPPED;
        };
    }

    /** How much thicker than usual the edge is. */
    double edge() {
        return this == OPEN ? THICK : 1;
    }

    /** What stands in the attribute of a shape. */
    String paint() {
        return switch (this) {
            case PLAIN, OPEN -> Ink.LEAF;
            case SOLID -> Ink.INK;
            default -> "url(#" + id() + ")";
        };
    }

    private String id() {
        return "fill-" + name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The pattern itself, its tile of the same size on the screen at every scale. */
    String definition(double pixelsPerUnit) {
        String ground = this == GAPPED ? Ink.INK : Ink.LEAF;
        String ink = this == GAPPED ? Ink.LEAF : Ink.INK;
        double scale = (this == DOTS ? TILE_OF_DOTS : TILE) / pixelsPerUnit;
        return "<pattern id=\"" + id() + "\" width=\"12\" height=\"12\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"scale(" + String.format(java.util.Locale.ROOT, "%.3f", scale) + ")\">"
                + "<rect width=\"12\" height=\"12\" fill=\"" + ground + "\"/><g stroke=\"" + ink + "\" fill=\""
                + (this == DOTS ? Ink.INK + "\" stroke-width=\"0" : "none") + "\">" + tile + "</g></pattern>";
    }
}
