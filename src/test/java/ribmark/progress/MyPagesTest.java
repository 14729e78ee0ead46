package ribmark.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.people.Person;
import ribmark.signing.SignOff;
import ribmark.signing.SignOffStore;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Sheets;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class MyPagesTest {

    private final TestApp app = new TestApp();
    private final Sheets sheets = new Sheets(app);
    private final Person ada = app.person("Ada", Role.APPRENTICE);
    private final Person maeve = app.person("Maeve", Role.ASSESSOR);
    private final Person osric = app.person("Osric", Role.ASSESSOR);

    @AfterEach
    void stop() {
        app.close();
    }

    private Browser ada() {
        return app.as("Ada", Role.APPRENTICE);
    }

    @Test
    void somebody_who_begins_is_told_how_it_goes_on() {
        Page mine = ada().open("/");

        assertThat(mine.heading()).isEqualTo("Ada, this is where you are");
        assertThat(mine.text()).contains("Nothing is agreed yet.", "30 not started.");
    }

    @Test
    void new_feedback_the_next_day_and_what_is_missing_stand_in_words() {
        sheets.closed(31, ada, maeve);

        Page mine = ada().open("/my-page");

        assertThat(mine.text())
                .contains(
                        "Feedback on lamb 31, today, from Maeve. Done well: Your outside hand never came near the point.")
                .contains("27 Nov 2026. Cut the right side again on Friday. Said by Maeve, after lamb 31")
                .contains("Cut the fore line", "practising")
                .contains("2 practising, 28 not started.");
        assertThat(mine.follow("Answer Maeve").heading()).isEqualTo("Feedback on lamb 31");
        assertThat(mine.follow("All of them, in words").path()).isEqualTo("/apprentices/" + ada.id());
        assertThat(mine.follow("Study for it").status()).isEqualTo(200);
    }

    @Test
    void feedback_that_was_answered_is_no_longer_new() {
        UUID sheet = sheets.closed(31, ada, maeve);
        Browser ada = ada();
        ada.open("/feedback/" + sheet).choose("agrees", "yes").press("Send my answer");

        assertThat(ada.open("/my-page").text())
                .contains("Nothing new since you last answered.")
                .contains("Cut the right side again on Friday.")
                .doesNotContain("Answer Maeve");
    }

    @Test
    void the_strip_has_a_rib_for_each_step_and_the_legend_its_words() {
        sheets.closed(31, ada, maeve);

        Page mine = ada().open("/my-page");

        List<String> ribs = mine.all(".ribs svg.rib use").stream()
                .map(use -> use.attr("href"))
                .toList();
        assertThat(ribs).hasSize(30);
        assertThat(ribs.stream().filter("#rib-practising"::equals)).hasSize(2);
        assertThat(mine.all(".legend li").stream().map(Element::text))
                .containsExactly(
                        "not started", "practising", "thin evidence", "ready to sign", "signed off", "due again");
    }

    @Test
    void a_step_with_all_it_needs_waits_for_a_signature_and_the_signature_is_news() {
        sheets.unaided(31, ada, maeve);
        sheets.unaided(32, ada, osric);
        sheets.unaided(33, ada, maeve);
        Browser browser = ada();

        assertThat(browser.open("/my-page").text())
                .contains("Steps 7 and 8 have all they need. They wait for a signature, not for you.");

        SignOff signed = signOffs().sign(ada.id(), "fores-saw", maeve, List.of(), "Three clean cuts.");
        assertThat(browser.open("/my-page").text())
                .contains("Step 8 Saw the fores off: signed off by Maeve, today.")
                .contains("Step 7 has all it needs. It waits for a signature, not for you.");

        signOffs().withdraw(signed, osric, "The disc was not found.");
        assertThat(browser.open("/my-page").text())
                .contains("Step 8 Saw the fores off: Osric took the signature back. “The disc was not found.”");
    }

    @Test
    void a_day_that_has_passed_is_said_to_have_passed() {
        sheets.closed(31, ada, maeve);
        app.clock.move(Duration.ofDays(9));

        assertThat(ada().open("/my-page").text()).contains("Was due 27 Nov 2026. Cut the right side again on Friday.");
    }

    @Test
    void nobody_else_has_such_a_page_and_nothing_of_others_stands_on_it() {
        sheets.closed(31, ada, maeve);

        assertThat(app.as("Bram", Role.APPRENTICE).open("/my-page").text()).doesNotContain("lamb 31");
        assertThat(app.as("Maeve", Role.ASSESSOR).open("/my-page").status()).isEqualTo(404);
    }

    private SignOffStore signOffs() {
        return new SignOffStore(app.app.database(), app.app.log(), app.app.people(), app.clock);
    }
}
