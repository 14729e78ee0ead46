package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.End;
import ribmark.basics.Side;
import ribmark.curriculum.MapPoint;

/** Sawn bones are parted by their line: near lies towards the head, the spine or the trunk. */
class HalvingTest {

    private final Drawing lateral = Lamb.MAP.drawing("lateral");

    /** A line straight down at x = 50: left of it and right of it. */
    @Test
    void a_line_has_two_sides_that_share_nothing() {
        Curve line = new Curve(List.of(MapPoint.at(50, 0), MapPoint.at(50, 100)), false);
        MapPoint left = MapPoint.at(10, 300);
        MapPoint right = MapPoint.at(90, -300);
        List<MapPoint> one = Halving.side(line, true);
        List<MapPoint> other = Halving.side(line, false);
        assertThat(Halving.inside(right, one)).isTrue();
        assertThat(Halving.inside(left, one)).isFalse();
        assertThat(Halving.inside(left, other)).isTrue();
        assertThat(Halving.inside(right, other)).isFalse();
    }

    @Test
    void the_last_loin_bone_is_near_towards_the_head_and_far_towards_the_tail() {
        assertNear("L6", "ilium-tip", "L5", "S1");
    }

    @Test
    void a_rib_is_near_at_the_chine_and_far_at_the_breast() {
        assertNear("R9L", "breast-line", "T9", "CC9L");
    }

    @Test
    void the_arm_bone_is_near_at_the_blade_and_far_at_the_elbow() {
        assertNear("HUML", "elbow", "SCAPL", "RADL");
    }

    @Test
    void the_wing_of_the_ilium_is_near_where_the_saw_crosses_the_slip_joint() {
        List<Shape> line = lateral.moved("middle-tail-1", Side.LEFT);
        List<MapPoint> wing =
                new Halving(lateral).part("ILIL", line.stream(), End.NEAR).orElseThrow();
        assertThat(Halving.inside(middle("L6"), wing)).isTrue();
        assertThat(Halving.inside(middle("FEML"), wing)).isFalse();
    }

    private void assertNear(String bone, String landmark, String near, String far) {
        List<MapPoint> nearPart = part(bone, landmark, End.NEAR);
        List<MapPoint> farPart = part(bone, landmark, End.FAR);
        assertThat(Halving.inside(middle(near), nearPart)).isTrue();
        assertThat(Halving.inside(middle(far), nearPart)).isFalse();
        assertThat(Halving.inside(middle(far), farPart)).isTrue();
        assertThat(Halving.inside(middle(near), farPart)).isFalse();
    }

    private List<MapPoint> part(String bone, String landmark, End end) {
        return new Halving(lateral).part(bone, lateral.linesBy(landmark), end).orElseThrow();
    }

    private MapPoint middle(String bone) {
        return lateral.bone(bone).orElseThrow().box().middle();
    }
}
