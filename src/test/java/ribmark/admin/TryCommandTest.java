package ribmark.admin;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The counts of the fore line are counted by us on the skeleton (derived). */
class TryCommandTest {

    private static final String FORES_OFF = """
            {"skeleton": "ovine", "formula": "7,13,6,4,3", "operations": [
              {"sever": ["IS-6L", "IS-6R", "SC-7La", "SC-7Ra", "XS"]},
              {"sever": ["CH-7La", "CH-7Ra", "IV-T6-T7", "ZY-T6-T7"]}]}
            """;

    @TempDir
    private Path folder;

    @Test
    void the_fores_come_off_between_two_ribs() throws IOException {
        JsonNode pieces = tried(FORES_OFF).json().path("pieces");
        assertThat(pieces).hasSize(2);
        assertThat(pieces.path(0)).hasSize(74);
        assertThat(pieces.path(1)).hasSize(65);
        assertThat(pieces.path(1).path(0).asText()).isEqualTo("C1");
    }

    @Test
    void for_people_each_piece_is_a_line_with_its_count() {
        Shell shell = Shell.typed(FORES_OFF, in -> new TryCommand(in), "-");
        assertThat(shell.exit()).isZero();
        assertThat(shell.out().lines()).hasSize(2);
        assertThat(shell.out()).startsWith("74  T7 T8");
    }

    @Test
    void a_file_is_read_like_standard_input() throws IOException {
        Path file = Files.writeString(folder.resolve("try.json"), FORES_OFF);
        Shell shell = Shell.run(new TryCommand(System.in), file.toString(), "--format", "json");
        assertThat(shell.json()).isEqualTo(tried(FORES_OFF).json());
    }

    private static final String LEFT = """
            {"moved": {"breakdown": "lamb", "line": "fores", "towards": "head", "by": 1, "side": "left"}}
            """;

    @Test
    void a_line_that_ran_elsewhere_is_compared_with_the_one_it_should_be() throws IOException {
        JsonNode json = tried(LEFT).json();
        assertThat(json.path("pieces")).hasSize(2);
        assertThat(json.path("pieces").path(0)).hasSize(76);
        assertThat(json.path("moved").path("bones").toString())
                .isEqualTo("[{\"bone\":\"R6L\",\"shouldBeIn\":\"the fores\",\"isIn\":\"the middle and legs\"},"
                        + "{\"bone\":\"CC6L\",\"shouldBeIn\":\"the fores\",\"isIn\":\"the middle and legs\"}]");
        assertThat(json.path("moved").path("says").asText())
                .isEqualTo("The fore line ran one rib towards the head on the left");
        assertThat(tried(FORES_OFF).json().has("moved")).isFalse();

        Shell people = Shell.typed(LEFT, in -> new TryCommand(in), "-");
        assertThat(people.out())
                .contains("Left rib 6 and left costal cartilage 6 should be in the fores")
                .contains("Every other bone is where it should be.");
        assertThat(tried(LEFT.replace("{\"moved", "{\"formula\": \"7,12,6,4,3\", \"moved"))
                        .json()
                        .path("pieces")
                        .path(0))
                .hasSize(71);
    }

    @Test
    void a_line_that_cannot_run_so_is_refused_where_it_stands() throws IOException {
        assertThat(ats(LEFT.replace("lamb", "hare"))).containsExactly("moved.breakdown");
        assertThat(ats(LEFT.replace("fores", "ears"))).containsExactly("moved");
        assertThat(ats(LEFT.replace("1", "9"))).containsExactly("moved");
        assertThat(ats(LEFT.replace("1", "\"1\""))).containsExactly("moved.by");
        assertThat(ats(LEFT.replace("\"line\"", "\"lime\""))).containsExactly("moved.lime", "moved.line");
        assertThat(ats(LEFT.replace("{\"moved", "{\"operations\": [], \"moved")))
                .containsExactly("operations");
        assertThat(ats(LEFT.replace("{\"moved", "{\"skeleton\": \"sheep\", \"moved")))
                .containsExactly("skeleton");
        assertThat(ats("{\"moved\": []}")).containsExactly("moved");
        assertThat(ats(LEFT.replace("{\"moved", "{\"formula\": \"7,2,6,4,3\", \"moved")))
                .containsExactly("formula");
    }

    @Test
    void no_operations_leave_one_piece() throws IOException {
        assertThat(tried("{\"skeleton\": \"ovine\", \"operations\": []}").json().path("pieces"))
                .hasSize(1);
    }

    @Test
    void the_last_vertebra_can_be_named_without_its_number() throws IOException {
        String file = "{\"skeleton\": \"ovine\", \"formula\": \"7,13,7,4,3\","
                + " \"operations\": [{\"saw\": [\"L(last)\"], \"plane\": \"across\"}]}";
        assertThat(tried(file).json().toString()).contains("L7.near");
    }

    @Test
    void what_cannot_be_done_is_said_where_it_stands() throws IOException {
        refused("operations[1].sever[0]", "XS", "[{\"sever\": [\"XS\"]}, {\"sever\": [\"XS\"]}]");
        refused("operations[0].saw[0]", "T14", "[{\"saw\": [\"T14\"], \"plane\": \"across\"}]");
        refused("operations[0].sever[0]", "T6", "[{\"sever\": [\"T6\"]}]");
        refused("operations[0].saw[0]", "R7X", "[{\"saw\": [\"R7X\"], \"plane\": \"across\"}]");
        refused("operations[0].saw[0]", "R7L", "[{\"saw\": [\"R7L\"], \"plane\": \"midline\"}]");
        refused("operations[1].lift[0]", "L6", "[{\"saw\": [\"L6\"], \"plane\": \"across\"}, {\"lift\": [\"L6\"]}]");
        refused("operations[0]", "nothing", "[{\"sever\": []}]");
        refused("operations[0]", "XS", "[{\"sever\": [\"XS\", \"XS\"]}]");
        refused("operations[0]", "what to do", "[{}]");
        refused("operations[0]", "plane", "[{\"saw\": [\"T1\"]}]");
        refused("operations[0]", "sideways", "[{\"saw\": [\"T1\"], \"plane\": \"sideways\"}]");
        refused("operations[0].sewer", "sewer", "[{\"sewer\": [\"XS\"]}]");
        refused("operations[0].sever[0]", "text", "[{\"sever\": [7]}]");
        refused("operations[0].sever", "list", "[{\"sever\": \"XS\"}]");
        refused("operations[0].sever", "list", "[{\"sever\": {\"joint\": \"XS\"}}]");
        refused("operations[0]", "object", "[\"XS\"]");
        refused("operations", "list", "{\"sever\": [\"XS\"]}");
    }

    @Test
    void a_file_that_is_not_as_agreed_is_refused_with_every_fault() throws IOException {
        assertThat(ats("{\"skeletton\": \"ovine\", \"formula\": 7}"))
                .containsExactly("skeletton", "skeleton", "formula", "operations");
        assertThat(ats("{\"skeleton\": \"sheep\", \"operations\": []}")).containsExactly("skeleton");
        assertThat(ats("{\"skeleton\": \"ovine\", \"formula\": \"7,13\", \"operations\": []}"))
                .containsExactly("formula");
        assertThat(ats("{\"skeleton\": \"ovine\", \"formula\": \"4,13,6,4,3\", \"operations\": []}"))
                .containsExactly("formula");
        assertThat(ats("{\"skeleton\": \"ovine\", \"skeleton\": \"ovine\", \"operations\": []}"))
                .hasSize(1);
        assertThat(ats("[]")).containsExactly("");
        assertThat(ats("not json")).hasSize(1);
        assertThat(ats("")).hasSize(1);
    }

    @Test
    void a_file_that_is_not_there_is_refused_in_one_sentence() throws IOException {
        Shell shell =
                Shell.run(new TryCommand(System.in), folder.resolve("no.json").toString(), "--format", "json");
        assertThat(shell.exit()).isEqualTo(1);
        assertThat(shell.json().path("problems")).hasSize(1);
        assertThat(Shell.run(new TryCommand(System.in)).exit()).isEqualTo(2);
    }

    private void refused(String at, String names, String operations) throws IOException {
        Shell shell = tried("{\"skeleton\": \"ovine\", \"operations\": " + operations + "}");
        assertThat(shell.exit()).as(operations).isEqualTo(1);
        JsonNode problems = shell.json().path("problems");
        assertThat(problems).as(operations).hasSize(1);
        assertThat(problems.path(0).path("at").asText()).as(operations).isEqualTo(at);
        assertThat(problems.path(0).path("headline").asText()).as(operations).contains(names);
        assertThat(problems.path(0).path("help").asText()).as(operations).isNotBlank();
        assertThat(shell.json().has("pieces")).isFalse();
    }

    private java.util.List<String> ats(String file) throws IOException {
        Shell shell = tried(file);
        assertThat(shell.exit()).as(file).isEqualTo(1);
        return shell.json().path("problems").findValuesAsText("at");
    }

    private static Shell tried(String file) {
        return Shell.typed(file, TryCommand::new, "-", "--format", "json");
    }
}
