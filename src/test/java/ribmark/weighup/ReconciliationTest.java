package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import ribmark.testing.WeighUps;

/**
 * One lamb weighed at two levels. The expected figures were derived outside this program in two ways, by the formula of the
 * Lagrange multipliers and by weighted least squares with the joints left free, which agreed to eleven places.
 */
class ReconciliationTest {

    private static WeighUps lamb(String legs) {
        return WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.330")
                .piece("scrag", "0.760")
                .piece("shoulders", "6.525")
                .piece("middle", "5.420")
                .piece("best-ends", "2.010")
                .piece("loins", "2.005")
                .piece("breasts", "1.385")
                .piece("legs-chump-on", "6.640")
                .piece("chumps", "1.330")
                .piece("legs-chump-off", legs)
                .piece("kidneys", "0.100")
                .piece("kidney-fat", "0.610");
    }

    @Test
    void weights_of_two_levels_are_moved_as_little_as_the_scale_allows() {
        JsonNode tree = lamb("5.285").scored().get("tree");
        assertThat(tree.get("globalTest").asDouble()).isCloseTo(2.3741, within(5e-5));
        assertThat(tree.get("limit").asDouble()).isCloseTo(9.4877, within(5e-5));
        assertThat(tree.get("adjusted").asBoolean()).isTrue();
        assertThat(entry(tree, "carcase").get("reconciledG").asDouble()).isCloseTo(20120.272, within(5e-4));
        assertThat(entry(tree, "fores").get("reconciledG").asDouble()).isCloseTo(7329.250, within(5e-4));
        assertThat(entry(tree, "middle").get("reconciledG").asDouble()).isCloseTo(5419.719, within(5e-4));
        assertThat(entry(tree, "legs-chump-on").get("reconciledG").asDouble()).isCloseTo(6639.702, within(5e-4));
        assertThat(entry(tree, "scrag").get("reconciledG").asDouble()).isCloseTo(760.478, within(5e-4));
        assertThat(entry(tree, "shoulders").get("reconciledG").asDouble()).isCloseTo(6525.478, within(5e-4));
        assertThat(entry(tree, "best-ends").get("reconciledG").asDouble()).isCloseTo(2010.009, within(5e-4));
        assertThat(entry(tree, "chumps").get("reconciledG").asDouble()).isCloseTo(1330.026, within(5e-4));
        assertThat(entry(tree, "fores").get("z").asDouble()).isCloseTo(1.537, within(5e-4));
        assertThat(tree.get("entries")).hasSize(13);
        assertThat(tree.get("entries")).allMatch(entry -> entry.get("z").asDouble() < 1.5375);
    }

    @Test
    void two_digits_the_other_way_round_keep_it_from_being_adjusted() {
        JsonNode tree = lamb("5.825").scored().get("tree");
        assertThat(tree.get("globalTest").asDouble()).isCloseTo(1496.84, within(5e-3));
        assertThat(tree.get("adjusted").asBoolean()).isFalse();
        assertThat(entry(tree, "chumps").get("z").asDouble()).isCloseTo(38.66, within(5e-3));
        assertThat(entry(tree, "legs-chump-off").get("z").asDouble()).isCloseTo(38.66, within(5e-3));
        assertThat(entry(tree, "legs-chump-on").get("z").asDouble()).isCloseTo(31.54, within(5e-3));
        assertThat(entry(tree, "chumps").get("reconciledG").asDouble()).isEqualTo(1330);
    }

    @Test
    void the_carcase_is_balanced_with_the_coarsest_table_and_each_cut_with_its_own_parts() {
        WeighUpScore score = lamb("5.285").score();
        assertThat(score.balance().partsG()).isEqualTo(20100);
        assertThat(score.innerBalances()).extracting(Balance::of).containsExactly("fores", "middle", "legs-chump-on");
        assertThat(score.innerBalances().get(0).gapG().intValueExact()).isEqualTo(45);
        assertThat(score.cuts()).hasSize(12);
    }

    @Test
    void a_cut_parted_only_in_part_is_incomplete_and_left_out_of_the_test() {
        JsonNode json = WeighUps.on("uk-primals", "uk-joints")
                .cold("20.120")
                .piece("fores", "7.330")
                .piece("scrag", "0.760")
                .scored();
        JsonNode fores = json.get("tree").get("balances").get(0);
        assertThat(fores.get("of").asText()).isEqualTo("fores");
        assertThat(fores.get("verdict").asText()).isEqualTo("incomplete");
        assertThat(fores.get("missing").get(0).asText()).isEqualTo("shoulders");
        assertThat(json.get("tree").get("globalTest").isNull()).isTrue();
    }

    private static JsonNode entry(JsonNode tree, String cut) {
        for (JsonNode entry : tree.get("entries")) {
            if (entry.get("cut").asText().equals(cut)) {
                return entry;
            }
        }
        throw new AssertionError(cut);
    }
}
