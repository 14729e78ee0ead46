package ribmark.bonemap;

import java.util.Comparator;
import java.util.List;
import ribmark.curriculum.MapPoint;

/**
 * A word on the picture: what it says (shorter ways after it), the spot it names, whether it looks for a free place near there,
 * and the outline it should lie close to.
 */
record Tag(List<String> texts, MapPoint at, boolean free, boolean heavy, List<MapPoint> outline) {

    /** So much more the outline counts: ours. */
    private static final double OUTLINE = 2;

    static Tag fixed(MapPoint at, String... texts) {
        return new Tag(List.of(texts), at, false, false, List.of());
    }

    static Tag near(MapPoint at, List<MapPoint> outline, String text, boolean heavy) {
        return new Tag(List.of(text), at, true, heavy, outline);
    }

    /** How far a place is from what is named: the outline counts more than the spot. */
    double farness(Box box) {
        double toOutline = outline.stream()
                .mapToDouble(point -> box.nearest(point).minus(point).length())
                .min()
                .orElse(0);
        return box.middle().minus(at).length() + OUTLINE * toOutline;
    }

    /** The point of the outline that lies nearest to a place, or the spot itself. */
    MapPoint nearest(Box box) {
        return outline.stream()
                .min(Comparator.comparingDouble(
                        point -> box.nearest(point).minus(point).length()))
                .orElse(at);
    }
}
