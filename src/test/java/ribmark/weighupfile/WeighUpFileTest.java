package ribmark.weighupfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.basics.FileProblem;
import ribmark.testing.Tables;
import ribmark.testing.WeighUps;

class WeighUpFileTest {

    private static WeighUps sound() {
        return WeighUps.on("uk-primals").cold("20.120").piece("fores", "7.310").piece("middle", "5.420");
    }

    @Test
    void a_cut_of_no_named_table_is_refused_with_its_place() {
        List<FileProblem> problems =
                sound().piece("legs-chump-on", "6.580").piece("haunch", "0.100").problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).at()).isEqualTo("pieces[3].cut");
        assertThat(problems.get(0).headline()).isEqualTo("No cut “haunch” in the table named");
        assertThat(problems.get(0).help()).startsWith("It weighs fores, middle, legs-chump-on, kidneys, kidney-fat;");
    }

    @Test
    void every_problem_is_told_in_one_run() {
        String json = "{\"breakdown\": \"calf\", \"reference\": \"uk-loin\", \"colour\": \"pink\","
                + " \"carcase\": {\"weightKg\": \"1,234\", \"weighed\": \"warm\"},"
                + " \"scale\": {\"divisionG\": 0, \"repeatabilityG\": \"2\"},"
                + " \"pieces\": [{\"cut\": \"fores\", \"weightKg\": 7.31, \"note\": \"\"}],"
                + " \"trim\": [{\"measure\": \"tail-length\", \"value\": \"long\"}]}";
        assertThat(WeighUps.problems(json))
                .extracting(FileProblem::at)
                .containsExactlyInAnyOrder(
                        "colour",
                        "breakdown",
                        "scale.divisionG",
                        "scale.repeatabilityG",
                        "carcase.weightKg",
                        "carcase.weighed",
                        "carcase.kidneys",
                        "reference",
                        "pieces[0].note",
                        "pieces[0].weightKg",
                        "trim[0].measure",
                        "trim[0].value");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"breakdown\": \"lamb\", | breakdown",
                "\"reference\": \"uk-primals\", | reference",
                "\"scale\": {\"divisionG\": 5, \"repeatabilityG\": 2.0}, | scale",
                "\"weighed\": \"cold\", | carcase.weighed",
                "\"cut\": \"fores\", | pieces[0].cut"
            })
    void a_missing_field_is_named_itself(String without, String at) {
        String json = sound().json();
        assertThat(json).contains(without);
        List<FileProblem> problems = WeighUps.problems(json.replace(without, ""));
        assertThat(problems).extracting(FileProblem::at).containsExactly(at);
        assertThat(problems.get(0).headline()).endsWith("is missing");
    }

    @Test
    void no_pieces_at_all_is_refused() {
        assertThat(WeighUps.on("uk-primals").cold("20.120").problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces");
        assertThat(WeighUps.problems("{}"))
                .extracting(FileProblem::at)
                .contains("breakdown", "reference", "carcase", "pieces");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "7", "null", "{\"a\": 1, \"a\": 2}", "{} {}", "{\"breakdown\": NaN}"})
    void what_is_no_weigh_up_gets_one_clear_sentence(String json) {
        WeighUpFile file = WeighUps.read(json);
        assertThat(file.weighUp()).isEmpty();
        assertThat(file.problems()).hasSize(1);
        assertThat(file.problems().get(0).headline()).isNotBlank();
    }

    @Test
    void bytes_that_are_not_utf_8_are_refused() {
        byte[] latin = sound().json().replace("lamb", "l\u00e4mb").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(WeighUpFile.read(latin, Tables.lamb()).problems()).hasSize(1);
    }

    @Test
    void a_comma_is_a_point_but_thousands_are_questioned() {
        assertThat(sound().piece("kidneys", "0,1").problems()).isEmpty();
        FileProblem problem = sound().piece("kidneys", "1,234").problems().get(0);
        assertThat(problem.at()).isEqualTo("pieces[2].weightKg");
        assertThat(problem.headline()).isEqualTo("Weight: “1,234” could be thousands or thousandths.");
        assertThat(problem.help()).isEqualTo("Type it with a point, for example 1.234.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"7.3105", "-1", "0.000", "seven", "1e3", " ", "7 kg", "\u0667"})
    void a_weight_that_cannot_be_read_is_refused_and_never_rounded(String typed) {
        assertThat(sound().piece("kidneys", typed).problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].weightKg");
    }

    @Test
    void kidneys_out_leaves_no_kidneys_to_weigh() {
        String out = "\"weighed\": \"cold\", \"kidneys\": \"out\"";
        assertThat(sound().carcase("19.650", out)
                        .piece("kidneys", "0.100")
                        .piece("kidney-fat", "0.640")
                        .piece("middle-kidneys-in", "6.000")
                        .problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].cut", "pieces[3].cut", "pieces[4].cut");
    }

    @Test
    void kidneys_out_cannot_be_held_against_a_table_that_expects_them_in() {
        List<FileProblem> problems = WeighUps.on("uk-wholesale")
                .carcase("19.650", "\"weighed\": \"cold\", \"kidneys\": \"out\"")
                .piece("fores", "7.310")
                .problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).at()).isEqualTo("reference");
        assertThat(problems.get(0).headline()).contains("uk-primals");
    }

    @Test
    void sides_are_for_pairs_and_for_all_entries_of_a_cut_or_none() {
        assertThat(sound().piece("kidneys", "0.050", ", \"side\": \"left\"").problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].side");
        assertThat(sound().piece("fores", "3.000", ", \"side\": \"left\"").problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].side");
        assertThat(sound().piece("legs-chump-on", "3.000", ", \"side\": \"both\"")
                        .problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].side");
    }

    @ParameterizedTest
    @ValueSource(strings = {"850.5", "-1", "\"850\"", "100", "1e9"})
    void a_tray_is_whole_grams_and_lighter_than_what_stood_on_it(String grams) {
        assertThat(sound().piece("kidneys", "0.100", ", \"tareG\": " + grams).problems())
                .extracting(FileProblem::at)
                .containsExactly("pieces[2].tareG");
    }

    @Test
    void tables_are_named_once_and_the_coarser_first() {
        assertThat(WeighUps.on("uk-joints", "uk-primals")
                        .cold("20")
                        .piece("fores", "7")
                        .problems())
                .extracting(FileProblem::at)
                .containsExactly("reference[1]");
        assertThat(WeighUps.on("uk-primals", "uk-primals")
                        .cold("20")
                        .piece("fores", "7")
                        .problems())
                .extracting(FileProblem::at)
                .containsExactly("reference[1]");
        assertThat(WeighUps.problems(sound().json().replace("\"uk-primals\"", "[]")))
                .extracting(FileProblem::at)
                .containsExactly("reference");
    }

    @Test
    void a_count_is_whole_and_only_a_clearance_can_be_less_than_nothing() {
        assertThat(sound().trim("fore-rib-count", "6.5", "1").problems())
                .extracting(FileProblem::at)
                .containsExactly("trim[0].value");
        assertThat(sound().trim("loin-fat-depth", "-1", "1").problems())
                .extracting(FileProblem::at)
                .containsExactly("trim[0].value");
        assertThat(sound().trim("loin-fat-depth", "1", "0").problems())
                .extracting(FileProblem::at)
                .containsExactly("trim[0].division");
        assertThat(sound().trim("leg-line-clearance", "-2", "1").problems()).isEmpty();
    }

    @Test
    void fat_class_and_vertebrae_are_read_as_on_the_ticket() {
        String cold = "\"weighed\": \"cold\", \"kidneys\": \"in\"";
        assertThat(sound().carcase("20", cold + ", \"fatClass\": \"3l\", \"vertebrae\": \"7,14,6,4,3\"")
                        .problems())
                .isEmpty();
        assertThat(sound().carcase("20", cold + ", \"fatClass\": \"6\", \"vertebrae\": \"7,14,6\"")
                        .problems())
                .extracting(FileProblem::at)
                .containsExactly("carcase.fatClass", "carcase.vertebrae");
    }

    @Test
    void what_is_no_utf_8_is_called_so() {
        byte[] json = sound().json().replace("fores", "forés").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(WeighUpFile.read(json, Tables.lamb()).problems())
                .containsExactly(new FileProblem("", "This file is not UTF-8 text", "Save it as UTF-8."));
        byte[] wide = sound().json().getBytes(StandardCharsets.UTF_16);
        assertThat(WeighUpFile.read(wide, Tables.lamb()).problems())
                .extracting(FileProblem::headline)
                .containsExactly("This file is not UTF-8 text");
    }

    @Test
    void what_is_too_deep_or_too_long_is_called_so() {
        String deep = "[".repeat(5000) + "]".repeat(5000);
        String longNumber = sound().json().replace("\"20.120\"", "1" + "0".repeat(4000));
        for (String json : List.of(deep, longNumber)) {
            assertThat(WeighUps.problems(json))
                    .extracting(FileProblem::headline)
                    .containsExactly("Nothing in a weigh-up is that long, or that deep");
        }
    }

    @Test
    void what_was_typed_is_quoted_as_it_was_typed() {
        String json = sound().json().replace("\"kidneys\"", "\"vertebrae\": \"one more rib\", \"kidneys\"");
        assertThat(WeighUps.problems(json))
                .extracting(FileProblem::headline)
                .containsExactly("“one more rib” cannot be “vertebrae”");
    }
}
