package ribmark.curriculum;

/** A point of the bone map in units of its sheet: x from head to tail, y downwards; at a corner an outline has no bend. */
public record MapPoint(double x, double y, boolean corner) {

    /** A point that is no corner. */
    public static MapPoint at(double x, double y) {
        return new MapPoint(x, y, false);
    }

    /** The point moved by a vector. */
    public MapPoint plus(MapPoint by) {
        return new MapPoint(x + by.x, y + by.y, corner);
    }

    /** The vector that leads from the other point to this one. */
    public MapPoint minus(MapPoint other) {
        return new MapPoint(x - other.x, y - other.y, corner);
    }

    /** The vector so many times as long. */
    public MapPoint times(double factor) {
        return new MapPoint(x * factor, y * factor, corner);
    }

    /** How long the vector is. */
    public double length() {
        return Math.hypot(x, y);
    }
}
