package ribmark.admin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import ribmark.testing.WeighUps;

class AgreeCommandTest {

    private static final String FOUR =
            "item,assessor,rating\na,Ada,unaided\na,Bo,unaided\nb,Ada,unaided\nb,Bo,not yet\n"
                    + "c,Ada,not-yet\nc,Bo,unaided\nd,Ada,unaided\nd,Bo,unaided\n";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void programs_read_every_measure_or_the_reason_why_not() {
        assertThat(agree(FOUR, "--level", "ordinal", "--format", "json", "-")).isZero();
        JsonNode json = WeighUps.tree(out.toString());
        List<String> names = new ArrayList<>();
        json.fieldNames().forEachRemaining(names::add);
        assertThat(names)
                .containsExactly(
                        "items",
                        "assessors",
                        "ratings",
                        "percentAgreement",
                        "cohenKappa",
                        "weightedKappaLinear",
                        "fleissKappa",
                        "krippendorffAlpha",
                        "gwetAc1",
                        "iccTwoWayRandomSingle",
                        "notComputable");
        assertThat(json.get("items").asInt()).isEqualTo(4);
        assertThat(json.get("ratings").asInt()).isEqualTo(8);
        assertThat(json.get("percentAgreement").asDouble()).isEqualTo(50);
        // both use not yet once in four: chance 0.75 × 0.75 + 0.25 × 0.25 = 0.625, kappa (0.5 − 0.625)/0.375 = −1/3
        assertThat(json.get("cohenKappa").asDouble()).isCloseTo(-1.0 / 3, within(1e-12));
        assertThat(json.get("gwetAc1").isNull()).isTrue();
        assertThat(json.get("notComputable").get("gwetAc1").asText()).isNotBlank();
    }

    @Test
    void people_read_lines() {
        assertThat(agree(FOUR, "--level", "nominal", "-")).isZero();
        assertThat(out.toString())
                .startsWith("4 things, 2 assessors, 8 ratings.")
                .contains("Percent agreement: 50.0 %");
    }

    @Test
    void one_thing_is_said_as_one() {
        assertThat(agree("item,assessor,rating\na,Ada,unaided\na,Bo,unaided", "--level", "nominal", "-"))
                .isZero();
        assertThat(out.toString()).startsWith("1 thing, 2 assessors, 2 ratings.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'item,rating\na,b' | nominal | line 1",
                "'item,assessor,rating\na,Ada,1\na,Ada,2' | nominal | line 3",
                "'item,assessor,rating\na,Ada,' | nominal | line 2",
                "'item,assessor,rating\na,Ada,fine' | ordinal | line 2",
                "'item,assessor,rating\na,Ada,unaided' | interval | line 2",
                "'item,assessor,rating\na,Ada,unaided\na,Bo,2' | ordinal | rating",
                "'item,assessor,rating' | nominal | ''",
                "'' | nominal | ''",
                "'item,assessor,rating\na,\"Ada,1' | nominal | ''"
            })
    void what_cannot_be_read_is_refused_with_its_line(String csv, String level, String at) {
        assertThat(agree(csv, "--level", level, "--format", "json", "-")).isEqualTo(1);
        JsonNode problems = WeighUps.tree(out.toString()).get("problems");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("at").asText()).isEqualTo(at);
    }

    @Test
    void numbers_written_in_two_ways_are_one_rating() {
        String csv = "item,assessor,rating\na,Ada,3\na,Bo,3.0\n";
        assertThat(agree(csv, "--level", "interval", "--format", "json", "-")).isZero();
        assertThat(WeighUps.tree(out.toString()).get("percentAgreement").asDouble())
                .isEqualTo(100);
    }

    @Test
    void a_call_without_a_level_makes_no_sense() {
        assertThat(agree(FOUR, "-")).isEqualTo(2);
        assertThat(agree(FOUR, "--level", "ratio", "-")).isEqualTo(2);
    }

    private int agree(String csv, String... arguments) {
        return new CommandLine(new AgreeCommand(new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8))))
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }
}
