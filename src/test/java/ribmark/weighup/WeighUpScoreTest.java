package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import ribmark.testing.WeighUps;

/** Weigh-ups worked by hand: the working stands beside each. Every reading of the 5 g, 2 g scale has u² = 25/12 + 4 = 6.08333 g². */
class WeighUpScoreTest {

    private static final Offset<Double> LAST_DIGIT = within(5e-5);

    private static WeighUps clean() {
        return WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640");
    }

    /**
     * The clean one. Pieces 7310 + 5420 + 6580 + 100 + 640 = 20050, gap 70 g, 100 × 70/20120 = 0.3479 %, U = 2 √(6 × 6.08333) =
     * 12.083. Fores 100 × 7310/20120 = 36.3320, u = 100 √(6.08333 + 0.36332² × 6.08333)/20120 = 0.01304, zeta = 0.0320/√(2.25 +
     * 0.00017) = 0.02134. Fat 6 mm against at most 5: (5 − 6)/(1/√12) = −3.4641, probability 0.000266. The printed digits are those
     * of the format's own example.
     */
    @Test
    void a_clean_weigh_up_gives_the_digits_of_the_worked_example() {
        JsonNode json = clean().trim("loin-fat-depth", "6.0", "1.0").scored();
        JsonNode balance = json.get("balance");
        assertThat(balance.get("carcaseG").asInt()).isEqualTo(20120);
        assertThat(balance.get("piecesG").asInt()).isEqualTo(20050);
        assertThat(balance.get("gapG").asInt()).isEqualTo(70);
        assertThat(balance.get("gapPercent").asDouble()).isCloseTo(0.3479, LAST_DIGIT);
        assertThat(balance.get("gapExpandedUncertaintyG").asDouble()).isCloseTo(12.083, within(5e-4));
        assertThat(balance.get("verdict").asText()).isEqualTo("balanced");
        assertThat(balance.get("missing")).isEmpty();
        JsonNode fores = json.get("cuts").get(0);
        assertThat(fores.get("cut").asText()).isEqualTo("fores");
        assertThat(fores.get("percent").asDouble()).isCloseTo(36.3320, LAST_DIGIT);
        assertThat(fores.get("standardUncertainty").asDouble()).isCloseTo(0.01304, within(5e-6));
        assertThat(fores.get("expected").asDouble()).isEqualTo(36.3);
        assertThat(fores.get("sd").asDouble()).isEqualTo(1.5);
        assertThat(fores.get("basis").asText()).isEqualTo("judgement");
        assertThat(fores.get("zeta").asDouble()).isCloseTo(0.02134, within(5e-6));
        assertThat(fores.get("verdict").asText()).isEqualTo("within");
        assertThat(fores.get("score").asDouble()).isEqualTo(100);
        assertThat(json.get("trim").get(0).get("conformity").asDouble()).isCloseTo(0.000266, within(5e-7));
        assertThat(json.get("trim").get(0).get("verdict").asText()).isEqualTo("outside");
        assertThat(json.get("yieldScore").asDouble()).isEqualTo(100);
        assertThat(json.get("trimScore").asDouble()).isCloseTo(0.0266, LAST_DIGIT);
    }

    @Test
    void the_result_has_exactly_the_fields_of_its_format_in_their_order() {
        JsonNode json = clean().trim("loin-fat-depth", "6.0", "1.0").scored();
        assertThat(names(json))
                .containsExactly(
                        "balance",
                        "cuts",
                        "trim",
                        "yieldScore",
                        "trimScore",
                        "notes",
                        "suspects",
                        "saying",
                        "explanations");
        assertThat(names(json.get("balance")))
                .containsExactly(
                        "carcaseG", "piecesG", "gapG", "gapPercent", "gapExpandedUncertaintyG", "verdict", "missing");
        assertThat(names(json.get("cuts").get(0)))
                .containsExactly(
                        "cut", "percent", "standardUncertainty", "expected", "sd", "basis", "zeta", "verdict", "score");
        assertThat(names(json.get("trim").get(0)))
                .containsExactly("measure", "value", "unit", "lowest", "highest", "conformity", "verdict", "score");
        assertThat(json.get("trim").get(0).get("lowest").isNull()).isTrue();
        assertThat(names(json.get("explanations").get(0)))
                .containsExactly("line", "towards", "by", "side", "probability");
        assertThat(json.get("notes")).isEmpty();
    }

    /** The query: legs 6.280 instead of 6.580. Gap 20120 − 19750 = 370 g, 1.839 %: over 1, up to 2. It is scored all the same. */
    @Test
    void a_gap_between_one_and_two_percent_is_a_query_and_still_scored() {
        JsonNode json = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.280")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .scored();
        assertThat(json.get("balance").get("gapPercent").asDouble()).isCloseTo(1.8390, LAST_DIGIT);
        assertThat(json.get("balance").get("verdict").asText()).isEqualTo("query");
        // legs: 31.2127 %, zeta (31.2127 − 33.1)/√(1.44 + 0.00016) = −1.5727, score 100 − 50 × 0.5727 = 71.37
        JsonNode legs = json.get("cuts").get(2);
        assertThat(legs.get("zeta").asDouble()).isCloseTo(-1.5727, within(1e-4));
        assertThat(legs.get("score").asDouble()).isCloseTo(71.37, within(5e-3));
        // the others score 100, so the mean is 100 − 33.1 × 28.63/100 = 90.52
        assertThat(json.get("yieldScore").asDouble()).isCloseTo(90.52, within(5e-3));
    }

    /** More off than on: the fores at 7.610 make 20350, 230 g more than the carcase; U is 12.083 g. */
    @Test
    void more_off_than_on_is_not_scored_and_says_why() {
        JsonNode json = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "7.610")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .trim("fore-rib-count", "6", "1")
                .scored();
        assertThat(json.get("balance").get("gapG").asInt()).isEqualTo(-230);
        assertThat(json.get("balance").get("verdict").asText()).isEqualTo("not scored");
        for (JsonNode cut : json.get("cuts")) {
            assertThat(cut.get("verdict").isNull()).isTrue();
            assertThat(cut.get("score").isNull()).isTrue();
        }
        assertThat(json.get("yieldScore").isNull()).isTrue();
        assertThat(json.get("trimScore").asDouble()).isEqualTo(100);
        assertThat(json.get("notes").get(0).asText()).startsWith("Not scored: more came off than went on");
    }

    /** A gap below nothing that the scales can explain: 10 g more than the carcase, U 12.083 g. */
    @Test
    void a_little_more_off_than_on_balances_when_the_scales_can_explain_it() {
        assertThat(clean().piece("waste", "0.080").score().balance().verdict()).isEqualTo(Balance.Verdict.BALANCED);
    }

    /**
     * Hot: 20.120 × 0.97 = 19516.4 g, not rounded; u² = 0.97² × 6.08333 + (0.006 × 20120)² = 14578.9. Pieces 19400, gap 116.4 g =
     * 0.5964 %; U = 2 √(14578.9 + 5 × 6.08333) = 241.74. Fores 7110: 36.4309 %, u = 100 √(6.08333 + 0.364309² × 14578.9)/19516.4 =
     * 0.22574; zeta = 0.1309/√(2.25 + 0.05096) = 0.0863.
     */
    @Test
    void a_hot_carcase_is_taken_as_cold_without_rounding() {
        JsonNode json = WeighUps.on("uk-primals")
                .carcase("20.120", "\"weighed\": \"hot\", \"kidneys\": \"in\"")
                .piece("fores", "7.110")
                .piece("middle", "5.220")
                .piece("legs-chump-on", "6.380")
                .piece("kidneys", "0.090")
                .piece("kidney-fat", "0.600")
                .scored();
        JsonNode balance = json.get("balance");
        assertThat(balance.get("carcaseG").asDouble()).isEqualTo(19516.4);
        assertThat(balance.get("gapG").asDouble()).isEqualTo(116.4);
        assertThat(balance.get("gapPercent").asDouble()).isCloseTo(0.5964, LAST_DIGIT);
        assertThat(balance.get("gapExpandedUncertaintyG").asDouble()).isCloseTo(241.74, within(5e-3));
        JsonNode fores = json.get("cuts").get(0);
        assertThat(fores.get("percent").asDouble()).isCloseTo(36.4309, LAST_DIGIT);
        assertThat(fores.get("standardUncertainty").asDouble()).isCloseTo(0.22574, within(5e-6));
        assertThat(fores.get("zeta").asDouble()).isCloseTo(0.0863, LAST_DIGIT);
        assertThat(json.get("notes").get(0).asText())
                .startsWith("Weighed hot: 20.120\u00a0kg is taken as 19.5164\u00a0kg");
    }

    /** Kidneys out: fores expected 36.3/0.963 = 37.6947; 7420 of 19650 g is 37.7608 %, zeta 0.0661/1.50006 = 0.0441. */
    @Test
    void without_kidneys_the_joints_are_expected_to_be_more_of_the_carcase() {
        JsonNode json = WeighUps.on("uk-primals")
                .carcase("19.650", "\"weighed\": \"cold\", \"kidneys\": \"out\"")
                .piece("fores", "7.420")
                .piece("middle", "5.490")
                .piece("legs-chump-on", "6.680")
                .scored();
        assertThat(json.get("balance").get("verdict").asText()).isEqualTo("balanced");
        assertThat(json.get("cuts")).hasSize(3);
        assertThat(json.get("cuts").get(0).get("expected").asDouble()).isCloseTo(37.6947, LAST_DIGIT);
        assertThat(json.get("cuts").get(0).get("sd").asDouble()).isEqualTo(1.5);
        assertThat(json.get("cuts").get(0).get("zeta").asDouble()).isCloseTo(0.0441, LAST_DIGIT);
    }

    /**
     * One side: chumps, left only. 640 of 20000 g = 3.2 %, expected 6.6/2 = 3.3, sd = ½ √(1² + (0.04 × 6.6)²) = 0.51713, u = 100 √(6.08333 ×
     * (1 + 0.032²))/20000 = 0.01234; zeta = −0.1/√(0.51713² + 0.01234²) = −0.1933. The other side is missing. The best ends came in
     * halves, 1010 + 1000, and count as one cut of two readings: u = 100 √(2 × 6.08333 + 0.1005² × 6.08333)/20000 = 0.01748.
     */
    @Test
    void one_side_of_a_pair_is_judged_at_half_and_the_other_is_missing() {
        JsonNode json = WeighUps.on("uk-joints")
                .cold("20.000")
                .piece("scrag", "0.760")
                .piece("shoulders", "6.450")
                .piece("best-ends", "1.010", ", \"side\": \"left\"")
                .piece("best-ends", "1.000", ", \"side\": \"right\"")
                .piece("chumps", "0.640", ", \"side\": \"left\"")
                .scored();
        assertThat(json.get("balance").get("verdict").asText()).isEqualTo("incomplete");
        assertThat(texts(json.get("balance").get("missing")))
                .containsExactly("loins", "breasts", "chumps right", "legs-chump-off", "kidneys", "kidney-fat");
        JsonNode bestEnds = json.get("cuts").get(2);
        assertThat(bestEnds.get("percent").asDouble()).isCloseTo(10.05, within(1e-9));
        assertThat(bestEnds.get("standardUncertainty").asDouble()).isCloseTo(0.01748, within(5e-6));
        JsonNode chumps = json.get("cuts").get(3);
        assertThat(chumps.get("expected").asDouble()).isEqualTo(3.3);
        assertThat(chumps.get("sd").asDouble()).isCloseTo(0.51713, within(5e-6));
        assertThat(chumps.get("zeta").asDouble()).isCloseTo(-0.1933, LAST_DIGIT);
        // incomplete still scores what was weighed
        assertThat(chumps.get("verdict").asText()).isEqualTo("within");
        assertThat(json.get("yieldScore").isNumber()).isTrue();
    }

    /** A tray of 850 g taken off: two readings, u = 100 √(2 × 6.08333 + 0.36332² × 6.08333)/20120 = 0.01790. */
    @Test
    void a_weight_with_its_tray_taken_off_is_two_readings() {
        JsonNode json = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "8.160", ", \"tareG\": 850")
                .scored();
        assertThat(json.get("balance").get("piecesG").asInt()).isEqualTo(7310);
        assertThat(json.get("cuts").get(0).get("standardUncertainty").asDouble())
                .isCloseTo(0.01790, within(5e-6));
    }

    /** Two trays of one cut, 4.000 and 3.310: added, and two readings; the same u as above. */
    @Test
    void two_entries_of_one_cut_are_added_and_are_two_readings() {
        JsonNode json = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "4.000")
                .piece("fores", "3.310")
                .scored();
        assertThat(json.get("cuts")).hasSize(1);
        assertThat(json.get("cuts").get(0).get("percent").asDouble()).isCloseTo(36.3320, LAST_DIGIT);
        assertThat(json.get("cuts").get(0).get("standardUncertainty").asDouble())
                .isCloseTo(0.01790, within(5e-6));
    }

    /** Carcase on a rail scale of 20 g and 10 g: u² = 400/12 + 100 = 133.333; U = 2 √(133.333 + 5 × 6.08333) = 25.593. */
    @Test
    void the_carcase_may_have_been_weighed_on_another_scale() {
        JsonNode json = clean().carcase(
                        "20.120",
                        "\"weighed\": \"cold\", \"kidneys\": \"in\","
                                + " \"scale\": {\"divisionG\": 20, \"repeatabilityG\": 10}")
                .scored();
        assertThat(json.get("balance").get("gapExpandedUncertaintyG").asDouble())
                .isCloseTo(25.593, within(5e-4));
    }

    @Test
    void bone_trim_and_waste_are_balanced_and_not_scored() {
        JsonNode json = clean().piece("bone", "0.040")
                .piece("trim", "0.010")
                .piece("waste", "0.010")
                .scored();
        assertThat(json.get("balance").get("gapG").asInt()).isEqualTo(10);
        assertThat(json.get("cuts")).hasSize(5);
        assertThat(clean().piece("bone", "0.040").score().balancedOnly()).hasSize(1);
    }

    @Test
    void a_piece_heavier_than_its_carcase_is_not_scored_once_nothing_is_missing() {
        assertThat(clean().piece("fores", "73.10").score().isScored()).isFalse();
        JsonNode alone =
                WeighUps.on("uk-primals").cold("20.120").piece("fores", "73.10").scored();
        assertThat(alone.get("balance").get("verdict").asText()).isEqualTo("incomplete");
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }
}
