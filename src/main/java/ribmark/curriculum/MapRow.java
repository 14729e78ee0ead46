package ribmark.curriculum;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One row of the bone map: the outline of a bone in one view, or a line, a landmark, a soft outline, or a word on how the
 * map changes with the animal.
 */
public record MapRow(
        String view,
        Role role,
        String id,
        String of,
        int order,
        boolean closed,
        double stroke,
        List<MapPoint> points,
        MapPoint label) {

    /** What a row is for. */
    public enum Role {
        /** The outline of a bone. */
        BONE,
        /** A line inside the outline of a bone. */
        DETAIL,
        /** A bone that cannot be seen in this view. */
        HIDDEN,
        /** A cut that has a name, and the landmark it runs by. */
        LINE,
        /** A cut where it can run instead of where it belongs, and the line it belongs to. */
        MOVED,
        /** One spot on a bone. */
        LANDMARK,
        /** The soft outline around the bones. */
        CONTEXT,
        /** How far one vertebra more pushes back whatever lies behind its region. */
        SHIFT,
        /** The whole sheet, as two corners. */
        FIELD,
        /** A part of the sheet for a narrow page, as two corners. */
        CROP,
        /** A region of the skeleton and what it moves with. */
        WITH,
        /** A line and what it moves with. */
        LINE_WITH,
        /** A line whose last point alone moves with something. */
        END,
        /** A line whose last points move when the last of a region is not there. */
        BOW,
        /** Where a limb can be laid so that it covers no other bone. */
        ASIDE;

        /** The word in the file. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The role a word names, if it names one. */
        public static Optional<Role> of(String word) {
            return Arrays.stream(values())
                    .filter(role -> role.word().equals(word))
                    .findFirst();
        }
    }

    /** Whether the row says of a bone that it is, or cannot be, seen in this view. */
    public boolean isOfBone() {
        return role == Role.BONE || role == Role.HIDDEN;
    }
}
