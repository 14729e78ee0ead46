package ribmark.bonemap;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow.Role;

/** Which spots of the window no bone and no line covers. */
final class Ground {

    /** The side of a spot in units: ours. */
    private static final double SPOT = 6;

    private final Box window;
    private final boolean[][] covered;

    private Ground(Box window) {
        this.window = window;
        this.covered = new boolean[(int) (window.width() / SPOT) + 1][(int) (window.height() / SPOT) + 1];
    }

    Ground(Scene scene, Box window) {
        this(window);
        scene.drawing().all(Role.BONE).forEach(bone -> cover(bone.curve().flat(), bone.box()));
        scene.lines().forEach(line -> line.shape().curve().flat().forEach(this::cover));
    }

    private void cover(MapPoint point) {
        if (window.holds(point)) {
            covered[(int) ((point.x() - window.left()) / SPOT)][(int) ((point.y() - window.top()) / SPOT)] = true;
        }
    }

    private void cover(List<MapPoint> outline, Box box) {
        outline.forEach(this::cover);
        for (double x = box.left(); x < box.right(); x += SPOT) {
            for (double y = box.top(); y < box.bottom(); y += SPOT) {
                MapPoint at = MapPoint.at(x, y);
                if (Halving.inside(at, outline)) {
                    cover(at);
                }
            }
        }
    }

    Optional<MapPoint> best(Tag tag, Function<MapPoint, Box> shape, List<Box> taken) {
        MapPoint best = null;
        double least = Double.MAX_VALUE;
        for (int column = 0; column < covered.length; column++) {
            for (int row = 0; row < covered[column].length; row++) {
                MapPoint at = MapPoint.at(window.left() + column * SPOT, window.top() + row * SPOT);
                Box box = shape.apply(at);
                if (at.minus(tag.at()).length() < least && tag.farness(box) < least && isFree(box, taken)) {
                    best = at;
                    least = tag.farness(box);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The same ground as if no bone lay on it. */
    Ground bare() {
        return new Ground(window);
    }

    private boolean isFree(Box box, List<Box> taken) {
        if (!window.holds(box) || taken.stream().anyMatch(box::meets)) {
            return false;
        }
        int lastColumn = (int) ((box.right() - window.left()) / SPOT);
        int lastRow = (int) ((box.bottom() - window.top()) / SPOT);
        for (int column = (int) ((box.left() - window.left()) / SPOT); column <= lastColumn; column++) {
            for (int row = (int) ((box.top() - window.top()) / SPOT); row <= lastRow; row++) {
                if (covered[column][row]) {
                    return false;
                }
            }
        }
        return true;
    }
}
