package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single lines cut on the usual sheep. The numbers of parts are derived by us, counted on the graph of the content files. */
class CutLinesTest {

    private static final String FORE_LINE = "sever IV-T6-T7 ZY-T6-T7 CH-7La CH-7Ra IS-6L IS-6R XS SC-7La SC-7Ra";
    private static final String LEG_TEST_LINE = "sever IV-L6-S1 ZY-L6-S1";
    private static final String BREAST_LINE = "saw across R7L..R13L R7R..R13R";
    private static final String DOWN_THE_MIDDLE =
            "saw midline C1..C7 T1..T13 L1..L6 S1..S4 Cd1..Cd3 ST1..ST7 XC; sever PS-P PS-I";

    @ParameterizedTest
    @CsvSource({
        "IV-T4-T5 ZY-T4-T5 CH-5La CH-5Ra IS-4L IS-4R SS-4-5 SC-5La SC-5Ra, 86, 53",
        "IV-T5-T6 ZY-T5-T6 CH-6La CH-6Ra IS-5L IS-5R SS-5-6 SC-6La SC-6Ra, 80, 59",
        "IV-T6-T7 ZY-T6-T7 CH-7La CH-7Ra IS-6L IS-6R XS SC-7La SC-7Ra, 74, 65"
    })
    void nine_edges_take_the_fores_off(String edges, int rest, int fores) {
        assertThat(sizes("sever " + edges)).containsExactly(rest, fores);
    }

    @Test
    void with_one_of_the_nine_left_the_fores_stay_on() {
        List<String> edges = List.of(FORE_LINE.substring("sever ".length()).split(" "));
        for (String left : edges) {
            String cut = edges.stream().filter(edge -> !edge.equals(left)).collect(Collectors.joining(" "));
            assertThat(sizes("sever " + cut)).as("with %s left", left).containsExactly(139);
        }
    }

    @Test
    void the_legs_come_off_between_the_last_lumbar_and_the_sacrum() {
        assertThat(sizes(FORE_LINE, LEG_TEST_LINE)).containsExactly(65, 43, 31);
    }

    @Test
    void the_legs_come_off_through_the_last_lumbar() {
        Animal animal = Ovine.after(Ovine.usual(), "saw across L6");

        assertThat(Ovine.sizes(animal)).containsExactly(108, 32);
        assertThat(animal.pieces().get(1).names()).startsWith("L6.far", "S1").doesNotContain("L6.near");
    }

    @Test
    void the_breasts_come_off_the_middle() {
        assertThat(sizes(FORE_LINE, LEG_TEST_LINE, BREAST_LINE)).containsExactly(65, 31, 30, 27);
    }

    @Test
    void the_last_floating_rib_is_held_by_the_muscle_between_the_ribs_or_by_the_belly_wall() {
        String[] middle = {FORE_LINE, LEG_TEST_LINE, BREAST_LINE};

        assertThat(sizes(with(middle, "sever AW-12-13L"))).containsExactly(65, 31, 30, 27);
        assertThat(sizes(with(middle, "sever IS-12L.far"))).containsExactly(65, 31, 30, 27);
        assertThat(sizes(with(middle, "sever AW-12-13L IS-12L.far"))).containsExactly(65, 31, 28, 27, 2);
    }

    @Test
    void a_split_of_the_whole_animal_uses_every_midline_bone() {
        Animal animal = Ovine.after(Ovine.usual(), DOWN_THE_MIDDLE);

        assertThat(animal.parts()).hasSize(139 + 41);
        assertThat(Ovine.sizes(animal)).containsExactly(90, 90);
    }

    @Test
    void split_down_the_middle_the_fores_middle_and_legs_are_halved() {
        assertThat(sizes(FORE_LINE, LEG_TEST_LINE, BREAST_LINE, DOWN_THE_MIDDLE))
                .containsExactly(42, 42, 20, 20, 19, 19, 16, 16);
    }

    @Test
    void ten_pieces_hold_every_bone_once() {
        Animal animal = Ovine.after(
                Ovine.usual(),
                FORE_LINE,
                LEG_TEST_LINE,
                BREAST_LINE,
                DOWN_THE_MIDDLE,
                "sever IV-T12-T13 ZY-T12-T13 CH-13La CH-13Ra IS-12L.near IS-12R.near");

        assertThat(Ovine.sizes(animal)).containsExactly(42, 42, 19, 19, 16, 16, 12, 12, 8, 8);
        assertThat(animal.parts()).hasSize(194);
        assertThat(animal.parts().stream().map(Part::bone).distinct()).hasSize(139);
        assertThat(animal.pieces().get(9).names())
                .containsExactly(
                        "T13.right",
                        "L1.right",
                        "L2.right",
                        "L3.right",
                        "L4.right",
                        "L5.right",
                        "L6.right",
                        "R13R.near");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    sever SYN-SVTL SYN-SVCL SYN-RHTL SYN-PECL SYN-SVTR SYN-SVCR SYN-RHTR SYN-PECR | 117 11 11
                    sever IV-C3-C4 ZY-C3-C4 LN-C2 LN-C3                                           | 136 3
                    sever IV-C3-C4 ZY-C3-C4                                                       | 139
                    sever ELB-RL ELB-UL                                                           | 131 8
                    sever FTL PLL                                                                 | 132 7
                    sever FTL                                                                     | 139
                    sever SIL STLL HIP1-L HIP2-L HIP3-L PS-P PS-I                                 | 127 9 3
                    lift ILIL ISCL PUBL                                                           | 127 9 3
                    sever AA                                                                      | 138 1
                    saw across C5; sever IV-C4-C5 ZY-C4-C5 LN-C2 LN-C3 LN-C4                      | 136 4
                    """)
    void one_line_frees_what_we_counted(String line, String sizes) {
        assertThat(sizes(line.strip())).isEqualTo(numbers(sizes));
    }

    @Test
    void after_the_split_the_pelvic_bone_comes_out_of_its_own_leg() {
        Animal animal = Ovine.after(
                Ovine.usual(),
                FORE_LINE,
                LEG_TEST_LINE,
                BREAST_LINE,
                DOWN_THE_MIDDLE,
                "sever SIL STLL HIP1-L HIP2-L HIP3-L");

        assertThat(Ovine.sizes(animal)).containsExactly(42, 42, 20, 20, 19, 16, 16, 9, 7, 3);
    }

    @Test
    void sawing_the_fifth_neck_bone_does_not_free_the_scrag() {
        assertThat(sizes("saw across C5; sever LN-C2 LN-C3 LN-C4")).containsExactly(140);
    }

    private static List<Integer> sizes(String... lines) {
        return Ovine.sizes(Ovine.after(Ovine.usual(), lines));
    }

    private static String[] with(String[] lines, String last) {
        return Stream.concat(Stream.of(lines), Stream.of(last)).toArray(String[]::new);
    }

    private static List<Integer> numbers(String sizes) {
        return Stream.of(sizes.strip().split(" ")).map(Integer::valueOf).toList();
    }
}
