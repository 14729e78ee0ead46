package ribmark.bonemap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ribmark.curriculum.MapPoint;

/**
 * A smooth line through points, of cubic Bézier segments. The handles lie along the chord of the two neighbours (the tangent
 * of Catmull and Rom) and are tied to the length of their own segment, so that nothing overshoots.
 */
public record Curve(List<MapPoint> points, boolean closed) {

    /** The share of a segment that its handle is long: ours. */
    private static final double HANDLE = 0.35;

    /** So many straight bits a segment is taken for when something is reckoned with it: ours. */
    private static final int BITS = 6;

    private static final MapPoint NOWHERE = MapPoint.at(0, 0);

    /** From one point to the next by two handles. */
    record Segment(MapPoint from, MapPoint first, MapPoint second, MapPoint to) {

        MapPoint at(double t) {
            double u = 1 - t;
            return from.times(u * u * u)
                    .plus(first.times(3 * u * u * t))
                    .plus(second.times(3 * u * t * t))
                    .plus(to.times(t * t * t));
        }
    }

    List<Segment> segments() {
        List<Segment> all = new ArrayList<>();
        int last = closed ? points.size() : points.size() - 1;
        for (int i = 0; i < last; i++) {
            MapPoint from = point(i);
            MapPoint to = point(i + 1);
            double handle = HANDLE * to.minus(from).length();
            all.add(new Segment(
                    from,
                    from.plus(tangent(i).times(handle)),
                    to.plus(tangent(i + 1).times(-handle)),
                    to));
        }
        return all;
    }

    private MapPoint point(int i) {
        int size = points.size();
        return closed ? points.get((i + size) % size) : points.get(Math.max(0, Math.min(i, size - 1)));
    }

    /** The direction at a point: none at a corner. */
    private MapPoint tangent(int i) {
        MapPoint along = point(i + 1).minus(point(i - 1));
        return point(i).corner() || along.length() == 0 ? NOWHERE : along.times(1 / along.length());
    }

    /** The line as the commands of an SVG path. */
    public String path() {
        StringBuilder path = new StringBuilder("M").append(pair(points.get(0)));
        for (Segment segment : segments()) {
            path.append('C')
                    .append(pair(segment.first()))
                    .append(' ')
                    .append(pair(segment.second()))
                    .append(' ')
                    .append(pair(segment.to()));
        }
        return closed ? path.append('Z').toString() : path.toString();
    }

    /** The line as many short straight bits. */
    List<MapPoint> flat() {
        List<MapPoint> flat = new ArrayList<>(List.of(points.get(0)));
        for (Segment segment : segments()) {
            for (int bit = 1; bit <= BITS; bit++) {
                flat.add(segment.at((double) bit / BITS));
            }
        }
        return flat;
    }

    /** A point with at most one decimal. */
    static String pair(MapPoint point) {
        return number(point.x()) + "," + number(point.y());
    }

    /** A number with at most one decimal. */
    static String number(double value) {
        String written = String.format(Locale.ROOT, "%.1f", value);
        String bare = written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
        return bare.equals("-0") ? "0" : bare;
    }
}
