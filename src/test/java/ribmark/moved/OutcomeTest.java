package ribmark.moved;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Comparison;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Plane;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;
import ribmark.proof.Check;
import ribmark.slips.Model;

/**
 * Where the bones are when a line of the lamb ran elsewhere. Worked by hand from the rows of the skeleton: which rib meets
 * which vertebra and which cartilage which segment of the breast bone (FRA8 and IM-STC of our sources), and where other trades
 * cut (fores at 5|6 in New Zealand, at 4|5 at a Canadian packer; UNECE 5020 takes the neck off at 3|4).
 */
class OutcomeTest {

    private static final Curriculum LAMB =
            Check.of(ContentFiles.ours()).curriculum().orElseThrow();

    @Test
    void fores_one_rib_forward_on_the_left_leave_left_rib_six_with_the_middle() {
        Outcome outcome = outcome("fores", "head", "1", "left");
        assertThat(outcome.rows())
                .containsExactly(
                        new Outcome.Row("R6L", "Left rib 6", "the fores", "the middle and legs"),
                        new Outcome.Row("CC6L", "Left costal cartilage 6", "the fores", "the middle and legs"));
        assertThat(outcome.sentences())
                .containsExactly(
                        "Left rib 6 and left costal cartilage 6 should be in the fores and are in the middle and legs.",
                        "Every other bone is where it should be.");
        assertThat(outcome.way().says()).isEqualTo("The fore line ran one rib towards the head on the left");
    }

    @Test
    void each_way_the_bones_are_those_told_by_hand() {
        Map<String, Set<String>> told = Map.ofEntries(
                Map.entry("fores head 1 both", Set.of("T6", "ST6", "R6L", "R6R", "CC6L", "CC6R")),
                Map.entry("fores head 1 right", Set.of("R6R", "CC6R")),
                Map.entry("fores head 2 left", Set.of("R5L", "R6L", "CC5L", "CC6L")),
                Map.entry("fores tail 1 left", Set.of("R7L", "CC7L")),
                Map.entry("fores tail 1 both", Set.of("T7", "ST7", "XC", "R7L", "R7R", "CC7L", "CC7R")),
                Map.entry("fores tail 2 right", Set.of("R7R", "R8R", "CC7R", "CC8R")),
                Map.entry("middle head 1 both", Set.of("L5.far", "L6.near")),
                Map.entry("middle tail 1 both", Set.of("L6.far", "S1.near", "ILIL.near", "ILIR.near")),
                Map.entry("scrag head 1 both", Set.of("C4")),
                Map.entry("scrag tail 1 both", Set.of("C5")),
                Map.entry("best-ends head 1 left", Set.of("T13.left", "R13L.near")),
                Map.entry("best-ends tail 1 both", Set.of("L1.left", "L1.right")));
        told.forEach((words, bones) ->
                assertThat(elsewhere(outcome(words.split(" ")))).as(words).isEqualTo(new TreeSet<>(bones)));
    }

    @Test
    void the_same_bones_go_over_on_the_right_as_on_the_left() {
        for (Way way : Way.all(LAMB.breakdown())) {
            if (way.side() == Side.LEFT) {
                Set<String> left = elsewhere(Outcome.of(LAMB, way));
                Set<String> right = elsewhere(Outcome.of(LAMB, new Way(way.line(), way.run(), Side.RIGHT)));
                Set<String> mirrored = new TreeSet<>();
                left.forEach(part -> mirrored.add(mirrored(part)));
                assertThat(mirrored).as(way.says()).isEqualTo(right);
            }
        }
    }

    private static String mirrored(String part) {
        return part.replaceAll("(?<=[0-9A-Z])L(?=$|[.])", "R").replace(".left", ".right");
    }

    @Test
    void every_bone_is_in_one_piece_whatever_way_and_every_piece_is_called_by_its_name() {
        assertThat(Way.all(LAMB.breakdown())).hasSizeGreaterThan(15);
        for (Way way : Way.all(LAMB.breakdown())) {
            Comparison found = Outcome.of(LAMB, way).comparison();
            assertThat(found.bones().stream().map(bone -> bone.part().bone()).distinct())
                    .as(way.says())
                    .hasSize(139);
            assertThat(found.pieces()).as(way.says()).allSatisfy(pair -> {
                assertThat(pair.should()).isPresent();
                assertThat(pair.is()).isPresent();
            });
            assertThat(Outcome.of(LAMB, way).rows())
                    .as(way.says())
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(row.shouldBeIn() + row.isIn()).doesNotContain("the piece with"));
        }
    }

    @Test
    void a_line_and_the_scale_call_its_ends_the_same() {
        for (Model.Line weighed : LAMB.weighing().orElseThrow().lines()) {
            Model.Named named = weighed.named();
            LAMB.breakdown()
                    .line(named.id())
                    .ifPresent(line -> line.runs().forEach(run -> {
                        assertThat(run.towards()).isIn(named.towards(), named.otherwise());
                        assertThat(run.by())
                                .isLessThanOrEqualTo(named.distances().size());
                    }));
        }
        assertThat(LAMB.breakdown().line("fores")).isPresent();
        assertThat(LAMB.breakdown().line("middle")).isPresent();
    }

    @Test
    void one_side_alone_leaves_the_saw_cuts_on_the_middle_as_they_are() {
        Way way =
                Way.of(LAMB.breakdown(), List.of("fores", "head", "1", "left")).orElseThrow();
        assertThat(way.run().operations().get(Side.LEFT).stream().flatMap(done -> done.ids().stream()))
                .contains("IV-T6-T7", "ZY-T6-T7", "XS", "IS-6R", "CH-7Ra", "IS-5L", "CT-6L")
                .doesNotContain("IS-6L", "IV-T5-T6");
        assertThat(way.run().operations().get(Side.LEFT))
                .allMatch(done -> !(done instanceof Operation.Saw saw) || saw.plane() == Plane.ACROSS);
    }

    private static Outcome outcome(String... words) {
        return Outcome.of(LAMB, Way.of(LAMB.breakdown(), List.of(words)).orElseThrow());
    }

    private static Set<String> elsewhere(Outcome outcome) {
        return outcome.comparison().elsewhere().stream()
                .map(bone -> bone.part().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
