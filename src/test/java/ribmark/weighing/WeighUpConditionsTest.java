package ribmark.weighing;

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

    @Test
    void another_animal_and_wider_spreads_are_noted() {
        JsonNode json = WeighUps.on("uk-primals")
                .carcase(
                        "25.000",
                        "\"weighed\": \"cold\", \"kidneys\": \"in\", \"fatClass\": \"3L\", \"vertebrae\": \"7,14,6,4,3\"")
                .piece("fores", "9.000")
                .scored();
        assertThat(texts(json.get("notes")))
                .containsExactly(
                        "Every spread is multiplied by 1.5: its weight is outside 16 to 24\u00a0kg.",
                        "Another animal: 7,14,6,4,3 vertebrae counted, 7,13,6,4,3 are usual. The tables are not changed for"
                                + " it.");
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
}
