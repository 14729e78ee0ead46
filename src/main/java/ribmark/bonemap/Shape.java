package ribmark.bonemap;

import java.util.List;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;

/** One thing on the sheet: the outline of a bone, a line in it, a cut, a landmark or the soft outline. */
record Shape(
        Role role,
        String id,
        String of,
        int order,
        boolean closed,
        double stroke,
        List<MapPoint> points,
        MapPoint label) {

    static Shape of(MapRow row) {
        return new Shape(
                row.role(), row.id(), row.of(), row.order(), row.closed(), row.stroke(), row.points(), row.label());
    }

    boolean is(Role other) {
        return role == other;
    }

    Shape moved(MapPoint by) {
        return new Shape(
                role,
                id,
                of,
                order,
                closed,
                stroke,
                points.stream().map(point -> point.plus(by)).toList(),
                label.plus(by));
    }

    Shape with(List<MapPoint> others) {
        return new Shape(role, id, of, order, closed, stroke, others, label);
    }

    Shape named(String otherId, String otherOf) {
        return new Shape(role, otherId, otherOf, order, closed, stroke, points, label);
    }

    Curve curve() {
        return new Curve(points, closed);
    }

    Box box() {
        return Box.around(points);
    }
}
