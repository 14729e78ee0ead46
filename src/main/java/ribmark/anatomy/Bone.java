package ribmark.anatomy;

import ribmark.basics.Refused;
import ribmark.basics.Side;

/** One bone or cartilage of the skeleton; a side of once means it lies on the midline. */
public record Bone(String id, String name, String latin, Side side, String region, String uberon, String source) {

    /** Reads one row as it stands in the file: the side is M, L or R. */
    public static Bone of(
            String id, String name, String latin, String side, String region, String uberon, String source) {
        Ident.check(id);
        return new Bone(id, name, latin, sideOf(id, side), region, uberon, source);
    }

    private static Side sideOf(String id, String letter) {
        return switch (letter == null ? "" : letter) {
            case "M" -> Side.ONCE;
            case "L" -> Side.LEFT;
            case "R" -> Side.RIGHT;
            default ->
                throw new Refused("“" + id + "” has the side “" + letter
                        + "”: write M for a bone on the midline, L for left or R for right.");
        };
    }

    /** Whether it lies on the midline and so can be sawn into a left and a right half. */
    public boolean isMidline() {
        return side == Side.ONCE;
    }

    /** No two bones of an animal share an id; hashing all its words would cost more than it tells apart. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
