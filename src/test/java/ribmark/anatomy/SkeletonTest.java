package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.function.Predicate;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.basics.Refused;
import ribmark.basics.Side;

/**
 * The sheep of the content folder. All counts here are derived by us from the two files; the make-up of the usual
 * animal rests on the sources named in each row of them.
 */
class SkeletonTest {

    private static final Bone HEAD = Bone.of("A1", "First", "Prima I", "M", "neck", "", "MOD");
    private static final Bone TAIL = Bone.of("A2", "Second", "Secunda II", "M", "neck", "", "MOD");

    @Test
    void the_usual_sheep_has_the_bones_we_counted() {
        assertThat(Ovine.USUAL.bones()).hasSize(139);
        assertThat(Ovine.USUAL.joints()).hasSize(323);
        assertThat(bones(bone -> bone.side() == Side.ONCE)).isEqualTo(41);
        assertThat(bones(bone -> bone.side() == Side.LEFT)).isEqualTo(49);
        assertThat(bones(bone -> bone.side() == Side.RIGHT)).isEqualTo(49);
        assertThat(Ovine.USUAL.joints().stream().filter(Joint::isSoft)).hasSize(41);
    }

    @Test
    void every_left_bone_has_its_right_twin() {
        Ovine.USUAL.bones().stream()
                .filter(bone -> bone.side() == Side.LEFT)
                .forEach(bone -> assertThat(Ovine.USUAL.bone(bone.id().replaceAll("L$", "R")))
                        .as(bone.id())
                        .hasValueSatisfying(twin -> assertThat(twin.side()).isEqualTo(Side.RIGHT)));
    }

    @Test
    void the_regions_of_the_spine_and_their_counts_are_read_from_the_files() {
        assertThat(Ovine.USUAL.regions()).containsExactly("C", "T", "L", "S", "Cd");
        assertThat(Ovine.USUAL.formula()).hasToString("7,13,6,4,3");
    }

    @Test
    void the_whole_animal_hangs_together_and_without_its_soft_edges_the_shoulders_do_not() {
        assertThat(Ovine.sizes(Ovine.usual())).containsExactly(139);

        String soft = String.join(
                " ",
                Ovine.USUAL.joints().stream()
                        .filter(Joint::isSoft)
                        .map(Joint::id)
                        .toList());
        assertThat(Ovine.sizes(Ovine.after(Ovine.usual(), "sever " + soft))).containsExactly(117, 11, 11);
    }

    /** The recipe for other formulas is a modelling choice; the counts follow from it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7,13,6,4,3 | 139 | 323
                    7,13,7,4,3 | 140 | 325
                    7,14,6,4,3 | 144 | 337
                    7,14,5,4,3 | 143 | 335
                    7,12,6,4,3 | 134 | 309
                    7,12,7,4,3 | 135 | 311
                    7,14,7,4,3 | 145 | 339
                    7,15,6,4,3 | 149 | 351
                    7,13,5,4,3 | 138 | 321
                    6,13,6,4,3 | 138 | 321
                    7,13,6,4,0 | 136 | 320
                    7,13,6,4,6 | 142 | 326
                    5,8,1,3,0  | 103 | 235
                    """)
    void another_formula_gives_another_animal(String formula, int bones, int joints) {
        Skeleton animal = Ovine.with(formula.strip());

        assertThat(animal.bones()).hasSize(bones);
        assertThat(animal.joints()).hasSize(joints);
        assertThat(animal.formula()).hasToString(formula.strip());
        assertThat(Ovine.sizes(Animal.whole(animal))).containsExactly(bones);
    }

    @Test
    void a_fourteenth_rib_comes_with_all_that_holds_it() {
        Skeleton animal = Ovine.with("7,14,6,4,3");

        assertThat(animal.joints())
                .extracting(Joint::id)
                .contains("CH-14La", "CH-14Lb", "CT-14L", "CO-14L", "IS-13L", "AW-12-13L", "AW-13-14L")
                .contains("CH-14Ra", "CH-14Rb", "CT-14R", "CO-14R", "IS-13R", "AW-12-13R", "AW-13-14R")
                .contains("IV-T13-T14", "ZY-T13-T14", "IV-T14-L1", "ZY-T14-L1")
                .doesNotContain("IV-T13-L1", "ZY-T13-L1", "IC-12-13L");
        assertThat(animal.joint("IV-T14-L1"))
                .hasValueSatisfying(joint -> assertThat(joint)
                        .extracting(Joint::boneA, Joint::boneB, Joint::endA, Joint::endB)
                        .containsExactly("T14", "L1", End.FAR, End.NEAR));
    }

    @Test
    void new_bones_stand_right_behind_the_last_of_their_kind_and_are_named_like_it() {
        List<String> ids =
                Ovine.with("7,14,7,4,3").bones().stream().map(Bone::id).toList();

        assertThat(ids).containsSubsequence("T13", "T14", "L1", "L6", "L7", "S1", "R13L", "R14L", "CC1L");
        assertThat(ids.indexOf("R14R")).isEqualTo(ids.indexOf("R13R") + 1);
        assertThat(Ovine.with("7,14,6,4,3").bone("R14L"))
                .hasValueSatisfying(bone -> assertThat(bone)
                        .extracting(Bone::name, Bone::latin, Bone::side)
                        .containsExactly("Rib 14, left (bony part)", "Costa XIV (os costale)", Side.LEFT));
    }

    @Test
    void the_twelfth_cartilage_stays_in_the_arch_when_there_are_twelve_ribs() {
        Skeleton animal = Ovine.with("7,12,6,4,3");

        assertThat(animal.joints())
                .extracting(Joint::id)
                .contains("IC-11-12L", "IV-T12-L1", "ZY-T12-L1")
                .doesNotContain("AW-12-13L", "IS-12L", "CO-13L", "CT-13R", "IV-T12-T13");
        assertThat(animal.bone("CC13R")).isEmpty();
    }

    @Test
    void the_first_rib_follows_the_last_neck_bone_and_the_muscles_stay_at_their_numbers() {
        Skeleton animal = Ovine.with("6,13,6,4,3");

        assertThat(animal.joint("CH-1La").orElseThrow().boneB()).isEqualTo("C6");
        assertThat(animal.joint("CH-1La").orElseThrow().name()).endsWith("C6");
        assertThat(animal.joint("SYN-SVCL").orElseThrow().boneB()).isEqualTo("C5");
        assertThat(animal.joint("IV-C6-T1")).isPresent();
    }

    @Test
    void the_way_to_a_formula_does_not_matter() {
        assertThat(Ovine.with("7,12,6,4,3")
                        .withFormula(Formula.parse("7,13,6,4,3"))
                        .joints())
                .isEqualTo(Ovine.USUAL.joints());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    4,13,6,4,3 | fewer than 5 C
                    7,7,6,4,3  | fewer than 8 T
                    7,13,0,4,3 | fewer than 1 L
                    7,13,6,2,3 | fewer than 3 S
                    7,13,6     | one for each of C, T, L, S and Cd, for example 7,13,6,4,3
                    """)
    void numbers_that_leave_something_without_its_bone_are_refused(String formula, String saying) {
        assertThatThrownBy(() -> Ovine.with(formula.strip()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining(saying.strip());
    }

    @Test
    void rows_that_do_not_fit_together_are_all_told() {
        Joint good = Joint.of("A1-A2", "Joint", "x", "A1", "A2", "MOD", "far", "near");
        Joint stray = Joint.of("Q", "Joint", "x", "A1", "A22", "MOD", "far", "near");
        Joint loop = Joint.of("A1", "Joint", "x", "A1", "A1", "MOD", "far", "near");

        assertThat(Flaw.in(List.of(HEAD, TAIL, HEAD), List.of(good, good, stray, loop)))
                .extracting(Flaw::list, Flaw::row, Flaw::sentence)
                .containsExactly(
                        flaw(Flaw.Rows.BONES, 2, "There are two bones “A1”: give each its own id."),
                        flaw(Flaw.Rows.JOINTS, 1, "There are two joints “A1-A2”: give each its own id."),
                        flaw(
                                Flaw.Rows.JOINTS,
                                2,
                                "“Q” names the bone “A22”, which is not in the skeleton (did you mean “A2”?): add the bone"
                                        + " or correct the id."),
                        flaw(Flaw.Rows.JOINTS, 3, "“A1” is the id of a bone too: give the joint another."),
                        flaw(Flaw.Rows.JOINTS, 3, "“A1” joins “A1” to itself: name two bones."));
        assertThatThrownBy(() -> Skeleton.of(List.of(HEAD, HEAD), List.of()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("two bones “A1”");
        assertThatThrownBy(() -> Skeleton.of(List.of(), List.of())).isInstanceOf(Refused.class);
    }

    @Test
    void a_row_that_cannot_be_read_is_refused() {
        assertThatThrownBy(() -> Bone.of("A1", "", "", "X", "", "", ""))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("“A1” has the side “X”");
        assertThatThrownBy(() -> Bone.of("A.1", "", "", "M", "", "", "")).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> Joint.of("J", "", "", "A1", "A2", "", "front", "near"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("“J” has the end “front”");
    }

    private static Tuple flaw(Flaw.Rows list, int row, String sentence) {
        return tuple(list, row, sentence);
    }

    private static long bones(Predicate<Bone> which) {
        return Ovine.USUAL.bones().stream().filter(which).count();
    }
}
