package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Bone;
import ribmark.basics.Side;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow.Role;

/**
 * Animals of other formulas drawn from the rows of the usual one; the numbers are worked by hand from the file. Twelve to
 * fourteen thoracic and six or seven lumbar vertebrae are published for sheep.
 */
class VariationTest {

    private static final String USUAL = "7,13,6,4,3";
    private static final List<String> FORMULAS = List.of(
            USUAL,
            "7,14,6,4,3",
            "7,13,7,4,3",
            "7,12,6,4,3",
            "7,12,7,4,3",
            "7,14,7,4,3",
            "7,13,6,5,3",
            "7,13,6,4,2",
            "7,13,6,3,4");

    @Test
    void every_bone_of_every_animal_is_drawn_once_in_a_view_and_nothing_else() {
        for (String formula : FORMULAS) {
            Set<String> seen = new HashSet<>();
            for (String view : Lamb.MAP.views()) {
                List<String> drawn = Lamb.drawn(view, formula).all(Role.BONE).stream()
                        .map(Shape::id)
                        .toList();
                assertThat(drawn).as(view + " " + formula).doesNotHaveDuplicates();
                seen.addAll(drawn);
            }
            assertThat(seen)
                    .as(formula)
                    .isEqualTo(Lamb.drawn("lateral", formula).animal().bones().stream()
                            .map(Bone::id)
                            .collect(Collectors.toSet()));
        }
    }

    @Test
    void the_view_from_the_left_shows_the_left_and_the_middle_and_the_view_from_the_back_shows_both_sides() {
        Drawing lateral = Lamb.MAP.drawing("lateral");
        assertThat(lateral.bones()).hasSize(90);
        assertThat(lateral.animal().bones().stream().filter(bone -> bone.side() != Side.RIGHT))
                .allMatch(bone -> lateral.shows(bone.id()));
        assertThat(Lamb.MAP.drawing("dorsal").bones()).hasSize(131).doesNotContainKeys("ST1", "ST7", "XC");
    }

    /** The vector of T is (45.6, -2.7) from the left and (40.8, 0) from the back. */
    @Test
    void a_fourteenth_rib_is_the_thirteenth_moved_and_lies_right_behind_it() {
        for (String view : List.of("lateral", "dorsal")) {
            MapPoint by = view.equals("lateral") ? MapPoint.at(45.6, -2.7) : MapPoint.at(40.8, 0);
            Drawing usual = Lamb.MAP.drawing(view);
            Drawing longer = Lamb.drawn(view, "7,14,6,4,3");
            for (String kind : List.of("T13", "R13L", "CC13L")) {
                String copy = kind.replace("13", "14");
                assertThat(longer.bone(copy).orElseThrow().points())
                        .isEqualTo(usual.bone(kind).orElseThrow().moved(by).points());
                assertThat(longer.bone(kind).orElseThrow().points())
                        .isEqualTo(usual.bone(kind).orElseThrow().points());
                List<String> order = List.copyOf(longer.bones().keySet());
                assertThat(order.indexOf(copy)).isEqualTo(order.indexOf(kind) - 1);
            }
        }
    }

    /** C1 and the forelimb stay; L1, ilium, leg line move by 45.6; the sheet becomes 1645.6 wide. */
    @Test
    void what_lies_behind_makes_room_and_what_lies_before_stays() {
        Drawing usual = Lamb.MAP.drawing("lateral");
        Drawing longer = Lamb.drawn("lateral", "7,14,6,4,3");
        for (String stays : List.of("C1", "T1", "R6L", "ST7", "HUML", "SCAPL", "XC", "CC12L")) {
            assertThat(x(longer, stays)).as(stays).isEqualTo(x(usual, stays));
        }
        for (String moves : List.of("L1", "L6", "S1", "Cd3", "ILIL", "FEML", "CALL")) {
            assertThat(x(longer, moves)).as(moves).isCloseTo(x(usual, moves) + 45.6, within(0.001));
        }
        assertThat(line(longer, "leg", 0).x()).isCloseTo(1220.0 + 45.6, within(0.001));
        assertThat(line(longer, "best-end-loin", 0).x()).isCloseTo(933.2 + 45.6, within(0.001));
        assertThat(line(longer, "fore-6-7", 0).x()).isEqualTo(714.5);
        assertThat(line(longer, "breast", 0).x()).isEqualTo(697.2);
        assertThat(line(longer, "breast", 6).x()).isCloseTo(1213.0 + 45.6, within(0.001));
        assertThat(longer.field().width()).isCloseTo(1645.6, within(0.001));
    }

    /** One fewer: (933.2 - 45.6); the last four points bow 13 farther back: 1007.2 - 45.6 + 13, 290 + 2.7. */
    @Test
    void with_twelve_ribs_the_line_behind_the_last_bows_farther_back() {
        Drawing shorter = Lamb.drawn("lateral", "7,12,6,4,3");
        assertThat(shorter.shows("T13") || shorter.shows("R13L") || shorter.shows("CC13L"))
                .isFalse();
        assertThat(line(shorter, "best-end-loin", 0).x()).isCloseTo(887.6, within(0.001));
        assertThat(line(shorter, "best-end-loin", 7).x()).isCloseTo(974.6, within(0.001));
        assertThat(line(shorter, "best-end-loin", 7).y()).isCloseTo(292.7, within(0.001));
        assertThat(line(Lamb.drawn("dorsal", "7,12,6,4,3"), "best-end-loin-L", 5)
                        .x())
                .isCloseTo(982.2 - 40.8, within(0.001));
    }

    /** The vector of L is (48.5, 4.5): the leg line goes through the seventh. */
    @Test
    void a_seventh_loin_bone_pushes_the_hip_and_the_leg_line_back_and_nothing_before_them() {
        Drawing longer = Lamb.drawn("lateral", "7,13,7,4,3");
        assertThat(x(longer, "L7")).isCloseTo(x(longer, "L6") + 48.5, within(0.001));
        assertThat(line(longer, "leg", 1)).isEqualTo(MapPoint.at(1217.0 + 48.5, 157.0 + 4.5));
        assertThat(line(longer, "best-end-loin", 0).x()).isEqualTo(933.2);
        assertThat(longer.shapes().stream().filter(shape -> shape.of().equals("L7") && shape.is(Role.DETAIL)))
                .hasSize(1);
        assertThat(longer.crops().get("hip").left()).isEqualTo(1080 + 48.5);
    }

    /** Sacrum and tail carry no limb: only the bones behind move. */
    @Test
    void a_fifth_sacral_bone_pushes_the_tail_back_and_leaves_the_limb() {
        Drawing usual = Lamb.MAP.drawing("lateral");
        Drawing longer = Lamb.drawn("lateral", "7,13,6,5,3");
        assertThat(x(longer, "Cd1")).isCloseTo(x(usual, "Cd1") + 29.6, within(0.001));
        assertThat(x(longer, "FEML")).isEqualTo(x(usual, "FEML"));
    }

    private static double x(Drawing drawing, String bone) {
        return drawing.bone(bone).orElseThrow().box().left();
    }

    private static MapPoint line(Drawing drawing, String id, int point) {
        return drawing.all(Role.LINE).stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .orElseThrow()
                .points()
                .get(point);
    }
}
