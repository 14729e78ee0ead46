package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.curriculum.MapPoint;

/** What holds for every line and every box on the drawing. */
class BonemapPropertiesTest {

    private static MapPoint point(Random random) {
        return new MapPoint(between(random, -50, 900), between(random, -50, 500), random.nextInt(5) == 0);
    }

    private static List<MapPoint> points(Random random) {
        List<MapPoint> points = new ArrayList<>();
        for (int n = 2 + random.nextInt(8); n > 0; n--) {
            points.add(point(random));
        }
        return points;
    }

    @Test
    void a_curve_passes_through_its_points_and_hangs_together() {
        holds(random -> {
            List<MapPoint> points = points(random);
            boolean closed = random.nextBoolean();
            List<Curve.Segment> segments = new Curve(points, closed).segments();
            assertThat(segments).hasSize(closed ? points.size() : points.size() - 1);
            for (int n = 0; n < segments.size(); n++) {
                assertThat(segments.get(n).at(0).minus(points.get(n)).length()).isCloseTo(0, within(1e-9));
                MapPoint next = points.get((n + 1) % points.size());
                assertThat(segments.get(n).at(1).minus(next).length()).isCloseTo(0, within(1e-9));
            }
        });
    }

    @Test
    void a_curve_turned_over_is_the_curve_of_its_points_turned_over() {
        holds(random -> {
            List<MapPoint> points = points(random);
            List<MapPoint> over = points.stream()
                    .map(p -> new MapPoint(-p.x(), p.y(), p.corner()))
                    .toList();
            List<MapPoint> one = new Curve(points, true).flat();
            List<MapPoint> other = new Curve(over, true).flat();
            for (int n = 0; n < one.size(); n++) {
                assertThat(other.get(n).x()).isCloseTo(-one.get(n).x(), within(1e-9));
                assertThat(other.get(n).y()).isCloseTo(one.get(n).y(), within(1e-9));
            }
        });
    }

    @Test
    void a_number_of_the_drawing_is_off_by_a_twentieth_at_most_and_has_no_needless_figure() {
        holds(random -> {
            double value = between(random, -1, 1) * Math.pow(10, random.nextInt(4));
            String written = Curve.number(value);
            assertThat(Double.parseDouble(written)).isCloseTo(value, within(0.05 + 1e-9));
            assertThat(written).matches("-?[0-9]+(\\.[1-9])?").isNotEqualTo("-0");
        });
    }

    @Test
    void a_box_holds_its_points_and_none_smaller_does() {
        holds(random -> {
            List<MapPoint> points = points(random);
            Box box = Box.around(points);
            assertThat(points).allMatch(box::holds);
            Box smaller = new Box(box.left() + 1e-6, box.top(), box.right(), box.bottom());
            assertThat(points).anyMatch(p -> !smaller.holds(p));
            Box other = Box.around(points(random));
            assertThat(box.with(other).holds(box) && box.with(other).holds(other))
                    .isTrue();
        });
    }

    @Test
    void no_corner_of_a_box_is_nearer_than_the_nearest_point_of_it() {
        holds(random -> {
            Box box = Box.around(points(random));
            MapPoint to = point(random);
            MapPoint nearest = box.nearest(to);
            assertThat(box.holds(nearest)).isTrue();
            double x = between(random, box.left(), box.right());
            double y = between(random, box.top(), box.bottom());
            assertThat(nearest.minus(to).length())
                    .isLessThanOrEqualTo(MapPoint.at(x, y).minus(to).length() + 1e-9);
        });
    }

    @Test
    void two_boxes_meet_where_some_spot_lies_inside_both() {
        holds(random -> {
            Box one = Box.around(points(random));
            Box other = Box.centred(point(random), between(random, 1, 200), between(random, 1, 200));
            assertThat(one.meets(other)).isEqualTo(other.meets(one));
            MapPoint spot = point(random);
            if (one.holds(spot) && other.holds(spot)) {
                assertThat(one.meets(other)).isTrue();
            }
        });
    }
}
