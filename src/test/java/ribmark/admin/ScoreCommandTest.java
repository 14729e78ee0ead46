package ribmark.admin;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import ribmark.testing.Tables;
import ribmark.testing.WeighUps;

class ScoreCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private static WeighUps sound() {
        return WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .trim("loin-fat-depth", "6.0", "1.0");
    }

    @Test
    void people_read_verdicts_in_words() {
        assertThat(score(sound().json(), "-")).isZero();
        assertThat(out.toString())
                .contains(
                        "Balanced. The pieces are 0.070 ± 0.012\u00a0kg short of the carcase; up to 0.201\u00a0kg (1\u00a0%)"
                                + " balances.")
                .contains("Within. fores: 7.310\u00a0kg, 36.33\u00a0%. Expected: 36.30 ± 1.50\u00a0%. Score 100.")
                .contains("Outside. loin-fat-depth: 6\u00a0mm. Limit: at most 5\u00a0mm. Score 0.")
                .contains("Yield 100.0 of 100. Trim 0.0 of 100.")
                .contains("(provisional)");
    }

    @Test
    void each_number_is_explained_when_asked() {
        assertThat(score(sound().json(), "--explain", "-")).isZero();
        assertThat(out.toString())
                .contains("Read: 7.310 ± 0.005\u00a0kg, scale 5\u00a0g, scatter 2\u00a0g")
                .contains("Share: 36.332 ± 0.026\u00a0% of the carcase")
                .contains("Expected: 36.300\u00a0%, spread 1.500, as parted")
                .contains("Basis: judgement")
                .contains("– a fact (J, judgement)");
    }

    @Test
    void pairs_levels_limits_and_scores_are_explained_too() {
        WeighUps levels = WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("scrag", "0.760")
                .piece("shoulders", "3.300", ", \"side\": \"left\"")
                .piece("shoulders", "3.210", ", \"side\": \"right\"")
                .trim("loin-fat-depth", "6.0", "1.0");
        assertThat(score(levels.json(), "--explain", "-")).isZero();
        assertThat(out.toString())
                .contains("The levels agree within their scales and losses: global test ")
                .contains("spreads moved")
                .contains("shoulders, left against right: left 0.090 ± 0.007\u00a0kg heavier, 1.4\u00a0% of both")
                .contains("Probability that they keep it: ")
                .contains("By how much: over by 1\u00a0mm")
                .contains("Yield: 36.30 × 100.0")
                .contains("Trim: 1 × 0.0, by the sum of the weights: ");
    }

    @Test
    void programs_read_json() {
        assertThat(score(sound().json(), "--format", "json", "-")).isZero();
        assertThat(json(out.toString()).at("/balance/verdict").asText()).isEqualTo("balanced");
    }

    @Test
    void what_was_counted_speaks_before_what_the_weights_would_fit() {
        String json = sound().trim("fore-rib-count", "7", "1")
                .json()
                .replace("\"kidneys\": \"in\"", "\"kidneys\": \"in\", \"vertebrae\": \"7,14,6,4,3\"");
        assertThat(score(json, "-")).isZero();
        String said = out.toString();
        assertThat(said)
                .contains("Counted. Vertebrae from neck to tail: 7,14,6,4,3. A count speaks before the weights.");
        assertThat(said.indexOf("Counted. fore-rib-count: 7."))
                .isPositive()
                .isLessThan(said.indexOf("The weights cannot"));
    }

    @Test
    void a_refused_file_names_every_problem_and_exits_with_1() {
        String json = sound().piece("haunch", "0.100").json();
        assertThat(score(json, "--format", "json", "-")).isEqualTo(1);
        assertThat(json(out.toString()).at("/problems/0/at").asText()).isEqualTo("pieces[5].cut");
        assertThat(json(out.toString()).at("/problems/0/headline").asText()).contains("haunch");
        assertThat(json(out.toString()).at("/problems/0/help").asText()).contains("legs-chump-on");
        assertThat(score(json, "-")).isEqualTo(1);
        assertThat(err.toString()).startsWith("pieces[5].cut: No cut “haunch” in the table named");
    }

    @Test
    void many_weigh_ups_get_one_answer_a_line_and_a_refused_one_stops_nobody() throws IOException {
        String more = sound().piece("waste", "2.000").json();
        String text = sound().json() + "\n{}\n\n" + more + "\r\n";
        Path file = Files.writeString(folder.resolve("many.jsonl"), text);
        assertThat(score("", "--format", "json", file.toString())).isEqualTo(1);
        String[] answers = out.toString().split("\\R");
        assertThat(answers).hasSize(3);
        assertThat(json(answers[0]).at("/balance/verdict").asText()).isEqualTo("balanced");
        assertThat(json(answers[1]).get("line").asInt()).isEqualTo(2);
        assertThat(json(answers[1]).get("problems")).isNotEmpty();
        assertThat(json(answers[2]).at("/balance/verdict").asText()).isEqualTo("not scored");
    }

    @Test
    void lines_may_come_from_standard_input() {
        assertThat(score(sound().json() + "\n" + sound().json(), "--lines", "--format", "json", "-"))
                .isZero();
        assertThat(out.toString().split("\\R")).hasSize(2);
    }

    @Test
    void a_call_that_makes_no_sense_exits_with_2() {
        assertThat(score("", "--format", "xml", "-")).isEqualTo(2);
        assertThat(score("", "--colour", "-")).isEqualTo(2);
        assertThat(score("")).isEqualTo(2);
        assertThat(err.toString()).doesNotContain("Exception");
    }

    @Test
    void a_file_that_is_not_there_is_refused_in_one_sentence() {
        assertThat(score("", folder.resolve("nothing.json").toString())).isEqualTo(1);
        assertThat(err.toString()).startsWith("There is no file");
    }

    @Test
    void help_is_always_there() {
        assertThat(score("", "--help")).isZero();
        assertThat(out.toString()).contains("--explain").contains("--lines").contains("--content");
    }

    private int score(String standardInput, String... arguments) {
        var in = new ByteArrayInputStream(standardInput.getBytes(StandardCharsets.UTF_8));
        return new CommandLine(new ScoreCommand(folder -> Tables.lamb(), in))
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private static JsonNode json(String text) {
        return WeighUps.tree(text);
    }
}
