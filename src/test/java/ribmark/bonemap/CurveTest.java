package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.curriculum.MapPoint;

/** The path through points, worked by hand: handles are 0.35 of their segment long, along the chord of the neighbours. */
class CurveTest {

    private static final MapPoint A = MapPoint.at(0, 0);
    private static final MapPoint B = MapPoint.at(100, 0);
    private static final MapPoint C = MapPoint.at(100, 100);
    private static final MapPoint D = MapPoint.at(0, 100);

    /** At B the tangent is (100,100)/141.42, so its handles are 35 x 0.7071 = 24.75 both ways. */
    @Test
    void an_open_line_starts_and_ends_along_its_own_segments() {
        assertThat(new Curve(List.of(A, B, C), false).path())
                .isEqualTo("M0,0C35,0 75.3,-24.7 100,0C124.7,24.7 100,65 100,100");
    }

    /** At A the neighbours are D and B: the tangent is (100,-100)/141.42. */
    @Test
    void a_closed_outline_joins_last_to_first() {
        assertThat(new Curve(List.of(A, B, C, D), true).path())
                .isEqualTo("M0,0C24.7,-24.7 75.3,-24.7 100,0C124.7,24.7 124.7,75.3 100,100"
                        + "C75.3,124.7 24.7,124.7 0,100C-24.7,75.3 -24.7,24.7 0,0Z");
    }

    @Test
    void a_corner_has_no_handles() {
        assertThat(new Curve(List.of(A, new MapPoint(100, 0, true), C), false).path())
                .isEqualTo("M0,0C35,0 100,0 100,0C100,0 100,65 100,100");
    }

    /** Half way a cubic is (from + 3 first + 3 second + to) / 8: for A to B of the open line (0 + 105 + 225.75 + 100) / 8. */
    @Test
    void the_middle_of_a_segment_is_where_the_formula_says() {
        MapPoint middle = new Curve(List.of(A, B, C), false).flat().get(3);
        assertThat(middle.x()).isCloseTo(53.84, org.assertj.core.data.Offset.offset(0.01));
        assertThat(middle.y()).isCloseTo(-9.28, org.assertj.core.data.Offset.offset(0.01));
    }

    @Test
    void two_points_on_one_spot_do_no_harm() {
        assertThat(new Curve(List.of(A, A, B), false).path()).doesNotContain("NaN");
    }
}
