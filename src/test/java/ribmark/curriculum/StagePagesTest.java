package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StagePagesTest {

    private final TestApp app = new TestApp();
    private final Browser ada = app.as("Ada", Role.APPRENTICE);

    @AfterAll
    void stop() {
        app.close();
    }

    @Test
    void each_stage_is_reached_from_all_steps_and_lists_its_own() {
        Page all = ada.open("/steps");
        for (String id : new String[] {"intake", "wholesale", "legs", "fores", "middle", "close"}) {
            assertThat(all.links()).contains("/stages/" + id);
            Page stage = ada.open("/stages/" + id);
            assertThat(stage.all(".caution p"))
                    .as(id)
                    .hasSameSizeAs(stage.all(".ledger a[href^=/steps/]"))
                    .isNotEmpty();
        }
        assertThat(ada.open("/steps/fores-cut").links()).contains("/stages/wholesale");
    }

    @Test
    void a_stage_shows_what_the_carcase_has_come_to() {
        Page wholesale = ada.open("/stages/wholesale");
        assertThat(wholesale.all(".bone-map img")).hasSize(1);
        assertThat(wholesale.text())
                .contains("Fores: All of the neck")
                .contains("Legs:")
                .contains("Line slid into another space wrong line 7 Stop; count again before you cut on.");
        assertThat(ada.open("/stages/intake").all(".bone-map")).isEmpty();
    }

    @Test
    void a_step_and_its_stage_say_what_their_words_mean_with_the_names_of_the_bones() {
        assertThat(ada.open("/steps/sacrum-out").text()).contains("slip joint");
        assertThat(ada.open("/stages/legs").text())
                .contains("aitch bone The whole hip bone left in the leg: ilium, ischium and pubis.")
                .contains("ilium, left and right; ischium, left and right; pubis, left and right");
        assertThat(ada.open("/steps/ready-to-work").text()).doesNotContain("All words, and what others say");
    }

    @Test
    void what_others_mean_by_a_word_stands_apart_from_what_we_mean() {
        Page page = app.as("Petra", Role.TUTOR).open("/words");
        assertThat(page.all("#here ~ table:first-of-type th[scope=row]"))
                .extracting(org.jsoup.nodes.Element::text)
                .hasSizeGreaterThan(20)
                .doesNotHaveDuplicates();
        String words = page.text();
        int ours = words.indexOf("The whole hip bone left in the leg");
        int apart = words.indexOf("Said elsewhere Ask which bone");
        int theirs = words.indexOf("aitch bone The ischium alone");
        assertThat(ours).isPositive().isLessThan(apart);
        assertThat(theirs).isGreaterThan(apart);
        assertThat(ada.open("/steps/aitch-bone").text()).doesNotContain("The ischium alone");
    }

    @Test
    void a_stage_that_is_not_there_is_not_found() {
        assertThat(ada.get("/stages/tail").statusCode()).isEqualTo(404);
    }
}
