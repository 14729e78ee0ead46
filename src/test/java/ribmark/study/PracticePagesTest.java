package ribmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.proof.ContentInUse;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class PracticePagesTest {

    private final TestApp app = new TestApp();
    private final Deck deck = new Deck(ContentInUse.read(Optional.empty()).curriculum());

    @AfterEach
    void stop() {
        app.close();
    }

    private Browser ada() {
        return app.as("Ada", Role.APPRENTICE);
    }

    /** Answers open cards until one with choices is asked. */
    private static Page firstDrill(Browser browser) {
        Page page = browser.open("/study/practice");
        for (int asked = 0; page.offers("I knew it at once") && asked < 10; asked++) {
            page.press("I knew it at once");
            page = browser.open("/study/practice");
        }
        return page;
    }

    private Asked asked(Page page) {
        return deck.find(sent(page, "card")).orElseThrow().ask(Long.parseLong(sent(page, "seed")));
    }

    private static String sent(Page page, String field) {
        return page.all("input[name=" + field + "]").get(0).attr("value");
    }

    @Test
    void an_open_question_is_judged_by_oneself_and_says_when_it_comes_back() {
        Browser ada = ada();
        assertThat(ada.open("/my-page").text()).contains("Ten questions wait for you today: ten new.");
        Page asked = ada.open("/my-page").follow("Answer the first");
        assertThat(asked.all("details.fold[open]")).isEmpty();

        Page answered = asked.press("I knew it at once");

        assertThat(answered.heading()).isEqualTo("You knew it");
        assertThat(answered.text()).contains("It is asked again on 26 Nov 2026.");
        assertThat(answered.follow("Look at step 1").status()).isEqualTo(200);
        assertThat(ada.open("/study").text()).contains("Nine questions wait for you today: nine new.");
    }

    @Test
    void a_wrong_choice_teaches_where_it_lies_and_is_asked_once_more_today() {
        Browser ada = ada();
        Page drill = firstDrill(ada);
        Asked asked = asked(drill);
        int wrong = asked.right() == 0 ? 1 : 0;

        Page answered = drill.choose("choice", "" + wrong).press("Check my answer");

        assertThat(answered.heading()).isEqualTo("That is another one");
        assertThat(answered.text())
                .contains(
                        asked.choices().get(wrong).words(),
                        asked.choices().get(wrong).teaches(),
                        asked.choices().get(asked.right()).words(),
                        "It is asked once more today.");
        assertThat(ada.open("/study").text()).contains("one missed today");
    }

    @Test
    void a_right_choice_is_right() {
        Page drill = firstDrill(ada());

        Page answered = drill.choose("choice", "" + asked(drill).right()).press("Check my answer");

        assertThat(answered.heading()).isEqualTo("That is right");
        assertThat(answered.text()).contains("It is asked again on 26 Nov 2026.");
    }

    @Test
    void an_answer_left_out_is_asked_for_and_nothing_is_kept() {
        Browser ada = ada();
        Page drill = firstDrill(ada);

        Page again = drill.press("Check my answer");

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems()).containsExactly("Your answer: nothing was chosen. Choose one.");
        assertThat(sent(ada.open("/study/practice"), "card")).isEqualTo(sent(drill, "card"));
    }

    @Test
    void a_question_that_changed_meanwhile_is_refused_in_a_sentence() {
        Browser ada = ada();
        Page asked = ada.open("/study/practice");
        List<Map.Entry<String, String>> fields = asked.fieldsOf("I knew it at once").stream()
                .map(field -> field.getKey().equals("digest") ? Map.entry("digest", "another") : field)
                .toList();

        Page refused = ada.post("/study/answers", fields);

        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text()).contains("This question has changed since it was shown.");
    }

    @Test
    void the_bone_that_is_asked_about_is_shown_and_not_named() {
        Browser ada = ada();
        String address = "/study/practice?stage=wholesale";
        Page page = ada.open(address);
        while (!page.heading().equals("Name this bone")) {
            Page asked = page;
            page = asked.offers("I knew it at once")
                    ? asked.press("I knew it at once").follow("Next question")
                    : asked.choose("choice", "0").press("Check my answer").follow("Next question");
        }

        String picture = page.all("main picture img").get(0).attr("src");
        assertThat(ada.get(picture).statusCode()).isEqualTo(200);
        assertThat(ada.get(picture).body()).startsWith("<svg");
        assertThat(page.all("main picture img").get(0).attr("alt"))
                .doesNotContain(asked(page).choices().get(asked(page).right()).words());
    }

    @Test
    void practice_keeps_to_a_stage_when_asked() {
        Browser ada = ada();
        Page page = ada.open("/study?stage=legs").follow("Only Legs");
        String step = deck.find(sent(page, "card")).orElseThrow().step();

        assertThat(step).isEqualTo("legs-open");
        Page answered = page.press("I knew it with effort");
        assertThat(answered.follow("Next question").path()).isEqualTo("/study/practice?stage=legs");
    }

    @Test
    void an_answer_is_for_nobody_else_to_read() {
        Browser ada = ada();
        Page answered = ada.open("/study/practice").press("I did not know it");
        String address = answered.path();

        assertThat(app.as("Bram", Role.APPRENTICE).open(address).status()).isEqualTo(404);
        assertThat(ada.open(address).heading()).isEqualTo("You know it now");
    }

    @Test
    void sent_twice_it_is_kept_once_and_stays_out_of_the_evidence_log() {
        Browser ada = ada();
        int before = app.app.log().all().size();
        Page asked = ada.open("/study/practice");
        asked.pressAndStay("I knew it at once");
        asked.pressAndStay("I knew it at once");

        assertThat(ada.open("/study").text()).contains("Nine questions wait");
        assertThat(app.app.log().all().size()).isEqualTo(before);
    }

    @Test
    void days_later_what_is_due_comes_first() {
        Browser ada = ada();
        String card = sent(ada.open("/study/practice"), "card");
        ada.open("/study/practice").press("I knew it at once");
        app.clock.move(Duration.ofDays(2));

        Page next = app.as("Ada", Role.APPRENTICE).open("/study/practice");

        assertThat(sent(next, "card")).isEqualTo(card);
    }
}
