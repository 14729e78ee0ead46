package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ribmark.anatomy.Formula;
import ribmark.basics.Side;
import ribmark.moved.Way;

/** Every line that can run elsewhere is drawn where it should run and where it ran, on every animal. */
class RanTest {

    @Test
    void every_way_is_drawn_solid_where_it_should_run_and_dotted_where_it_ran() {
        for (String formula : new String[] {"7,13,6,4,3", "7,12,7,4,3", "7,14,6,4,3"}) {
            BoneMap map = Lamb.MAP.on(Lamb.CURRICULUM.on(Formula.parse(formula)));
            for (Way way : Way.all(map.curriculum().breakdown())) {
                assertThat(map.ran(way)).as(way.says()).isNotEmpty();
                map.ran(way).forEach((view, scene) -> {
                    assertThat(scene.lines())
                            .as(view + ": " + way.says())
                            .extracting(DrawnLine::stroke)
                            .contains(DrawnLine.Stroke.CUT, DrawnLine.Stroke.RAN)
                            .doesNotContain(DrawnLine.Stroke.PLANNED);
                    assertThat(scene.whole(BonePictures.IN_A_PART))
                            .startsWith("<svg")
                            .endsWith("</svg>\n");
                });
            }
        }
    }

    @Test
    void one_side_alone_is_seen_from_the_back_and_the_left_from_the_left_too() {
        for (Way way : Way.all(Lamb.CURRICULUM.breakdown())) {
            if (way.side() != Side.BOTH) {
                assertThat(Lamb.MAP.ran(way)).as(way.says()).containsKey("dorsal");
            }
            assertThat(Lamb.MAP.ran(way).containsKey("lateral")).as(way.says()).isEqualTo(way.side() != Side.RIGHT);
        }
    }
}
