package ribmark.bonemap;

import java.util.List;
import ribmark.curriculum.MapPoint;

/**
 * A bone or a sawn part of one: what it is filled with, whether it steps back behind what matters, and the clips that leave of
 * the outline what belongs to it.
 */
record Portion(String name, Fill fill, boolean faint, List<List<MapPoint>> clips) {

    /** The word for a bone that steps back. */
    static final String FAINT_IN_WORDS = "faint";

    static Portion whole(String bone, Fill fill) {
        return new Portion(bone, fill, false, List.of());
    }

    static Portion faint(String bone) {
        return new Portion(bone, Fill.PLAIN, true, List.of());
    }
}
