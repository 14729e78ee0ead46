package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.slips.Finding;
import ribmark.testing.Tables;
import ribmark.testing.WeighUps;
import ribmark.weighupfile.ScoreJson;

/** Slips and moved lines as the score tells them. */
class LookedOverTest {

    private static WeighUps primals(String fores, String middle) {
        return WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", fores)
                .piece("middle", middle)
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640");
    }

    private static List<String> texts(JsonNode list, String field) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.get(field).asText()));
        return texts;
    }

    /** The probability also reckoned in Python 3 with numpy 2.4.6: 0.876. */
    @Test
    void a_sound_weigh_up_has_no_suspects_and_nothing_stands_out() {
        JsonNode json = primals("7.310", "5.420").scored();
        assertThat(json.get("suspects")).isEmpty();
        assertThat(json.get("saying").asText()).isEqualTo("nothing stands out");
        JsonNode first = json.get("explanations").get(0);
        assertThat(first.get("line").isNull()).isTrue();
        assertThat(first.get("by").asInt()).isZero();
        assertThat(first.get("probability").asDouble()).isCloseTo(0.876, within(5e-4));
    }

    @Test
    void a_slip_is_told_with_its_likely_weight_and_lines_are_not_worked_out() {
        JsonNode json = primals("7.310", "4.520").scored();
        JsonNode first = json.get("suspects").get(0);
        assertThat(first.get("cut").asText()).isEqualTo("middle");
        assertThat(first.get("side").isNull()).isTrue();
        assertThat(first.get("likelyKg").asText()).isEqualTo("5.420");
        assertThat(first.get("because").asText()).isEqualTo("digits swapped");
        assertThat(json.get("saying").isNull()).isTrue();
        assertThat(json.get("explanations").isNull()).isTrue();
    }

    @Test
    void a_piece_heavier_than_the_carcase_is_not_scored_and_suspected() {
        JsonNode json = primals("73.10", "5.420").scored();
        assertThat(json.get("balance").get("verdict").asText()).isEqualTo("not scored");
        assertThat(json.get("suspects").get(0).get("likelyKg").asText()).isEqualTo("7.310");
        assertThat(json.get("suspects").get(0).get("because").asText()).isEqualTo("decimal point moved");
    }

    @Test
    void without_a_model_nothing_is_worked_out() {
        JsonNode json =
                WeighUps.tree(ScoreJson.of(primals("7.310", "5.420").score()).toString());
        for (String field : List.of("suspects", "saying", "explanations")) {
            assertThat(json.get(field).isNull()).isTrue();
        }
    }

    @Test
    void what_was_entered_twice_has_no_weight_to_suggest() {
        JsonNode json = primals("7.310", "5.420").piece("middle", "5.425").scored();
        assertThat(json.get("suspects").get(0).get("because").asText()).isEqualTo("weighed twice");
        assertThat(json.get("suspects").get(0).get("likelyKg").isNull()).isTrue();
    }

    @Test
    void a_missing_piece_stands_beside_the_balance_that_misses_it() {
        JsonNode json = WeighUps.on("uk-primals")
                .cold("20.120")
                .piece("fores", "3.680", ", \"side\": \"left\"")
                .piece("middle", "5.420")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .scored();
        assertThat(json.get("balance").get("missing")).hasSize(2);
        assertThat(texts(json.get("suspects"), "cut")).containsExactly("fores", "legs-chump-on");
        assertThat(texts(json.get("suspects"), "side")).containsExactly("right", "null");
        assertThat(texts(json.get("suspects"), "because")).containsOnly("piece missing");
        assertThat(json.get("explanations").isNull()).isTrue();
    }

    @Test
    void in_a_tree_the_slip_is_named_among_those_the_balances_cannot_part() {
        JsonNode json = tree("5.825").scored();
        JsonNode first = json.get("suspects").get(0);
        assertThat(first.get("cut").asText()).isEqualTo("legs-chump-off");
        assertThat(first.get("likelyKg").asText()).isEqualTo("5.285");
        assertThat(json.get("tree").get("adjusted").asBoolean()).isFalse();
        JsonNode sound = tree("5.285").scored();
        assertThat(sound.get("suspects")).isEmpty();
        assertThat(sound.get("saying").isNull()).isFalse();
    }

    private static WeighUps tree(String legs) {
        return WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.330")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.640")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.610")
                .piece("scrag", "0.760")
                .piece("shoulders", "6.525")
                .piece("best-ends", "2.010")
                .piece("loins", "2.005")
                .piece("breasts", "1.385")
                .piece("chumps", "1.330")
                .piece("legs-chump-off", legs);
    }

    @Test
    void larger_pieces_not_yet_parted_are_not_missed_in_parts() {
        JsonNode json = WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.310")
                .piece("middle", "5.420")
                .piece("legs-chump-on", "6.580")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.640")
                .piece("chumps", "1.310")
                .piece("legs-chump-off", "5.250")
                .scored();
        assertThat(json.get("suspects")).isEmpty();
        assertThat(json.get("explanations").isNull()).isFalse();
    }

    @Test
    void kidneys_out_hot_and_other_pieces_are_looked_over_too() {
        JsonNode json = WeighUps.on("uk-primals")
                .carcase("20.000", "\"weighed\": \"hot\", \"kidneys\": \"out\"")
                .piece("fores", "7.280")
                .piece("middle", "5.390")
                .piece("legs-chump-on", "6.590")
                .piece("bone", "0.050")
                .scored();
        assertThat(json.get("suspects")).isEmpty();
        assertThat(json.get("saying").asText()).isEqualTo("nothing stands out");
    }

    @Test
    void only_bone_on_the_scale_leaves_every_row_missing() {
        JsonNode json =
                WeighUps.on("uk-primals").cold("20.120").piece("bone", "0.050").scored();
        assertThat(texts(json.get("suspects"), "because")).hasSize(5).containsOnly("piece missing");
    }

    /** The digits are those typed: a nought never written is not swapped. */
    @Test
    void the_text_typed_counts() {
        double full = primals("7.310", "4.520")
                .scored()
                .get("suspects")
                .get(0)
                .get("probability")
                .asDouble();
        double brief = primals("7.310", "4,52")
                .scored()
                .get("suspects")
                .get(0)
                .get("probability")
                .asDouble();
        assertThat(brief).isGreaterThan(full);
    }

    @Test
    void the_order_of_the_pieces_changes_nothing() {
        Random random = new Random(20_261_126);
        for (String legs : List.of("5.825", "5.285", "5.255")) {
            WeighUp weighUp = tree(legs).score().weighUp();
            String before = said(weighUp);
            for (int i = 0; i < 20; i++) {
                List<Reading> shuffled = new ArrayList<>(weighUp.readings());
                Collections.shuffle(shuffled, random);
                assertThat(said(new WeighUp(weighUp.carcase(), weighUp.tables(), shuffled, List.of(), "")))
                        .isEqualTo(before);
            }
        }
    }

    private static String said(WeighUp weighUp) {
        WeighUpScore score = WeighUpScore.of(weighUp);
        return score.finding(Tables.lamb().weighing()).orElseThrow().toString();
    }

    @Test
    void it_is_said_in_lines_that_never_decide() {
        FindingText text = new FindingText(Tables.lamb().weighing().orElseThrow());
        assertThat(text.lines(found(primals("7.310", "4.520"))).get(0))
                .isEqualTo("Look again at middle: perhaps 5.420\u00a0kg, digits swapped (97 in 100).");
        assertThat(text.lines(found(primals("7.310", "5.420"))))
                .containsExactly("Nothing stands out: the weights fit lines cut as meant.");
        WeighUps rib = WeighUps.on("uk-joints")
                .cold("20.000")
                .piece("scrag", "0.760")
                .piece("shoulders", "6.100")
                .piece("best-ends", "2.270")
                .piece("loins", "1.990")
                .piece("breasts", "1.500")
                .piece("chumps", "1.310")
                .piece("legs-chump-off", "5.290")
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.580");
        assertThat(text.lines(found(rib)))
                .containsExactly("The weights would fit: the fore line, one rib towards the head (79 in 100).");
        assertThat(text.reasons(found(rib)).get(1)).isEqualTo("Nothing moved (19 in 100)");
    }

    private static Finding found(WeighUps file) {
        return file.score().finding(Tables.lamb().weighing()).orElseThrow();
    }
}
