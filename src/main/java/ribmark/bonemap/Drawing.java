package ribmark.bonemap;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Plane;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow.Role;

/** One animal drawn in one view: its shapes from back to front, the sheet, and the parts of it that can be shown alone. */
record Drawing(
        String view,
        Skeleton animal,
        Box field,
        Map<String, Box> crops,
        List<Shape> shapes,
        Map<String, String> groups,
        Map<String, MapPoint> asides) {

    /** Under a limb laid aside so much of the sheet is left free: ours. */
    private static final double MARGIN = 14;

    /** The shapes in the order they are drawn in. */
    Drawing {
        shapes = shapes.stream().sorted(Comparator.comparingInt(Shape::order)).toList();
    }

    /** All shapes of this role. */
    List<Shape> all(Role role) {
        return shapes.stream().filter(shape -> shape.is(role)).toList();
    }

    /** The outline of a bone, where it can be seen in this view. */
    Optional<Shape> bone(String id) {
        return shapes.stream()
                .filter(shape -> shape.is(Role.BONE) && shape.id().equals(id))
                .findFirst();
    }

    boolean shows(String id) {
        return bone(id).isPresent();
    }

    /** Whether right bones are in sight beside left ones. */
    boolean showsBothSides() {
        return animal.bones().stream().anyMatch(bone -> bone.side() == Side.RIGHT && shows(bone.id()));
    }

    /** The line down the middle, where this view looks along it. */
    Optional<Shape> midline() {
        return all(Role.LINE).stream()
                .filter(line -> showsBothSides() && line.id().equals(Plane.MIDLINE.word()))
                .findFirst();
    }

    /** The lines that run by a landmark. */
    Stream<Shape> linesBy(String landmark) {
        return all(Role.LINE).stream().filter(line -> line.of().equals(landmark));
    }

    /** A line where it can run instead: the one of this name, and those of the sides in sight that are asked for. */
    List<Shape> moved(String name, Side side) {
        return all(Role.MOVED).stream()
                .filter(line -> line.id().equals(name)
                        || line.id().equals(name + "-L") && side != Side.RIGHT
                        || line.id().equals(name + "-R") && side != Side.LEFT)
                .toList();
    }

    /** The limb or region a bone belongs to. */
    String group(String bone) {
        return groups.getOrDefault(bone, "");
    }

    /** The same with one limb laid aside, where there is room for it. */
    Drawing laidAside(String group) {
        MapPoint by = asides.get(group);
        if (by == null) {
            return this;
        }
        List<Shape> moved = shapes.stream()
                .map(shape -> group(owner(shape)).equals(group) ? shape.moved(by) : shape)
                .toList();
        double lowest = moved.stream()
                .filter(shape -> shape.is(Role.BONE))
                .mapToDouble(shape -> shape.box().bottom())
                .max()
                .orElse(0);
        Box sheet = new Box(field.left(), field.top(), field.right(), Math.max(field.bottom(), lowest + MARGIN));
        return new Drawing(view, animal, sheet, crops, moved, groups, asides);
    }

    private static String owner(Shape shape) {
        return shape.is(Role.BONE) ? shape.id() : shape.of();
    }

    /** The smallest part of the sheet that holds all these boxes; the whole sheet when none does. */
    Box closeUp(List<Box> boxes) {
        return Stream.concat(crops.values().stream(), Stream.of(field))
                .filter(crop -> boxes.stream().allMatch(crop::holds))
                .min(Comparator.comparingDouble(crop -> crop.width() * crop.height()))
                .orElse(field);
    }

    /** The bones of a limb that lie over this bone. */
    List<String> lyingOver(String bone, String limb) {
        return bone(bone).stream()
                .flatMap(under -> all(Role.BONE).stream()
                        .filter(over ->
                                over.order() > under.order() && group(over.id()).equals(limb))
                        .filter(over -> over.box().meets(under.box())))
                .map(Shape::id)
                .toList();
    }

    /** Whether another bone is drawn over this spot of a bone. */
    boolean isCovered(MapPoint spot, Shape bone) {
        return all(Role.BONE).stream()
                .filter(over -> over.order() > bone.order() && over.box().holds(spot))
                .anyMatch(over -> Halving.inside(spot, over.curve().flat()));
    }

    /** The limbs: groups that hold no bone of the midline. */
    List<String> limbs() {
        List<String> trunk = animal.bones().stream()
                .filter(Bone::isMidline)
                .map(bone -> group(bone.id()))
                .toList();
        return groups.values().stream()
                .distinct()
                .filter(group -> !trunk.contains(group))
                .sorted()
                .toList();
    }

    /** The bones by their ids, back to front. */
    Map<String, Shape> bones() {
        Map<String, Shape> bones = new LinkedHashMap<>();
        all(Role.BONE).forEach(shape -> bones.put(shape.id(), shape));
        return bones;
    }
}
