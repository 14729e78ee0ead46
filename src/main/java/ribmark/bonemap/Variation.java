package ribmark.bonemap;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;

/**
 * Draws animals with other numbers of vertebrae from the rows of one view: one more at the end of a region is a copy of the
 * last, moved by the vector of that region, and all that lies behind makes room; one fewer is left out and the rest closes
 * up. A modelling choice, ours.
 */
final class Variation {

    private static final Pattern NUMBER = Pattern.compile("([A-Za-z]+)([0-9]+)(.*)");

    /** So many points at the end of a line bow with the rib before: a drawing choice, ours. */
    private static final int BOWING = 4;

    private final List<MapRow> rows;
    private final Followers followers;
    private final Map<String, MapRow> shifts;
    private Skeleton animal;
    private List<Shape> shapes;
    private Map<String, Shape> crops;

    private Variation(String view, List<MapRow> all, Skeleton any) {
        this.rows = all.stream().filter(row -> row.view().equals(view)).toList();
        this.shifts = rows.stream()
                .filter(row -> row.role() == Role.SHIFT)
                .collect(Collectors.toMap(MapRow::id, row -> row, (one, two) -> one, LinkedHashMap::new));
        this.animal = any.withFormula(drawn(any));
        this.followers = new Followers(animal, rows);
        this.shapes = rows.stream()
                .filter(row -> row.order() > 0)
                .filter(row -> row.role() != Role.SHIFT)
                .map(Shape::of)
                .toList();
        this.crops = rows.stream()
                .filter(row -> row.role() == Role.CROP || row.role() == Role.FIELD)
                .map(Shape::of)
                .collect(Collectors.toMap(Shape::id, shape -> shape, (one, two) -> one, LinkedHashMap::new));
    }

    /** This animal in this view. */
    static Drawing of(String view, List<MapRow> all, Skeleton animal) {
        Variation variation = new Variation(view, all, animal);
        for (int at = 0; at < animal.regions().size(); at++) {
            variation.bring(at, animal.formula().counts().get(at));
        }
        return variation.drawing(view);
    }

    /** The numbers of vertebrae the rows draw: the last of each region stands beside its vector. */
    private Formula drawn(Skeleton any) {
        List<Integer> counts = new ArrayList<>(any.formula().counts());
        for (int at = 0; at < counts.size(); at++) {
            MapRow shift = shifts.get(any.regions().get(at));
            if (shift != null) {
                counts.set(at, Integer.valueOf(shift.of().substring(shift.id().length())));
            }
        }
        return new Formula(counts);
    }

    private void bring(int at, int wanted) {
        for (int count = count(at); count < wanted; count++) {
            step(at, 1);
        }
        for (int count = count(at); count > wanted; count--) {
            step(at, -1);
        }
    }

    private int count(int at) {
        return animal.formula().counts().get(at);
    }

    private void step(int at, int more) {
        List<Integer> counts = new ArrayList<>(animal.formula().counts());
        counts.set(at, counts.get(at) + more);
        Skeleton next = animal.withFormula(new Formula(counts));
        String letters = animal.regions().get(at);
        MapPoint by = shifts.containsKey(letters)
                ? shifts.get(letters).points().get(0).times(more)
                : MapPoint.at(0, 0);
        Set<String> gone = without(animal, next);
        Map<String, String> fresh = originals(without(next, animal));
        double behind = middle(letters + count(at));
        List<Shape> all = new ArrayList<>();
        for (Shape shape : shapes) {
            fresh.forEach((copy, original) -> copies(shape, original, copy, by).forEach(all::add));
            if (!gone.contains(owner(shape))) {
                all.add(moved(shape, at, by, behind, more < 0));
            }
        }
        shapes = List.copyOf(all);
        crops.replaceAll((id, crop) -> moved(crop, at, by));
        animal = next;
    }

    private static Set<String> without(Skeleton one, Skeleton other) {
        Set<String> ids = new HashSet<>(one.bones().stream().map(Bone::id).toList());
        other.bones().forEach(bone -> ids.remove(bone.id()));
        return ids;
    }

    /** Each new bone is a copy of the one before it. */
    private static Map<String, String> originals(Set<String> fresh) {
        Map<String, String> originals = new LinkedHashMap<>();
        fresh.stream().sorted().forEach(id -> {
            Matcher number = NUMBER.matcher(id);
            if (number.matches()) {
                originals.put(id, number.group(1) + (Integer.parseInt(number.group(2)) - 1) + number.group(3));
            }
        });
        return originals;
    }

    /** A copy is drawn right behind its original, so it comes with its details before it. */
    private List<Shape> copies(Shape shape, String original, String copy, MapPoint by) {
        if (!shape.is(Role.BONE) || !shape.id().equals(original)) {
            return List.of();
        }
        List<Shape> all = new ArrayList<>(List.of(shape.named(copy, copy).moved(by)));
        shapes.stream()
                .filter(each -> each.is(Role.DETAIL) && each.of().equals(original))
                .map(each -> each.named(each.id().replace(original, copy), copy).moved(by))
                .forEach(all::add);
        return all;
    }

    private static String owner(Shape shape) {
        return shape.is(Role.BONE) ? shape.id() : isLine(shape) ? "" : shape.of();
    }

    private static boolean isLine(Shape shape) {
        return shape.is(Role.LINE) || shape.is(Role.MOVED);
    }

    private double middle(String vertebra) {
        return shapes.stream()
                .filter(shape -> shape.is(Role.BONE) && shape.id().equals(vertebra))
                .mapToDouble(shape -> shape.box().middle().x())
                .findFirst()
                .orElse(Double.MAX_VALUE);
    }

    private Shape moved(Shape shape, int at, MapPoint by, double behind, boolean fewer) {
        return switch (shape.role()) {
            case LINE, MOVED -> bowed(movedLine(shape, at, by, behind), at, fewer);
            case CONTEXT -> pointByPoint(shape, by, behind);
            default -> followers.region(first(owner(shape))) > at ? shape.moved(by) : shape;
        };
    }

    /** What was copied goes where its original goes; the followers know the animal as it is drawn in the rows. */
    private String first(String id) {
        Matcher number = NUMBER.matcher(id);
        boolean copied = number.matches()
                && rows.stream().noneMatch(row -> row.isOfBone() && row.id().equals(id));
        return copied ? first(number.group(1) + (Integer.parseInt(number.group(2)) - 1) + number.group(3)) : id;
    }

    private Shape movedLine(Shape line, int at, MapPoint by, double behind) {
        var region = followers.regionOfLine(line.is(Role.MOVED) ? line.of() : line.id());
        if (region.isPresent()) {
            return region.get() > at ? line.moved(by) : line;
        }
        Shape moved = pointByPoint(line, by, behind);
        List<MapPoint> points = new ArrayList<>(moved.points());
        followers.regionOfEnd(line.id()).ifPresent(end -> {
            MapPoint last = line.points().get(points.size() - 1);
            points.set(points.size() - 1, end > at ? last.plus(by) : last);
        });
        return moved.with(List.copyOf(points));
    }

    private static Shape pointByPoint(Shape shape, MapPoint by, double behind) {
        return shape.with(shape.points().stream()
                .map(point -> point.x() > behind ? point.plus(by) : point)
                .toList());
    }

    private Shape bowed(Shape line, int at, boolean fewer) {
        List<MapPoint> points = new ArrayList<>(line.points());
        rows.stream()
                .filter(row -> fewer && row.role() == Role.BOW && row.id().equals(line.id()))
                .filter(row -> followers.region(row.of()) == at)
                .forEach(row -> {
                    for (int i = Math.max(0, points.size() - BOWING); i < points.size(); i++) {
                        points.set(i, points.get(i).plus(row.points().get(0)));
                    }
                });
        return line.with(List.copyOf(points));
    }

    /** The sheet grows with the animal; a part of it moves with what it shows. */
    private Shape moved(Shape crop, int at, MapPoint by) {
        MapPoint along = MapPoint.at(by.x(), 0);
        if (crop.is(Role.FIELD)) {
            return crop.with(List.of(crop.points().get(0), crop.points().get(1).plus(along)));
        }
        boolean moves = !crop.of().isEmpty() && followers.region(crop.of()) > at;
        return moves ? crop.moved(along) : crop;
    }

    private Drawing drawing(String view) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        crops.forEach((id, crop) -> boxes.put(id, crop.box()));
        Map<String, MapPoint> asides = rows.stream()
                .filter(row -> row.role() == Role.ASIDE)
                .collect(Collectors.toMap(MapRow::id, row -> row.points().get(0), (one, two) -> one));
        Box field = boxes.remove(view);
        return new Drawing(view, animal, field, boxes, shapes, new Followers(animal, rows).groups(), asides);
    }
}
