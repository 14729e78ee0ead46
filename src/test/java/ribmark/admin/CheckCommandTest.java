package ribmark.admin;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    private static final String SMALL = "src/test/resources/small-college";

    @TempDir
    private Path folder;

    @Test
    void it_proves_our_own_lamb_and_says_so_in_six_lines() {
        Shell shell = Shell.run(new CheckCommand());
        assertThat(shell.exit()).isZero();
        assertThat(shell.out().lines()).hasSize(6).allMatch(line -> line.length() <= 80);
        assertThat(shell.out()).contains("Every bone ends in exactly one of 20 pieces, 18 with knuckle left out.");
    }

    /** The counts are those of the breakdown's brief, worked twice by hand and by script (derived by us). */
    @Test
    void its_answer_for_programs_has_the_agreed_shape() throws IOException {
        JsonNode json = Shell.run(new CheckCommand(), "--format", "json").json();
        assertThat(json.fieldNames()).toIterable().containsExactly("ok", "breakdowns", "problems");
        JsonNode lamb = json.path("breakdowns").path(0);
        assertThat(lamb.fieldNames())
                .toIterable()
                .containsExactly("breakdown", "formula", "steps", "bones", "joints", "pieces");
        assertThat(lamb.path("steps").asInt()).isEqualTo(30);
        assertThat(lamb.path("bones").asInt()).isEqualTo(139);
        assertThat(lamb.path("joints").asInt()).isEqualTo(323);
        assertThat(lamb.path("pieces")).hasSize(20);
        assertThat(lamb.path("pieces").path(0).fieldNames()).toIterable().containsExactly("cut", "side", "holds");
    }

    @Test
    void it_proves_the_lamb_on_animals_with_other_numbers_of_vertebrae() throws IOException {
        for (String formula : new String[] {"7,14,6,4,3", "7,12,6,4,3", "7,13,7,4,3", "7,14,5,4,3", "7,15,6,4,3"}) {
            JsonNode json = Shell.run(new CheckCommand(), "--formula", formula, "--format", "json")
                    .json();
            assertThat(json.path("ok").asBoolean()).as(formula).isTrue();
            assertThat(json.path("breakdowns").path(0).path("formula").asText()).isEqualTo(formula);
            assertThat(json.path("breakdowns").path(0).path("pieces"))
                    .as(formula)
                    .hasSize(20);
        }
    }

    @Test
    void a_fault_ends_with_one_and_is_told_in_text_and_json_alike() throws IOException {
        copySmallCollege();
        Path stage = folder.resolve("content/kid/back.yaml");
        Files.writeString(stage, Files.readString(stage).replace("needs: [front-off]", "needs: [front-of]"));
        Shell text = Shell.run(new CheckCommand(), folder.toString());
        Shell json = Shell.run(new CheckCommand(), folder.toString(), "--format", "json");
        assertThat(text.exit()).isEqualTo(1);
        assertThat(json.exit()).isEqualTo(1);
        JsonNode problem = json.json().path("problems").path(0);
        assertThat(problem.fieldNames())
                .toIterable()
                .containsExactly("code", "headline", "file", "line", "column", "why", "help");
        assertThat(text.out())
                .contains(
                        problem.path("code").asText(), problem.path("headline").asText())
                .contains("line " + problem.path("line").asInt() + ", column "
                        + problem.path("column").asInt());
        assertThat(json.json().path("problems")).hasSize(1);
    }

    @Test
    void a_college_lays_its_own_files_over_others() throws IOException {
        Path own = folder.resolve("assessments/kid/evidence.yaml");
        Files.createDirectories(own.getParent());
        Files.writeString(
                own,
                Files.readString(Path.of(SMALL, "assessments/kid/evidence.yaml"))
                        .replace("sheets: 3", "sheets: 0"));
        assertThat(Shell.run(new CheckCommand(), SMALL).exit()).isZero();
        Shell laidOver = Shell.run(new CheckCommand(), SMALL, "--content", folder.toString());
        assertThat(laidOver.exit()).isEqualTo(1);
        assertThat(laidOver.out())
                .contains("assessments/kid/evidence.yaml, line 3, column 11")
                .contains("At least 1.");
    }

    @Test
    void a_code_is_explained() {
        Shell shell = Shell.run(new CheckCommand(), "--explain", "C034");
        assertThat(shell.exit()).isZero();
        assertThat(shell.out()).startsWith("C034").contains("Not so", "But so");
        assertThat(Shell.run(new CheckCommand(), "--explain", "c034").out()).isEqualTo(shell.out());
        assertThat(Shell.run(new CheckCommand(), "--explain", "C999").exit()).isEqualTo(1);
    }

    @Test
    void a_call_that_makes_no_sense_ends_with_two() {
        assertThat(Shell.run(new CheckCommand(), "--formula", "seven").exit()).isEqualTo(2);
        assertThat(Shell.run(new CheckCommand(), "--format", "xml").exit()).isEqualTo(2);
        assertThat(Shell.run(new CheckCommand(), "--nonsense").exit()).isEqualTo(2);
    }

    @Test
    void an_animal_or_a_folder_that_cannot_be_is_refused_in_one_sentence() throws IOException {
        Shell animal = Shell.run(new CheckCommand(), "--formula", "4,13,6,4,3", "--format", "json");
        assertThat(animal.exit()).isEqualTo(1);
        assertThat(animal.json().path("problems").path(0).path("headline").asText())
                .startsWith("This animal cannot have fewer than 5 C");
        Shell nowhere = Shell.run(new CheckCommand(), folder.resolve("nowhere").toString(), "--format", "json");
        assertThat(nowhere.exit()).isEqualTo(1);
        assertThat(nowhere.json().path("problems").path(0).path("headline").asText())
                .startsWith("There is no folder");
    }

    private void copySmallCollege() throws IOException {
        try (var files = Files.walk(Path.of(SMALL))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(Path.of(SMALL).relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }
}
