package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;

/** What goes wrong in one operation of a line may have its cause in any other: each of them is named. */
class LinePlacesTest {

    private static final String LINES = "content/lamb/lines.yaml";

    private final ContentFiles lamb = ContentFiles.ours();
    private final String sound = new String(lamb.bytes(LINES).orElseThrow(), StandardCharsets.UTF_8);

    @Test
    void a_wrong_plane_and_a_wrong_side_are_among_the_places_told() {
        String sacrum = "            - saw: [S1]\n              plane: ";
        isTold(sacrum + "across", sacrum + "midline", "plane: midline");
        isTold("            - saw: [\"ILI(s)\"]", "            - saw: [ILIL]", "saw: [ILIL]");
    }

    @Test
    void a_line_that_lost_its_name_is_one_cause_however_many_drawings_it_has() {
        ContentFiles spoiled = ContentFiles.of(
                Map.of(LINES, sound.replace("- id: fores\n", "- id: fdres\n").getBytes(StandardCharsets.UTF_8)));
        List<ContentProblem> problems = Check.of(lamb.under(spoiled)).problems();
        assertThat(problems).extracting(ContentProblem::code).containsExactly("C062");
        assertThat(problems.get(0).also())
                .anySatisfy(also -> assertThat(also.at().shown()).contains("id: fdres"));
    }

    private void isTold(String good, String bad, String shown) {
        assertThat(sound).contains(good);
        ContentFiles spoiled =
                ContentFiles.of(Map.of(LINES, sound.replace(good, bad).getBytes(StandardCharsets.UTF_8)));
        List<ContentProblem> problems = Check.of(lamb.under(spoiled)).problems();
        assertThat(problems).extracting(ContentProblem::code).contains("C029");
        assertThat(problems.stream().flatMap(problem -> problem.also().stream()))
                .anySatisfy(also -> assertThat(also.at().shown()).contains(shown));
    }
}
