package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ribmark.testing.WeighUps;

/** What must travel with a weight: hot or cold, fat class, another animal, the moment of weighing, and whose sheet it was. */
class WeighUpConditionsTest {

    @Test
    void outside_16_to_24_kg_and_fat_2_to_3H_the_spreads_widen_once() {
        assertThat(sdOfFores("16.000", "3H")).isEqualTo(1.5);
        assertThat(sdOfFores("24.000", "2")).isEqualTo(1.5);
        assertThat(sdOfFores("15.995", "2")).isEqualTo(2.25);
        assertThat(sdOfFores("24.005", "3L")).isEqualTo(2.25);
        assertThat(sdOfFores("20.000", "4L")).isEqualTo(2.25);
        assertThat(sdOfFores("25.000", "1")).isEqualTo(2.25);
    }

    /** Hot 16.400 kg is 15.908 kg cold, below 16; hot 24.700 is 23.959, inside. */
    @Test
    void the_range_of_weights_is_that_of_the_cold_carcase() {
        assertThat(sdOfFores("16.400", "3L", "hot")).isEqualTo(2.25);
        assertThat(sdOfFores("24.700", "3L", "hot")).isEqualTo(1.5);
    }

    /**
     * Fourteen pairs of ribs. By hand: the middle grows by a rib of 1.37 and its strip of 0.60 to 28.87; the others, 73.1 together,
     * share 71.13: fores 36.3 × 71.13/73.1 = 35.32174. Both reasons widen the spreads once: 1.5 × 1.5 = 2.25.
     */
    @Test
    void another_animal_moves_what_is_expected_widens_it_and_says_so() {
        WeighUps fourteen = WeighUps.on("uk-primals")
                .carcase(
                        "25.000",
                        "\"weighed\": \"cold\", \"kidneys\": \"in\", \"fatClass\": \"3L\", \"vertebrae\": \"7,14,6,4,3\"")
                .piece("fores", "9.000")
                .piece("middle", "7.000");
        JsonNode json = fourteen.scored();
        assertThat(json.get("cuts").get(0).get("expected").asDouble()).isCloseTo(35.32174, within(5e-6));
        assertThat(json.get("cuts").get(0).get("sd").asDouble()).isEqualTo(2.25);
        assertThat(json.get("cuts").get(1).get("expected").asDouble()).isCloseTo(28.87, within(1e-9));
        assertThat(texts(json.get("notes")))
                .containsExactly(
                        "Every spread is multiplied by 1.5: its weight is outside 16 to 24\u00a0kg and it has another number of"
                                + " vertebrae.",
                        "Another animal: 7,14,6,4,3 vertebrae counted, 7,13,6,4,3 are usual. Expected for it, in percent:"
                                + " middle 28.87; the other cuts share what is left as they usually do.");
    }

    /** A rib more and a vertebra of the loin fewer: best ends 11.37, breasts 7.5, loins 8.0; kidneys out, each move is divided by 0.963. */
    @Test
    void ribs_and_loin_move_apart_and_everything_still_adds_to_a_hundred() {
        String counted = "\"vertebrae\": \"7,14,5,4,3\"";
        WeighUp in = onJoints("\"weighed\": \"cold\", \"kidneys\": \"in\", " + counted);
        assertThat(expected(in, "best-ends")).isCloseTo(11.37, within(1e-9));
        assertThat(expected(in, "breasts")).isCloseTo(7.5, within(1e-9));
        assertThat(expected(in, "loins")).isCloseTo(8.0, within(1e-9));
        assertThat(sum(in)).isCloseTo(100, within(1e-9));
        WeighUp out = onJoints("\"weighed\": \"cold\", \"kidneys\": \"out\", " + counted);
        assertThat(expected(out, "best-ends")).isCloseTo(11.37 / 0.963, within(1e-9));
        assertThat(sum(out)).isCloseTo(100, within(1e-9));
    }

    @Test
    void an_animal_the_figures_cannot_reach_is_not_moved_but_widened_and_said() {
        WeighUpScore score = WeighUps.on("uk-primals")
                .carcase("20.000", "\"weighed\": \"cold\", \"kidneys\": \"in\", \"vertebrae\": \"7,0,6,4,3\"")
                .piece("middle", "5.000")
                .score();
        assertThat(score.cuts().get(0).yield().expected()).isEqualTo(26.9);
        assertThat(score.cuts().get(0).yield().sd()).isEqualTo(2.25);
        assertThat(score.notes().get(1)).endsWith("what they expect is not moved.");
    }

    @Test
    void the_limit_for_ribs_in_the_best_end_follows_the_ribs_counted() {
        assertThat(ribsInTheBestEnd("7,14,6,4,3", "8").get("verdict").asText()).isEqualTo("within");
        assertThat(ribsInTheBestEnd("7,14,6,4,3", "8").get("highest").asDouble())
                .isEqualTo(8);
        assertThat(ribsInTheBestEnd("7,12,6,4,3", "7").get("verdict").asText()).isEqualTo("outside");
        assertThat(ribsInTheBestEnd("7,13,6,4,3", "7").get("verdict").asText()).isEqualTo("within");
    }

    private static JsonNode ribsInTheBestEnd(String vertebrae, String counted) {
        return WeighUps.on("uk-primals")
                .carcase("20.000", "\"weighed\": \"cold\", \"kidneys\": \"in\", \"vertebrae\": \"" + vertebrae + "\"")
                .piece("middle", "5.000")
                .trim("best-end-rib-count", counted, "1")
                .scored()
                .get("trim")
                .get(0);
    }

    private static WeighUp onJoints(String carcase) {
        return WeighUps.on("uk-joints")
                .carcase("20.000", carcase)
                .piece("loins", "2.000")
                .score()
                .weighUp();
    }

    private static double expected(WeighUp weighUp, String cut) {
        return weighUp.row(cut).orElseThrow().expected();
    }

    private static double sum(WeighUp weighUp) {
        return weighUp.rows().stream().mapToDouble(row -> row.expected()).sum();
    }

    @Test
    void a_cut_weighed_at_another_moment_is_balanced_and_not_scored() {
        WeighUp weighUp = WeighUps.read(WeighUps.on("uk-primals")
                        .cold("20.120")
                        .piece("fores", "7.310")
                        .piece("middle", "5.420")
                        .piece("legs-chump-on", "6.580")
                        .piece("kidneys", "0.100")
                        .piece("kidney-fat", "0.640")
                        .json())
                .weighUp()
                .orElseThrow();
        List<Reading> readings = new ArrayList<>(weighUp.readings());
        Reading fores = readings.remove(0);
        readings.add(new Reading(
                fores.cut(), fores.side(), fores.weight(), fores.tare(), fores.scale(), "boned", "sheet-1", ""));
        WeighUpScore score = WeighUpScore.of(
                new WeighUp(weighUp.carcase(), weighUp.tables(), readings, List.of(), weighUp.usualFormula()));
        assertThat(score.balance().verdict()).isEqualTo(Balance.Verdict.BALANCED);
        assertThat(score.cuts()).extracting(ScoredCut::cut).doesNotContain("fores");
        assertThat(score.notes())
                .containsExactly(
                        "fores: weighed boned. The table expects as parted, so the weight is balanced and not scored.");
    }

    /** Two apprentices share a lamb, a side each: each is judged on their own side, on the balance of the whole carcase. */
    @Test
    void a_side_is_scored_for_the_block_sheet_that_freed_it() {
        WeighUp weighUp = WeighUps.read(WeighUps.on("uk-joints")
                        .cold("20.000")
                        .piece("chumps", "0.640", ", \"side\": \"left\"")
                        .piece("chumps", "0.700", ", \"side\": \"right\"")
                        .json())
                .weighUp()
                .orElseThrow();
        List<Reading> byTwo = new ArrayList<>();
        for (Reading r : weighUp.readings()) {
            String sheet = "sheet-" + r.side().word();
            byTwo.add(new Reading(r.cut(), r.side(), r.weight(), r.tare(), r.scale(), "", sheet, ""));
        }
        WeighUpScore score = WeighUpScore.of(
                new WeighUp(weighUp.carcase(), weighUp.tables(), byTwo, List.of(), weighUp.usualFormula()));
        assertThat(score.cuts().get(0).yield().percent()).isCloseTo(6.7, within(1e-9));
        ScoredCut left = score.freedOn("sheet-left").cuts().get(0);
        assertThat(left.yield().percent()).isCloseTo(3.2, within(1e-9));
        assertThat(left.yield().expected()).isEqualTo(3.3);
    }

    private static double sdOfFores(String kg, String fatClass) {
        return sdOfFores(kg, fatClass, "cold");
    }

    private static double sdOfFores(String kg, String fatClass, String weighed) {
        return WeighUps.on("uk-primals")
                .carcase(
                        kg, "\"weighed\": \"" + weighed + "\", \"kidneys\": \"in\", \"fatClass\": \"" + fatClass + "\"")
                .piece("fores", "7.000")
                .score()
                .cuts()
                .get(0)
                .yield()
                .sd();
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }

    /** A pair of kidneys of 0.100 kg on a scale of 20 g: 2 × 20/√12 = 11.5 g, 12 %; with a scatter of 10 g 2 √(400/12 + 100) = 23.1 g. */
    @Test
    void kidneys_on_a_scale_of_twenty_grams_are_warned_about_and_on_five_they_are_not() {
        WeighUps kidneys = WeighUps.on("uk-primals").cold("20.000").piece("kidneys", "0.100");
        assertThat(kidneys.score().notes()).isEmpty();
        assertThat(kidneys.scale(20, 10).score().notes())
                .containsExactly(
                        "kidneys: 0.100\u00a0kg is little for a scale of 20\u00a0g. Its division alone makes ±\u00a012\u00a0%, with"
                                + " its scatter ±\u00a023\u00a0%; in use a class III scale may be wrong by 20\u00a0% of it"
                                + " (OIML R 76). Take a finer scale.");
    }

    /** Class III weighs no more than 10 000 divisions: 5 kg of 0.5 g. */
    @Test
    void a_load_beyond_the_class_of_the_scale_is_said() {
        assertThat(WeighUps.on("uk-primals")
                        .cold("20.000")
                        .scale(0.5, 0.2)
                        .piece("fores", "7.310")
                        .score()
                        .notes())
                .containsExactly(
                        "fores: 7.310\u00a0kg is more than a class III scale with a division of 0.5\u00a0g may weigh (OIML R 76).");
    }
}
