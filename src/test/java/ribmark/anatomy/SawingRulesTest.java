package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of sawing, one by one: a modelling choice of ours, and every expected name follows from it. */
class SawingRulesTest {

    @Test
    void what_was_sawn_is_no_longer_there_only_its_halves_are() {
        assertThat(names("saw across L6")).contains("L6.near", "L6.far").doesNotContain("L6");
    }

    @Test
    void a_name_has_the_side_first_whichever_saw_came_first() {
        assertThat(names("saw midline T1; saw across T1.left"))
                .contains("T1.left.near", "T1.left.far", "T1.right")
                .doesNotContain("T1.left");
        assertThat(names("saw across T1; saw midline T1.near"))
                .contains("T1.left.near", "T1.right.near", "T1.far")
                .doesNotContain("T1.near");
    }

    @Test
    void a_half_can_be_sawn_again() {
        assertThat(names("saw across FEML; saw across FEML.far"))
                .contains("FEML.near", "FEML.far.near", "FEML.far.far");
    }

    @Test
    void a_contact_goes_to_the_half_at_its_own_end() {
        Animal animal = after("saw across L6");

        assertThat(animal.heldBy(List.of("L6.near"))).containsExactly("IV-L5-L6", "ZY-L5-L6");
        assertThat(animal.heldBy(List.of("L6.far"))).containsExactly("IV-L6-S1", "ZY-L6-S1");
    }

    @Test
    void a_rib_sawn_beside_a_whole_one_leaves_both_halves_on_it() {
        Animal animal = after("saw across R7L");

        assertThat(animal.heldBy(List.of("R7L.far"))).containsExactly("CO-7L", "IS-6L.far", "IS-7L.far");
        assertThat(animal.heldBy(List.of("R8L"))).contains("IS-7L.near", "IS-7L.far", "IS-8L");
    }

    @Test
    void two_ribs_sawn_alike_hold_near_to_near_and_far_to_far() {
        for (String saws : List.of("saw across R7L R8L", "saw across R7L; saw across R8L", "saw across R8L R7L")) {
            Animal animal = after(saws);
            assertThat(animal.heldBy(List.of("R7L.near", "R8L.near")))
                    .as(saws)
                    .containsExactlyInAnyOrder(
                            "CH-7La", "CH-7Lb", "CT-7L", "CH-8La", "CH-8Lb", "CT-8L", "IS-6L.near", "IS-8L.near");
        }
    }

    @Test
    void sawn_neighbours_hold_left_to_left_and_a_whole_neighbour_keeps_both_halves() {
        Animal animal = after("saw midline T1 T2");

        assertThat(animal.heldBy(List.of("T1.left", "T2.left")))
                .contains("IV-C7-T1.left", "IV-T2-T3.left", "CH-1Lb", "CT-2L")
                .doesNotContain("IV-T1-T2.left", "CH-1Rb");
        assertThat(animal.heldBy(List.of("T3"))).contains("IV-T2-T3.left", "IV-T2-T3.right");
    }

    @Test
    void a_share_keeps_its_name_when_it_is_not_divided() {
        assertThat(after("saw across T1").heldBy(List.of("T2"))).contains("IV-T1-T2");
        assertThat(after("saw midline T1; saw midline T2").heldBy(List.of("T2.left")))
                .contains("IV-T1-T2.left");
    }

    @Test
    void to_sever_an_edge_is_to_sever_all_its_shares_that_still_hold() {
        Animal animal = after("saw across R7L; sever IS-7L.near; sever IS-7L");

        assertThat(animal.heldBy(List.of("R8L"))).doesNotContain("IS-7L", "IS-7L.near", "IS-7L.far");
    }

    @Test
    void to_sever_a_share_takes_those_cut_from_it_and_no_other() {
        Animal animal = after("saw across R7L; saw across R7L.far R8L; saw across R8L.far; sever IS-7L.far");

        assertThat(animal.heldBy(List.of("R7L.near"))).contains("IS-7L.near");
        assertThat(animal.heldBy(List.of("R7L.far.near", "R7L.far.far"))).noneMatch(name -> name.startsWith("IS-7L"));
    }

    @Test
    void what_is_severed_stays_so_when_its_bones_are_sawn_later() {
        assertThat(after("sever IS-7L; saw across R7L R8L").heldBy(List.of("R7L.near")))
                .noneMatch(name -> name.startsWith("IS-7L"));
    }

    @Test
    void lifting_severs_all_that_holds_the_parts_to_the_rest_and_nothing_among_themselves() {
        Animal animal = after("lift ILIL ISCL PUBL FEML");

        assertThat(animal.heldBy(List.of("ILIL", "ISCL", "PUBL", "FEML"))).isEmpty();
        assertThat(animal.heldBy(List.of("FEML"))).containsExactly("HIP1-L", "HIP2-L", "HIP3-L");
        assertThat(after("lift ILIL ISCL PUBL FEML; lift ILIL ISCL PUBL FEML").pieces())
                .isEqualTo(animal.pieces());
    }

    @Test
    void parts_follow_the_skeleton_then_left_right_then_near_far_and_the_largest_piece_comes_first() {
        assertThat(names("saw across T1; saw midline T1.near; saw across T1.left.near"))
                .containsSubsequence("C7", "T1.far", "T2")
                .containsSubsequence("T1.left.near.near", "T1.left.near.far", "T1.right.near");
        assertThat(names("saw midline T1; saw across T1.left T1.right"))
                .containsSubsequence("C7", "T1.left.near", "T1.left.far", "T1.right.near", "T1.right.far", "T2");
        assertThat(after("lift HUMR; lift HUML; lift PATR; lift C1").pieces())
                .extracting(Piece::size, piece -> piece.first().name())
                .startsWith(tuple(119, "C2"))
                .endsWith(
                        tuple(8, "RADL"),
                        tuple(8, "RADR"),
                        tuple(1, "C1"),
                        tuple(1, "HUML"),
                        tuple(1, "HUMR"),
                        tuple(1, "PATR"));
    }

    @Test
    void an_operation_leaves_the_animal_before_it_as_it_was() {
        Animal before = Ovine.usual();

        Ovine.after(before, "lift C1");

        assertThat(before.pieces()).hasSize(1);
    }

    private static Animal after(String line) {
        return Ovine.after(Ovine.usual(), line);
    }

    private static List<String> names(String line) {
        return after(line).parts().stream().map(Part::name).toList();
    }
}
