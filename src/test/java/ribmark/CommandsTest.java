package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.database.Keys;
import ribmark.database.ServedFolder;

/** How the shell says no: the exit, one sentence, and never the inside of the program. */
class CommandsTest {

    @TempDir
    private Path folder;

    private record Said(int exit, String out, String err) {

        String sentence() {
            return err.lines().findFirst().orElse("");
        }
    }

    private static Said run(String... words) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            int exit = Commands.run(words);
            return new Said(exit, printed.toString(StandardCharsets.UTF_8), said.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    private static void assertOneSentence(Said said) {
        assertThat(said.err().toLowerCase())
                .doesNotContain("invalid")
                .doesNotContain("exception:")
                .doesNotContain("\tat ");
        assertThat(said.err().lines()).hasSizeLessThanOrEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "demo", "serve", "routes", "verify", "check", "try", "score", "agree"})
    void every_command_explains_itself(String command) {
        Said said = command.isEmpty() ? run("--help") : run(command, "--help");
        assertThat(said.exit()).isZero();
        assertThat(said.out()).startsWith("Usage: ribmark").contains(command);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "check --formula x | --formula: “x” is not a vertebral formula",
                "check --colour | There is no option --colour here.",
                "check . more | “more” says nothing here.",
                "score | This needs FILE.",
                "agree ratings.csv | This needs --level=nominal|ordinal|interval.",
                "serve --port 99999 | --port: “99999” is not a port. Write a number from 0 to 65535.",
                "serve --port -1 | --port: “-1” is not a port.",
                "demo --port abc | --port: “abc” is not a port.",
                "routes --format xml | --format: “xml” is not a format. Write text or json.",
                "srve | “srve” says nothing here. Nearest: serve.",
            })
    void a_call_that_makes_no_sense_ends_with_two_and_says_what_to_write(String call, String sentence) {
        Said said = run(call.split(" "));
        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.sentence()).startsWith(sentence);
        assertThat(said.err().toLowerCase()).doesNotContain("invalid").doesNotContain("exception");
    }

    @Test
    void a_formula_with_too_few_numbers_is_laid_at_the_door_of_the_call_not_of_a_file() {
        Said said = run("check", "--formula", "7,13,6,4");
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.sentence()).startsWith("The formula “7,13,6,4” has four numbers");
        assertThat(said.out()).isEmpty();
    }

    @Test
    void data_that_is_no_folder_is_refused_in_one_sentence() throws IOException {
        Path file = Files.writeString(folder.resolve("a-file"), "not a folder");
        Said said = run("serve", "--port", "0", "--data", file.toString());
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.sentence()).startsWith("A file could not be read or written: " + file);
        assertOneSentence(said);
    }

    @Test
    void a_broken_database_file_is_refused_in_one_sentence() throws IOException {
        Files.writeString(folder.resolve("ribmark.mv.db"), "garbage");
        for (String command : List.of("verify", "serve")) {
            Said said = run(command, "--data", folder.toString());
            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.sentence()).startsWith("The database cannot be opened.");
            assertOneSentence(said);
        }
    }

    @Test
    void a_folder_served_by_one_program_is_refused_to_a_second() {
        Keys.in(folder);
        ServedFolder first = ServedFolder.alone(folder);
        Said said = run("serve", "--port", "0", "--data", folder.toString());
        first.close();
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.sentence())
                .isEqualTo("Another program serves " + folder
                        + " already. Stop that one first, or name another folder with --data.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:h2:mem:x;WRITE_DELAY=0", "jdbc:h2:file:./x", "jdbc:other:x"})
    void a_database_address_that_is_not_safe_is_refused_before_anything_is_made(String url) {
        Path data = folder.resolve("new");
        Said said = run("serve", "--port", "0", "--data", data.toString(), "--database-url", url);
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.sentence()).startsWith("The database address");
        assertThat(data).doesNotExist();
        assertOneSentence(said);
    }

    @Test
    void for_programs_every_refusal_has_the_same_shape() throws JsonProcessingException {
        for (String command : List.of("verify", "serve")) {
            Said said = command.equals("verify")
                    ? run("verify", "--data", folder.toString(), "--format", "json")
                    : run("demo", "--content", folder.resolve("none").toString(), "--format", "json");
            JsonNode problem =
                    new ObjectMapper().readTree(said.out()).path("problems").path(0);
            assertThat(said.exit()).isEqualTo(1);
            assertThat(problem.fieldNames()).toIterable().containsExactly("at", "headline", "help");
            assertThat(problem.path("headline").asText()).startsWith("There is no ");
        }
    }

    @Test
    void every_command_takes_a_folder_of_content() {
        Said said = run("routes", "--content", folder.resolve("none").toString());
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.sentence()).startsWith("There is no folder");
        assertThat(run("verify", "--content", "any", "--data", folder.toString())
                        .exit())
                .isEqualTo(1);
    }
}
