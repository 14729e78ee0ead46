package ribmark.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.Dimension;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.testing.Chromium;
import ribmark.testing.TestApp;
import ribmark.testing.Weighing;

/** The weigh-up in a real browser, at the sizes it is used in. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AtTheScaleTest {

    private final TestApp app = new TestApp();
    private Weighing on;
    private Chromium browser;

    @BeforeAll
    void begin() {
        on = new Weighing(app, "20.120");
        on.weigh("fores.fores.once", "7.310");
        browser = Chromium.at(app.address).size(Chromium.SIZES.get(0)).signIn("Maeve", TestApp.PASSWORD);
    }

    @AfterAll
    void stop() {
        if (browser != null) {
            browser.close();
        }
        app.close();
    }

    @Test
    void the_page_holds_at_every_size_and_every_control_can_be_hit_with_a_glove() {
        for (Dimension size : Chromium.SIZES) {
            browser.size(size).open(on.path() + "?stage=legs");
            assertThat(browser.scrollsSideways()).as("sideways at " + size).isFalse();
            assertThat(browser.violations()).as("at " + size).isEmpty();
            assertThat(browser.all(".plate--keep")).allMatch(e -> e.getSize().height >= 104);
            assertThat(browser.all(".keypad .plate"))
                    .allMatch(e -> e.getSize().height >= 64 && e.getSize().width >= 100);
            assertThat(browser.all(".choice, .plate"))
                    .filteredOn(e -> e.isDisplayed())
                    .allMatch(e -> e.getSize().height >= 64);
        }
    }

    @Test
    void the_keypad_types_and_the_plate_says_what_it_keeps() {
        browser.size(Chromium.SIZES.get(0)).open(on.path() + "?stage=middle");
        browser.choose("piece", "kidney-fat.kidney-fat.once");
        for (String key : "0.617".split("")) {
            key(key);
        }
        key("undo");
        key("0");

        browser.press("Keep 0.610 kg");

        assertThat(browser.text()).contains("kidney fat, 0.610 kg");
    }

    private void key(String key) {
        browser.all("[data-key='" + key + "']").get(0).click();
    }

    @Test
    void the_page_holds_on_a_narrow_phone_with_its_text_doubled() {
        Weighing pair = new Weighing(app, "20.120");
        pair.weigh("leg-and-chump.legs-chump-on.left", "3.320");
        pair.weigh("leg-and-chump.legs-chump-on.right", "3.275");
        browser.size(new Dimension(320, 640)).open(pair.path());
        browser.ask("document.documentElement.style.fontSize = '200%'");
        assertThat(browser.text()).contains("heavier");
        assertThat(browser.ask("return document.documentElement.scrollWidth")).isEqualTo(320L);
    }

    @Test
    void the_trim_page_holds_at_every_size() {
        BlockSheet sheet = on.sheet("Ada", Side.BOTH);
        for (Dimension size : Chromium.SIZES) {
            browser.size(size).open("/block-sheets/" + sheet.id() + "/trim");
            assertThat(browser.scrollsSideways()).as("sideways at " + size).isFalse();
            assertThat(browser.violations()).as("at " + size).isEmpty();
        }
    }
}
