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

    /** How far is looked first, in units, and how many times as far next: ours. */
    private static final double NEAR = 120;

    private static final double FARTHER = 3;

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

    /** The free spot nearest to what is named, looked for from near to far. */
    Optional<MapPoint> best(Tag tag, Function<MapPoint, Box> shape, List<Box> taken) {
        for (double reach = NEAR; ; reach *= FARTHER) {
            Best best = new Best(tag, shape, taken);
            best.within(reach);
            if (best.least <= reach || reach > window.width() + window.height()) {
                return Optional.ofNullable(best.at);
            }
        }
    }

    /** One look at all spots within reach; beyond it everything is farther than the reach. */
    private final class Best {
        private final Tag tag;
        private final Function<MapPoint, Box> shape;
        private final List<Box> taken;
        private MapPoint at;
        private double least = Double.MAX_VALUE;

        Best(Tag tag, Function<MapPoint, Box> shape, List<Box> taken) {
            this.tag = tag;
            this.shape = shape;
            this.taken = taken;
        }

        void within(double reach) {
            int lastColumn = spot(tag.at().x() + reach - window.left(), covered.length - 1);
            int lastRow = spot(tag.at().y() + reach - window.top(), covered[0].length - 1);
            for (int column = spot(tag.at().x() - reach - window.left(), lastColumn); column <= lastColumn; column++) {
                for (int row = spot(tag.at().y() - reach - window.top(), lastRow); row <= lastRow; row++) {
                    look(MapPoint.at(window.left() + column * SPOT, window.top() + row * SPOT));
                }
            }
        }

        private int spot(double units, int last) {
            return (int) Math.max(0, Math.min(last, units / SPOT));
        }

        private void look(MapPoint spot) {
            double away = spot.minus(tag.at()).length();
            if (away >= least) {
                return;
            }
            Box box = shape.apply(spot);
            double farness = isFree(box, taken) ? tag.farness(box) : Double.MAX_VALUE;
            if (farness < least) {
                at = spot;
                least = farness;
            }
        }
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
