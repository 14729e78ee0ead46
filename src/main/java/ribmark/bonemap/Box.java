package ribmark.bonemap;

import java.util.List;
import ribmark.curriculum.MapPoint;

/** An upright rectangle on the sheet. */
record Box(double left, double top, double right, double bottom) {

    static Box around(List<MapPoint> points) {
        return new Box(
                points.stream().mapToDouble(MapPoint::x).min().orElse(0),
                points.stream().mapToDouble(MapPoint::y).min().orElse(0),
                points.stream().mapToDouble(MapPoint::x).max().orElse(0),
                points.stream().mapToDouble(MapPoint::y).max().orElse(0));
    }

    static Box centred(MapPoint at, double width, double height) {
        return new Box(at.x() - width / 2, at.y() - height / 2, at.x() + width / 2, at.y() + height / 2);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    double area() {
        return width() * height();
    }

    MapPoint middle() {
        return MapPoint.at((left + right) / 2, (top + bottom) / 2);
    }

    boolean holds(MapPoint point) {
        return point.x() >= left && point.x() <= right && point.y() >= top && point.y() <= bottom;
    }

    boolean holds(Box other) {
        return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** The point of the rectangle that lies nearest to another point. */
    MapPoint nearest(MapPoint to) {
        return MapPoint.at(Math.max(left, Math.min(right, to.x())), Math.max(top, Math.min(bottom, to.y())));
    }

    Box moved(MapPoint by) {
        return new Box(left + by.x(), top + by.y(), right + by.x(), bottom + by.y());
    }

    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }
}
