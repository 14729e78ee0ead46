package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribmark.basics.Refused;

/** Every "no" is one sentence that names the id and says what to do. The sentences are ours. */
class RefusalsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        saw across T14 | “T14” is not in this animal, whose T end at 13: name one that is there, or give another vertebral formula.
        saw across R7X | No bone of this animal is called “R7X” (did you mean “R7R”?): take an id from the list of bones.
        saw across HULM | No bone of this animal is called “HULM” (did you mean “HUML”?): take an id from the list of bones.
        lift femur | No bone of this animal is called “femur” (did you mean “FEMR”?): take an id from the list of bones.
        lift Schulter | No bone of this animal is called “Schulter”: take an id from the list of bones.
        saw across XS | “XS” is a joint or soft edge, which is neither sawn nor lifted: sever it instead.
        sever T6 | “T6” is a bone, which is not severed: saw it or lift it instead.
        sever IV-T6-T8 | No joint or soft edge of this animal is called “IV-T6-T8” (did you mean “IV-T6-T7”?): take an id from the list of joints.
        sever LN-C55 | No joint or soft edge of this animal is called “LN-C55” (did you mean “LN-C4”?): take an id from the list of joints.
        saw across T1.middle | “T1.middle” names no part: write the id, then .left or .right if it was sawn on the midline, then .near or .far for each saw across.
        saw across T1.near.left | “T1.near.left” names no part: write the id, then .left or .right if it was sawn on the midline, then .near or .far for each saw across.
        saw across L6; saw across L6 | “L6” is not there any more, because it was sawn: what there is now is L6.near and L6.far.
        saw across L6; lift L6 | “L6” is not there any more, because it was sawn: what there is now is L6.near and L6.far.
        saw across L6; lift L6.left | “L6.left” is not there, because no saw has made it: what there is now is L6.near and L6.far.
        lift L6.far | “L6.far” is not there, because no saw has made it: what there is now is L6.
        saw across R7L; saw across R7L.left | “R7L.left” is not there, because no saw has made it: what there is now is R7L.near and R7L.far.
        sever XS; sever XS | “XS” is severed already: take it out of this operation.
        lift XC; sever XX | “XX” is severed already: take it out of this operation.
        saw across R7L; sever IS-7L.far; sever IS-7L.far | “IS-7L.far” is severed already: take it out of this operation.
        sever IS-7L; saw across R7L; sever IS-7L.far | “IS-7L.far” is severed already: take it out of this operation.
        sever IS-7L.far | “IS-7L.far” is not there, because that contact was never so divided: sever IS-7L.
        saw midline T1; sever IV-T1-T2.near | “IV-T1-T2.near” is not there, because that contact was never so divided: sever IV-T1-T2.left or IV-T1-T2.right.
        saw midline R7L | “R7L” lies on the left and not on the midline: saw it across.
        saw midline HUMR | “HUMR” lies on the right and not on the midline: saw it across.
        saw midline T1; saw midline T1.left | “T1.left” is the left half already and has no midline left to saw: saw it across.
        saw across T1 T1 | “T1” is named twice in one operation to saw: name it once.
        """)
    void an_operation_that_cannot_be_done_says_why(String line, String sentence) {
        assertThatThrownBy(() -> Ovine.after(Ovine.usual(), line))
                .isInstanceOf(Refused.class)
                .hasMessage(sentence);
    }

    @Test
    void an_animal_without_a_tail_has_none_to_saw() {
        assertThatThrownBy(() -> Ovine.after(Animal.whole(Ovine.with("7,13,6,4,0")), "saw midline Cd1"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("“Cd1” is not in this animal, which has no Cd");
    }

    @Test
    void an_operation_says_one_thing_and_says_it_to_something() {
        assertThat(whyNot(null, null, null, null)).startsWith("An operation says what to do");
        assertThat(whyNot(List.of(), null, null, null))
                .isEqualTo("An operation to sever names nothing: name at least one id.");
        assertThat(whyNot(List.of("XS"), List.of("T1"), "across", null))
                .isEqualTo("One operation says sever and saw at once: write one operation for each.");
        assertThat(whyNot(null, List.of("T1"), null, null))
                .isEqualTo("A saw needs its plane: write across or midline.");
        assertThat(whyNot(null, List.of("T1"), "slanted", null))
                .isEqualTo("A saw has no plane “slanted”: write across or midline.");
        assertThat(whyNot(null, null, "across", List.of("T1"))).startsWith("The plane “across” stands beside no saw");
        assertThat(whyNot(Arrays.asList("XS", null), null, null, null)).contains("holds an empty id");
    }

    private static String whyNot(List<String> sever, List<String> saw, String plane, List<String> lift) {
        try {
            return "no problem with " + Operation.of(sever, saw, plane, lift);
        } catch (Refused refused) {
            return refused.getMessage();
        }
    }
}
