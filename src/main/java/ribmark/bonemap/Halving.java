package ribmark.bonemap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.anatomy.End;
import ribmark.anatomy.Joint;
import ribmark.curriculum.MapPoint;

/** The two sides of a cut as shapes that clip a sawn bone: the line carried on past the edges of the sheet, and round. */
final class Halving {

    /** Past every sheet: ours. */
    private static final double FAR = 4000;

    private final Drawing drawing;

    Halving(Drawing drawing) {
        this.drawing = drawing;
    }

    /** One side of a line. */
    static List<MapPoint> side(Curve line, boolean leftHand) {
        List<MapPoint> points = line.flat();
        int last = points.size() - 1;
        MapPoint start = beyond(points.get(1), points.get(0));
        MapPoint end = beyond(points.get(last - 1), points.get(last));
        MapPoint along = end.minus(start);
        MapPoint out = MapPoint.at(along.y(), -along.x()).times((leftHand ? 1 : -1) * FAR / along.length());
        List<MapPoint> side = new ArrayList<>(List.of(start));
        side.addAll(points);
        side.addAll(List.of(end, end.plus(out), start.plus(out)));
        return side;
    }

    private static MapPoint beyond(MapPoint from, MapPoint to) {
        MapPoint way = to.minus(from);
        return to.plus(way.times(FAR / way.length()));
    }

    /** Whether a point lies inside a closed run of straight bits. */
    static boolean inside(MapPoint point, List<MapPoint> outline) {
        boolean inside = false;
        MapPoint before = outline.get(outline.size() - 1);
        for (MapPoint here : outline) {
            boolean crosses = here.y() > point.y() != before.y() > point.y();
            if (crosses
                    && point.x()
                            < (before.x() - here.x()) * (point.y() - here.y()) / (before.y() - here.y()) + here.x()) {
                inside = !inside;
            }
            before = here;
        }
        return inside;
    }

    /** The near or far part of a bone sawn along a line: near is where its near joints lead, far where its far ones do. */
    Optional<List<MapPoint>> part(String bone, Stream<Shape> lines, End end) {
        return drawing.bone(bone)
                .flatMap(shape -> nearest(lines, shape))
                .flatMap(line -> neighbours(bone)
                        .max(Comparator.comparingDouble(to -> distance(line, to.middle())))
                        .map(to -> {
                            List<MapPoint> one = side(line.curve(), true);
                            boolean oneIsAsked = inside(to.middle(), one) == (end == to.end());
                            return oneIsAsked ? one : side(line.curve(), false);
                        }));
    }

    private static Optional<Shape> nearest(Stream<Shape> lines, Shape bone) {
        MapPoint middle = bone.box().middle();
        return lines.min(Comparator.comparingDouble(line -> distance(line, middle)));
    }

    private static double distance(Shape line, MapPoint point) {
        return line.curve().flat().stream()
                .mapToDouble(each -> each.minus(point).length())
                .min()
                .orElse(FAR);
    }

    /** The bones joined to either end: the one that lies furthest from the line tells the ends apart best. */
    private Stream<Neighbour> neighbours(String bone) {
        return drawing.animal().joints().stream()
                .filter(joint -> !joint.isSoft() && joint.holds(bone))
                .filter(joint -> end(joint, bone) != End.BOTH)
                .flatMap(joint -> drawing
                        .bone(joint.boneA().equals(bone) ? joint.boneB() : joint.boneA())
                        .map(shape ->
                                new Neighbour(end(joint, bone), shape.box().middle()))
                        .stream());
    }

    /** Where a bone lies that is joined to one end of another. */
    private record Neighbour(End end, MapPoint middle) {}

    private static End end(Joint joint, String bone) {
        return joint.boneA().equals(bone) ? joint.endA() : joint.endB();
    }
}
