package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.contentfiles.ContentFiles;
import ribmark.proof.Check;

class BoneWordsTest {

    private final BoneWords words = new BoneWords(
            Check.of(ContentFiles.ours()).curriculum().orElseThrow().skeleton());

    @Test
    void neighbours_become_a_run_and_both_sides_are_said_once() {
        assertThat(words.say(List.of("R7L", "R8L", "R9L", "R7R", "R8R", "R9R")))
                .isEqualTo("ribs 7 to 9, left and right");
    }

    @Test
    void a_bone_without_a_number_or_a_side_is_said_as_it_is() {
        assertThat(words.say(List.of("C1"))).isEqualTo("atlas");
        assertThat(words.say(List.of("FEML"))).isEqualTo("femur, left");
    }

    @Test
    void vertebrae_have_their_own_plural() {
        assertThat(words.say(List.of("T6", "T7"))).isEqualTo("thoracic vertebrae 6 and 7");
    }

    @Test
    void half_a_bone_is_called_by_its_bone_and_nothing_is_said_of_none() {
        assertThat(words.say(List.of("S1.left"))).isEqualTo("sacral vertebra 1");
        assertThat(words.say(List.of())).isEmpty();
    }

    @Test
    void parts_are_said_region_by_region_then_whole_then_halved_then_sawn_across() {
        assertThat(words.sayParts(List.of("L1.left", "L2.left", "L6.left.near", "R13L")))
                .isEqualTo("rib 13, left; left half of lumbar vertebrae 1 and 2; part of lumbar vertebra 6");
        assertThat(words.sayParts(List.of("S1", "S2", "S3", "S4.left", "S4.right")))
                .isEqualTo("all of the sacrum");
        assertThat(words.sayParts(List.of("ILIL", "ISCL", "PUBL"))).isEqualTo("all of the hip (aitch bone), left");
        assertThat(words.sayParts(List.of("ILIL", "ISCL", "PUBR")))
                .isEqualTo("ilium, left; ischium, left; pubis, right");
    }
}
