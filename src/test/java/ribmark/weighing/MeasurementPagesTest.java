package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.testing.WeighUps;
import ribmark.testing.Weighing;
import ribmark.web.Role;

/** What the weigh-up page says beside the weights: another animal, pairs, scales. Weights are invented. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MeasurementPagesTest {

    private final TestApp app = new TestApp();

    @AfterAll
    void stop() {
        app.close();
    }

    @Test
    void a_lamb_with_fourteen_pairs_of_ribs_is_expected_to_have_more_middle_and_the_page_says_so() {
        Weighing on = new Weighing(app, "20.000");
        on.test.app.carcases().count(on.lamb, OptionalInt.of(14), OptionalInt.empty(), on.maeve);
        Page page = on.weigh("middle.middle.once", "5.774");

        assertThat(page.text())
                .contains("Another animal: 7,14,6,4,3 vertebrae counted, 7,13,6,4,3 are usual.")
                .contains("Middle: 5.774 kg. 28.9 % of the carcase. Expected 28.9 %. Score 100")
                .contains("One rib is 1.37 points of the best end")
                .contains("Every spread is multiplied by 1.5");

        BlockSheet sheet = on.sheet("Ada", Side.LEFT, "best-end-and-loin");
        Page trim = on.browser
                .open("/block-sheets/" + sheet.id() + "/trim")
                .fill("trim-best-end-rib-count-left", "8")
                .press("Keep these measures");
        assertThat(trim.text())
                .contains("Within. Ribs in the best end, left: 8. Limit: exactly 8. Score 100")
                .contains("Limit moved by +1, as this animal was counted.");
    }

    @Test
    void the_weigh_up_says_when_its_scale_was_last_checked_and_what_is_too_little_for_it() {
        Weighing on = new Weighing(app, "20.000");
        assertThat(on.open().text()).contains("Rail, 20 g never checked");
        on.browser
                .open("/scales")
                .choose("scale", "rail")
                .fill("nominal", "2.000")
                .fill("reading", "2.020")
                .press("Keep this check");
        assertThat(on.open().text()).contains("Rail, 20 g checked today: within");

        Page page = on.onTheScale("kidneys.kidneys.once", "0.100")
                .choose("scale", "rail")
                .press("Keep this weight");
        assertThat(page.text())
                .contains("Kidneys: 0.100 kg is little for a scale of 20 g. Its division alone makes ± 12 %");
    }

    /** In use a class III scale of 5 g may be wrong by 5 g under 2 kg (OIML R 76: 400 divisions, half a division, doubled). */
    @Test
    void a_scale_that_reads_further_off_than_its_class_permits_is_found_outside_and_stays_written() {
        Weighing on = new Weighing(app, "20.000");
        Page refused = on.browser.open("/scales").fill("reading", "two").press("Keep this check");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Scale: nothing was chosen. Choose one.");

        Page page = on.browser
                .open("/scales")
                .choose("scale", "block")
                .fill("nominal", "2.000")
                .fill("reading", "2.006")
                .press("Keep this check");

        assertThat(page.text()).contains("Block 5 g, class III 5 g under 2.000 kg Checked today: outside");
        assertThat(on.open().text()).contains("Block, 5 g checked today: outside");
        app.clock.move(java.time.Duration.ofDays(1));
        assertThat(app.as("Maeve", Role.ASSESSOR).open("/scales").text()).contains("Outside when checked");
        assertThat(app.app.verify().holds()).isTrue();
    }

    /** 0.800 against 1.200 kg: 20 % of both apart, 5 % is the college's tolerance; the score of a file says the same. */
    @Test
    void left_is_held_against_right_by_the_college_s_own_tolerance() {
        Weighing on = new Weighing(app, "20.000");
        on.onTheScale("loin.loins.left", "0.800").choose("scale", "block").press("Keep this weight");
        on.weigh("loin.loins.right", "1.200");

        assertThat(on.open().text())
                .contains("Outside. Loins, left against right: Right 0.400 ± 0.007 kg heavier, 20.0 % of both."
                        + " Tolerance: at most 5 % of both together, the college’s own.");
        assertThat(Weighing.scored(WeighUps.on("uk-joints")
                                .cold("20.000")
                                .piece("loins", "0.800", ", \"side\": \"left\"")
                                .piece("loins", "1.200", ", \"side\": \"right\""))
                        .notes())
                .containsExactly("Loins, left against right: right 0.400 ± 0.007\u00a0kg heavier, 20.0\u00a0% of both."
                        + " Tolerance: at most 5\u00a0% of both together, the college’s own. Outside.");
    }
}
