package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.scoring.TrimConformity;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.testing.WeighUps;
import ribmark.testing.Weighing;
import ribmark.web.Role;

/** What is measured is invented unless said otherwise. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TrimPagesTest {

    private final TestApp app = new TestApp();
    private final Weighing on = new Weighing(app, "20.120");

    @AfterAll
    void stop() {
        app.close();
    }

    private static String path(BlockSheet sheet) {
        return "/block-sheets/" + sheet.id() + "/trim";
    }

    /** The trim measure of the worked example: 6.0 mm where at most 5 is allowed. */
    @Test
    void the_worked_example_gets_the_verdict_and_score_of_its_file() {
        BlockSheet sheet = on.sheet("Ada", Side.LEFT, "best-end-and-loin");

        Page page = on.browser
                .open(path(sheet))
                .fill("trim-loin-fat-depth-left", "6,0")
                .press("Keep these measures");

        TrimConformity file = Weighing.scored(WeighUps.on("uk-primals")
                        .cold("20.120")
                        .piece("fores", "7.310")
                        .trim("loin-fat-depth", "6.0", "1.0"))
                .trim()
                .measured()
                .get(0);
        assertThat(file.verdict().word()).isEqualTo("outside");
        assertThat(page.text())
                .contains("Outside. Fat over the eye of the loin, left: 6.0 mm. Limit: at most 5 mm. Score "
                        + String.format(Locale.ROOT, "%.0f", file.score())
                        + ". Over by 1 mm; whose limit: the named specification.");
        assertThat(page.all("#trim-loin-fat-depth-left").get(0).attr("value")).isEqualTo("6.0");
    }

    @Test
    void only_what_belongs_to_the_sheet_can_be_measured() {
        BlockSheet sheet = on.sheet("Bram", Side.RIGHT, "best-end-and-loin", "fores-saw");

        Page page = on.browser.open(path(sheet));

        assertThat(page.all("input[name^=trim-]"))
                .extracting(field -> field.attr("name"))
                .containsExactly(
                        "trim-fore-rib-count-once",
                        "trim-fore-face-step-once",
                        "trim-bone-dust-once",
                        "trim-best-end-rib-count-right",
                        "trim-loin-fat-depth-right");
    }

    @Test
    void a_value_on_the_limit_is_too_close_to_call_and_the_reason_says_the_rule() {
        BlockSheet sheet = on.sheet("Cora", Side.BOTH, "fores-saw");

        Page page = on.browser
                .open(path(sheet))
                .fill("trim-fore-face-step-once", "5")
                .fill("trim-fore-rib-count-once", "6")
                .press("Keep these measures");

        assertThat(page.text()).contains("Within. Ribs in the fore: 6. Limit: exactly 6. Score 100");
        assertThat(page.text())
                .contains("Too close to call. Largest step across the eye: 5 mm. Limit: at most 5 mm. Score 50");
        assertThat(page.text()).contains("Why too close").contains("within from 95 %, outside up to 5 %");
        assertThat(app.app.weighed().forSheet(sheet))
                .extracting(PageLine::word)
                .containsExactly("Within", "Too close to call");
    }

    @Test
    void what_cannot_be_read_is_one_sentence_and_nothing_is_lost() {
        BlockSheet sheet = on.sheet("Dora", Side.BOTH, "fores-saw");

        Page page = on.browser
                .open(path(sheet))
                .fill("trim-fore-face-step-once", "a bit")
                .fill("trim-fore-rib-count-once", "6.5")
                .press("Keep these measures");

        assertThat(page.status()).isEqualTo(422);
        assertThat(page.problems())
                .containsExactly(
                        "Ribs in the fore: “6.5” cannot be read. Type a whole number, for example 2.",
                        "Largest step across the eye: “a bit” cannot be read. Type figures, for example 4.");
        assertThat(page.all("#trim-fore-rib-count-once").get(0).attr("value")).isEqualTo("6.5");
        assertThat(app.app.weighed().forSheet(sheet)).isEmpty();
    }

    /** U-50; only the clearance at the ilium may lie below nothing: there the saw went into the bone. */
    @Test
    void a_comma_before_three_figures_and_a_minus_without_sense_are_questioned() {
        BlockSheet sheet = on.sheet("Fay", Side.BOTH, "fores-saw", "middle-off");

        Page doubted = on.browser
                .open(path(sheet))
                .fill("trim-fore-face-step-once", "1,234")
                .fill("trim-leg-line-clearance-once", "-2,5")
                .press("Keep what was measured at step 8");
        Page below = doubted.fill("trim-fore-face-step-once", "-3").press("Keep what was measured at step 8");

        assertThat(doubted.problems())
                .containsExactly(
                        "Largest step across the eye: “1,234” could be thousands or thousandths. Type it with a point, for example 1.234.");
        assertThat(below.problems())
                .containsExactly("Largest step across the eye: “-3” is less than nothing. Type it without the minus.");
        assertThat(app.app.weighed().forSheet(sheet)).isEmpty();
    }

    @Test
    void emptying_a_field_takes_its_value_back() {
        BlockSheet sheet = on.sheet("Emil", Side.BOTH, "fores-saw");
        Page kept =
                on.browser.open(path(sheet)).fill("trim-bone-dust-once", "2").press("Keep these measures");
        assertThat(kept.text()).contains("Outside. Patches of bone dust left: 2.");

        Page emptied = kept.fill("trim-bone-dust-once", "").press("Keep these measures");

        assertThat(emptied.text()).doesNotContain("Outside.");
        assertThat(app.app.verify().holds()).isTrue();
    }

    @Test
    void only_the_keeper_writes() {
        BlockSheet sheet = on.sheet("Finn", Side.BOTH, "fores-saw");
        var sent = on.browser.open(path(sheet)).fieldsOf("Keep these measures");
        Browser osric = app.as("Osric", Role.ASSESSOR);
        Page read = osric.open(path(sheet));
        String token = osric.open("/role").all("input[name=token]").get(0).attr("value");
        var withToken = sent.stream()
                .map(field -> field.getKey().equals("token") ? java.util.Map.entry("token", token) : field)
                .toList();

        assertThat(read.text()).contains("Only Maeve, who keeps this sheet, measures on it.");
        assertThat(read.offers("Keep these measures")).isFalse();
        assertThat(osric.rawPost(path(sheet), withToken).statusCode()).isEqualTo(409);
        assertThat(app.as("Petra", Role.TUTOR).get(path(sheet)).statusCode()).isEqualTo(404);
        assertThat(app.as("Finn", Role.APPRENTICE).get(path(sheet)).statusCode())
                .isEqualTo(404);
    }
}
