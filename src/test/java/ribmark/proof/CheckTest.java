package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.anatomy.Formula;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.MarkWord;
import ribmark.curriculum.Step;

class CheckTest {

    @TempDir
    private Path folder;

    @Test
    void a_small_college_is_sound_with_another_animal_and_no_other_program() {
        Check check = SmallCollege.sound().check();
        assertThat(check.problems()).as(CheckText.of(check)).isEmpty();
        Proof proof = check.proofs().get(0);
        assertThat(proof.bones()).isEqualTo(19);
        assertThat(proof.pieces()).hasSize(6);
        assertThat(proof.piecesWithout()).containsEntry("shank", 4);
        assertThat(proof.pieces())
                .contains(new Freed("leg", Side.LEFT, List.of("ILIL", "FEML.near")))
                .contains(new Freed("shank", Side.RIGHT, List.of("FEMR.far")));
    }

    @Test
    void the_same_breakdown_proves_out_on_an_animal_with_other_counts() {
        for (String formula : List.of("2,4,2,1,1", "2,2,2,1,1", "3,3,5,1,1", "2,3,2,1,0")) {
            Check check = Check.of(SmallCollege.sound().files(), Optional.of(Formula.parse(formula)));
            assertThat(check.problems()).as(formula + CheckText.of(check)).isEmpty();
            assertThat(check.proofs().get(0).formula()).isEqualTo(formula);
        }
    }

    @Test
    void a_bone_named_twice_does_not_stand_for_one_that_is_missing() {
        Check check = SmallCollege.sound()
                .with("content/goat/cuts.yaml", "[T2..T(last), L1..L(last), S1", "[T2..T(last), T2, L1, S1")
                .check();
        assertThat(check.problems()).extracting(ContentProblem::code).contains("C034");
    }

    @Test
    void an_optional_step_that_needs_another_is_left_out_with_it() {
        String toe = "  - id: toe"
                + SmallCollege.sound()
                        .text("content/kid/back.yaml")
                        .split("  - id: shank|  - id: clean")[1]
                        .replace("needs: [legs-off]", "needs: [shank]")
                        .replace("saw: [\"FEM(s)\"]", "saw: [\"FEM(s).far\"]")
                        .replace("frees: [shank]", "frees: [toe]")
                        .replace("leaves: [leg]", "leaves: [shank]");
        String cut =
                "cuts:\n  - {id: toe, name: Toe, comes: each, becomes: saleable, bones: [\"FEM(s).far.far\"], rows: [],"
                        + " text: The end., rests-on: [{fact: none, source: OWN, basis: own}]}\n";
        String watched = "criteria:\n  - {id: toe-done, step: toe, watch: It is done within 5 mm, how: see,"
                + " rests-on: [{fact: none, source: OWN, basis: own}]}\n";
        String asked = "questions:\n  - {id: toe-why, step: toe, ask: Why is it done?, answer: To go on.,"
                + " rests-on: [{fact: none, source: OWN, basis: own}]}\n";
        Check check = SmallCollege.sound()
                .with("content/kid/back.yaml", "  - id: clean", toe + "  - id: clean")
                .with("content/goat/cuts.yaml", "cuts:\n", cut)
                .with("content/goat/cuts.yaml", "[\"FEM(s).far\"]", "[\"FEM(s).far.near\"]\n    or: [\"FEM(s).far\"]")
                .with("assessments/kid/criteria.yaml", "criteria:\n", watched)
                .with("assessments/kid/questions.yaml", "questions:\n", asked)
                .check();
        assertThat(check.problems()).as(CheckText.of(check)).isEmpty();
        assertThat(check.proofs().get(0).piecesWithout())
                .containsEntry("shank", 4)
                .containsEntry("toe", 6);
    }

    @Test
    void every_cause_is_told_in_one_run() {
        Check check = SmallCollege.sound()
                .with("content/kid/breakdown.yaml", "title: Kid", "titel: Kid")
                .with("content/kid/back.yaml", "uses: [hip]", "uses: [hop]")
                .with("content/goat/cuts.yaml", "[C1..C(last), T1, ", "[C1..C(last), T9, ")
                .with("assessments/kid/trim.yaml", "highest: 5.0", "highest: 0.2")
                .with("assessments/kid/references/small.yaml", "expected: 40.5", "expected: 45.0")
                .check();
        assertThat(check.problems())
                .extracting(ContentProblem::code)
                .containsExactlyInAnyOrder("C010", "C025", "C023", "C041", "C040");
    }

    @Test
    void a_fault_in_the_figures_does_not_hide_one_on_the_skeleton() {
        Check check = SmallCollege.sound()
                .with("assessments/kid/trim.yaml", "unit: mm", "unit: cm")
                .with("content/kid/back.yaml", "- sever: [PS]", "- sever: [PS]\n      - sever: [PS]")
                .check();
        assertThat(check.problems()).extracting(ContentProblem::code).containsExactlyInAnyOrder("C013", "C032");
    }

    @Test
    void with_a_problem_there_is_no_curriculum_and_no_proof() {
        Check check = SmallCollege.sound().without("assessments/kid/trim.yaml").check();
        assertThat(check.ok()).isFalse();
        assertThat(check.curriculum()).isEmpty();
        assertThat(check.proofs()).isEmpty();
        assertThat(check.problems()).extracting(ContentProblem::code).containsExactly("C008");
    }

    @Test
    void a_stray_file_and_an_empty_folder_are_told() {
        assertThat(SmallCollege.sound()
                        .holding("assessments/kid/extra.yaml", "a: 1\n")
                        .check()
                        .problems())
                .extracting(ContentProblem::code)
                .containsExactly("C007");
        assertThat(SmallCollege.sound()
                        .holding("content/kid/more.yaml", "a: 1\n")
                        .check()
                        .problems())
                .extracting(ContentProblem::code)
                .contains("C007");
        assertThat(Check.of(ContentFiles.of(Map.of())).problems())
                .extracting(ContentProblem::code)
                .containsExactly("C008");
    }

    @Test
    void many_problems_are_cut_short_with_a_count() {
        StringBuilder sources = new StringBuilder("sources:\n");
        for (int i = 0; i < 70; i++) {
            sources.append("  - {key: K").append(i).append(", title: T, seen: guessed}\n");
        }
        Check check = SmallCollege.sound()
                .holding("content/sources.yaml", sources.toString())
                .check();
        assertThat(CheckText.of(check)).contains("The first 50 are shown.");
        assertThat(CheckJson.of(check).path("problems")).hasSizeGreaterThan(70);
    }

    @Test
    void the_version_depends_on_what_the_files_hold_and_on_nothing_else() {
        SmallCollege.sound().writeTo(folder);
        String version = SmallCollege.sound().files().version();
        assertThat(ContentFiles.in(folder).version()).isEqualTo(version);
        assertThat(SmallCollege.sound()
                        .with("content/kid/breakdown.yaml", "title: Kid", "title: Kids")
                        .files()
                        .version())
                .isNotEqualTo(version);
    }

    @Test
    void a_colleges_file_replaces_ours_of_the_same_name() {
        ContentFiles own = ContentFiles.of(Map.of(
                "assessments/kid/evidence.yaml",
                SmallCollege.sound()
                        .with("assessments/kid/evidence.yaml", "sheets: 3", "sheets: 5")
                        .text("assessments/kid/evidence.yaml")
                        .getBytes(StandardCharsets.UTF_8)));
        Check check = Check.of(SmallCollege.sound().files().under(own));
        assertThat(check.curriculum().orElseThrow().rule().sheets()).isEqualTo(5);
    }

    @Test
    void what_was_written_is_what_is_read() {
        Curriculum kid = SmallCollege.sound().check().curriculum().orElseThrow();
        Step shank = kid.breakdown().step("shank").orElseThrow();
        assertThat(shank.number()).isEqualTo(5);
        assertThat(shank.optional()).isTrue();
        assertThat(shank.sides()).containsExactly(Side.LEFT, Side.RIGHT);
        assertThat(shank.operations()).hasSize(2);
        assertThat(shank.fault("slipped").orElseThrow().critical()).contains(Step.Critical.SAFETY);
        assertThat(shank.landmark().bones()).containsExactly("FEML", "FEMR");
        Cut leg = kid.cut("leg").orElseThrow();
        assertThat(leg.bones(Side.LEFT)).containsExactly("ILIL", "FEML.near");
        assertThat(leg.holdings()).hasSize(4);
        assertThat(kid.cut("suet").orElseThrow().isBoneless()).isTrue();
        assertThat(kid.table("small").orElseThrow().rows()).hasSize(4);
        assertThat(kid.trimAt("legs-off")).hasSize(1);
        assertThat(kid.source("BOOK").orElseThrow().year()).contains("2001");
        assertThat(kid.stepThatFrees("back")).map(Step::id).contains("front-off");
        assertThat(kid.marks()).extracting(MarkWord::id).containsExactly("unaided", "prompted", "not-yet", "stopped");
    }
}
