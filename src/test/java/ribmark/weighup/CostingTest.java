package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.Settings;
import ribmark.contentfiles.ContentFiles;
import ribmark.proof.Check;
import ribmark.scoring.Prices;
import ribmark.testing.TestApp;
import ribmark.testing.WeighUps;
import ribmark.testing.Weighing;
import ribmark.weighupfile.ScoreJson;

/** A college lays a file of its own prices over ours; the prices are invented. */
class CostingTest {

    @TempDir
    private Path own;

    private void prices(String rows) throws IOException {
        Path folder = Files.createDirectories(own.resolve("assessments/lamb"));
        Files.writeString(folder.resolve("prices.yaml"), """
                # yaml-language-server: $schema=../../content/schemas/prices.json
                currency: GBP
                since: "2026-09-01"
                text: "What the shop of an invented college asks."
                prices: [%s]
                rests-on: [{fact: "Invented", source: OWN, basis: own}]
                """.formatted(rows), StandardCharsets.UTF_8);
    }

    /**
     * By hand, of 20.000 kg: fores 7.300 against 36.3 %, 7.260: 0.040 kg more at 8.00 is 0.32; legs 6.600 against 6.620: 0.020 less at
     * 11.00 is −0.22; together 0.10.
     */
    @Test
    void the_difference_is_told_cut_by_cut_on_the_page_and_in_the_score() throws IOException {
        prices("{row: fores, per-kg: 8.00}, {row: legs-chump-on, per-kg: 11.00}");
        try (TestApp app = new TestApp(Settings.throwAway(0, Optional.of(own)))) {
            Weighing on = new Weighing(app, "20.000");
            on.weigh("fores.fores.once", "7.300");
            on.weigh("legs.legs-chump-on.once", "6.600");
            on.weigh("kidneys.kidneys.once", "0.100");

            assertThat(on.browser.open(on.path() + "/scores").text())
                    .contains(
                            "At the college’s own prices this breakdown was worth 0.10 GBP more than the one the table expects.")
                    .contains("Fores: +0.040 kg at 8.00 a kilogram: +0.32 GBP")
                    .contains("Legs with chumps: −0.020 kg at 11.00 a kilogram: −0.22 GBP")
                    .contains("Without a price: Kidneys");
            Optional<Prices> prices = app.app.curriculum().prices();
            WeighUpScore score = WeighUps.on("uk-primals")
                    .cold("20.000")
                    .piece("fores", "7.300")
                    .piece("legs-chump-on", "6.600")
                    .piece("kidneys", "0.100")
                    .score();
            JsonNode cost = WeighUps.tree(ScoreJson.of(score, Optional.empty(), score.costing(prices))
                            .toString())
                    .get("cost");
            assertThat(cost.get("total").decimalValue()).isEqualByComparingTo(new BigDecimal("0.10"));
            assertThat(cost.get("parts")).hasSize(2);
        }
    }

    @Test
    void without_a_file_of_prices_nothing_is_said() {
        assertThat(Weighing.LAMB.prices()).isEmpty();
        WeighUpScore score =
                WeighUps.on("uk-primals").cold("20.000").piece("fores", "7.300").score();
        assertThat(score.costing(Optional.empty())).isEmpty();
        assertThat(ScoreJson.of(score, Optional.empty(), Optional.empty()).has("cost"))
                .isFalse();
    }

    @Test
    void a_price_of_a_cut_nobody_weighs_is_found_by_the_check() throws IOException {
        prices("{row: haunch, per-kg: 8.00}");
        Check check = Check.of(ContentFiles.ours().under(ContentFiles.in(own)));
        assertThat(check.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.file()).isEqualTo("assessments/lamb/prices.yaml");
            assertThat(problem.headline()).contains("haunch");
        });
    }
}
