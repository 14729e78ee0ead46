package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Formula;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;
import ribmark.curriculum.Curriculum;

/** The lamb is proven on every animal that was published, and a step that counts by number is named. */
class OtherAnimalsTest {

    /**
     * Counts seen in 468 Kazakh sheep, carcase split, and in 51 Suffolk lambs, by radiograph (sources KAZ and SUF of
     * content/sources.yaml), and 15 rib vertebrae, which nobody has published for sheep.
     */
    private static final List<String> SEEN = List.of(
            "7,13,6,4,3",
            "7,13,7,4,3",
            "7,14,6,4,3",
            "7,14,5,4,3",
            "7,12,6,4,3",
            "7,12,7,4,3",
            "7,14,7,4,3",
            "7,13,5,4,3",
            "7,15,6,4,3");

    private final ContentFiles lamb = ContentFiles.ours();

    @Test
    void the_lamb_is_proven_on_every_published_animal() {
        for (String formula : SEEN) {
            Check check = Check.of(lamb, Optional.of(Formula.parse(formula)));
            assertThat(check.problems())
                    .as(formula + "\n" + CheckText.of(check))
                    .isEmpty();
            assertThat(check.proofs().get(0).formula()).isEqualTo(formula);
        }
    }

    @Test
    void the_check_without_a_formula_proves_the_published_animals_too() {
        assertThat(Check.of(lamb).proofs().get(0).alsoOn()).containsAll(SEEN.subList(1, 7));
    }

    @Test
    void a_step_that_counts_by_number_is_named_where_it_counts() {
        String legs = text("content/lamb/middle.yaml")
                .replace("\"R7(s)..R(last)(s)\"]\n        plane", "\"R7(s)..R13(s)\"]\n        plane");
        Check check = Check.of(with("content/lamb/middle.yaml", legs));

        assertThat(check.problems()).extracting(ContentProblem::code).containsExactly("C028");
        ContentProblem problem = check.problems().get(0);
        assertThat(problem.at().shown()).contains("saw: [\"R7(s)..R13(s)\"]");
        assertThat(problem.headline()).isEqualTo("“R7(s)..R13(s)” goes by the number of the last one of this animal.");
        assertThat(problem.help()).contains("7,14,6,4,3", "R7(s)..R(last)(s)");
    }

    /** No proof fails when the finger is shown rib 13 for the last: on fourteen ribs it only points at the wrong one. */
    @Test
    void a_landmark_that_counts_by_number_is_named_by_the_check_on_another_animal() {
        String middle = text("content/lamb/middle.yaml")
                .replace("bones: [\"R(last)(s)\", \"T(last)\", L1]", "bones: [\"R13(s)\", \"T(last)\", L1]");
        Check onFourteen = Check.of(with("content/lamb/middle.yaml", middle), Optional.of(Formula.parse("7,14,6,4,3")));
        Check onSevenLoin =
                Check.of(with("content/lamb/middle.yaml", middle), Optional.of(Formula.parse("7,13,7,4,3")));

        assertThat(onFourteen.problems()).extracting(ContentProblem::code).containsExactly("C028");
        ContentProblem problem = onFourteen.problems().get(0);
        assertThat(problem.headline()).isEqualTo("“R13(s)” goes by the number of the last one of this animal.");
        assertThat(problem.at().file()).isEqualTo("content/lamb/middle.yaml");
        assertThat(problem.help()).contains("7,14,6,4,3", "R(last)(s)");
        assertThat(onSevenLoin.problems()).isEmpty();
    }

    @Test
    void a_joint_of_a_landmark_that_counts_by_number_is_named_too() {
        String landmarks = text("content/ovine/landmarks.yaml")
                .replace(
                        "joints: [\"IV-T(last)-L1\", \"ZY-T(last)-L1\"]", "joints: [\"IV-T13-L1\", \"ZY-T(last)-L1\"]");
        Check check =
                Check.of(with("content/ovine/landmarks.yaml", landmarks), Optional.of(Formula.parse("7,14,6,4,3")));

        assertThat(check.problems()).extracting(ContentProblem::code).containsExactly("C028");
        assertThat(check.problems().get(0).help()).contains("IV-T(last)-L1");
    }

    @Test
    void the_curriculum_is_read_for_another_animal_and_stays_what_it_was_for_the_usual_one() {
        Curriculum usual = Check.of(lamb).curriculum().orElseThrow();
        Curriculum other = usual.on(Formula.parse("7,14,7,4,3"));

        assertThat(other.isUsual()).isFalse();
        assertThat(other.version()).isEqualTo(usual.version());
        assertThat(other.cut("best-end").orElseThrow().bones(Side.RIGHT))
                .contains("R14R.near", "T14.right")
                .doesNotContain("R14L.near");
        assertThat(other.breakdown()
                        .step("best-end-and-loin")
                        .orElseThrow()
                        .landmark()
                        .bones())
                .containsExactly("R14L", "R14R", "T14", "L1");
        assertThat(other.trimAt("best-end-and-loin").get(0).highest()).hasValue(8);
        assertThat(usual.trimAt("best-end-and-loin").get(0).highest()).hasValue(7);
        assertThat(other.on(Formula.parse("7,13,6,4,3")).isUsual()).isTrue();
        assertThatThrownBy(() -> usual.on(Formula.parse("7,13,4,4,3")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("does not hold");
    }

    @Test
    void a_number_fails_on_the_animal_that_is_asked_for() {
        String cuts = text("content/ovine/cuts.yaml").replace("\"Cd1..Cd(last).(side)\"", "\"Cd1..Cd3.(side)\"");
        Check check = Check.of(with("content/ovine/cuts.yaml", cuts), Optional.of(Formula.parse("7,13,6,4,5")));

        assertThat(check.problems())
                .hasSize(2)
                .allSatisfy(problem -> assertThat(problem.code()).isEqualTo("C028"))
                .allSatisfy(problem -> assertThat(problem.headline()).contains("Cd1..Cd3"));
    }

    @Test
    void an_animal_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> Check.of(lamb, Optional.of(Formula.parse("4,13,6,4,3"))))
                .isInstanceOf(Refused.class)
                .hasMessageStartingWith("This animal cannot have fewer than 5 C");
    }

    private String text(String file) {
        return new String(lamb.bytes(file).orElseThrow(), StandardCharsets.UTF_8);
    }

    private ContentFiles with(String file, String text) {
        Map<String, byte[]> files = new TreeMap<>();
        lamb.paths().forEach(path -> files.put(path, lamb.bytes(path).orElseThrow()));
        files.put(file, text.getBytes(StandardCharsets.UTF_8));
        return ContentFiles.of(files);
    }
}
