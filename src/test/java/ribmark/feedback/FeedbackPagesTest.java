package ribmark.feedback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.people.Acting;
import ribmark.people.Person;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Sheets;
import ribmark.testing.TestApp;
import ribmark.web.Role;
import ribmark.weighing.KeptReading.Typed;

class FeedbackPagesTest {

    private final TestApp app = new TestApp();
    private final Sheets sheets = new Sheets(app);
    private final Person ada = app.person("Ada", Role.APPRENTICE);
    private final Person maeve = app.person("Maeve", Role.ASSESSOR);
    private final UUID sheet = sheets.closed(31, ada, maeve);

    @AfterEach
    void stop() {
        app.close();
    }

    private Browser ada() {
        return app.as("Ada", Role.APPRENTICE);
    }

    @Test
    void an_apprentice_finds_new_feedback_first_and_reads_what_was_seen() {
        Page list = ada().open("/feedback");
        Page read = list.follow("Feedback on lamb 31");

        assertThat(list.all("main h2").get(0).text()).isEqualTo("New");
        assertThat(read.heading()).isEqualTo("Feedback on lamb 31");
        assertThat(read.text())
                .contains("Done well: Your outside hand never came near the point.")
                .contains("To change: Aim both cuts at the gristle.")
                .contains("Next, by 27 Nov 2026: Cut the right side again on Friday.")
                .contains("“Both sides counted from inside.”")
                .contains("not yet", "prompted", "unaided");
    }

    @Test
    void a_step_says_why_it_was_marked_so_and_what_to_do_next_time() {
        Page step = ada().open("/feedback/" + sheet).follow("Cut the fore line");

        assertThat(step.heading()).isEqualTo("Cut the fore line");
        assertThat(step.text())
                .contains("Left: unaided, right: not yet")
                .contains("Knife rode up onto a rib. “Twice, near the chine.”")
                .contains("Next time: Feel each stroke keep to the space.");
        assertThat(step.follow("Show me").path()).isEqualTo("/steps/fores-cut");
    }

    @Test
    void what_was_weighed_for_them_stands_with_its_verdict_and_its_reason() {
        weigh("fores", "7.310");
        weigh("middle", "5.420");
        weigh("legs-chump-on", "6.580");
        app.app
                .weighUps()
                .measure(sheet, "fore-face-step", Side.ONCE, Optional.of("5"), new Acting(maeve, Role.ASSESSOR));

        Page read = ada().open("/feedback/" + sheet);
        Page step = read.follow("Saw the fores off");

        assertThat(step.text())
                .contains("7.310 kg", "Expected", "Score", "How we know")
                .contains("Too close to call. Largest step across the eye: 5 mm. Limit: at most 5 mm. Score 50")
                .contains("Scores inform; they do not decide.");
        assertThat(step.links()).anyMatch(link -> link.startsWith("/sources"));
        assertThat(step.text()).doesNotContain("5.420 kg");
    }

    private void weigh(String cut, String kilograms) {
        UUID carcase = app.app.sheets().find(sheet).orElseThrow().carcase().id();
        Typed typed = new Typed(
                cut,
                Optional.of(cut),
                Side.ONCE,
                Weight.ofKilograms(kilograms),
                Optional.empty(),
                "block",
                false,
                Optional.empty(),
                cut.equals("fores") ? Optional.of(sheet) : Optional.empty());
        app.app.weighUps().keep(carcase, typed, new Acting(maeve, Role.ASSESSOR));
    }

    @Test
    void a_step_nobody_marked_has_no_feedback() {
        assertThat(ada().open("/feedback/" + sheet + "/steps/fores-mark").status())
                .isEqualTo(404);
        assertThat(ada().open("/feedback/" + sheet + "/steps/no-such-step").status())
                .isEqualTo(404);
    }

    @Test
    void who_does_not_quite_agree_says_so_in_their_own_words() {
        Page read = ada().open("/feedback/" + sheet);

        Page nothing = read.press("Send my answer");
        Page noWords = nothing.choose("agrees", "partly").press("Send my answer");

        assertThat(nothing.status()).isEqualTo(422);
        assertThat(nothing.problems()).containsExactly("Is this how you saw it? Nothing was chosen. Choose one.");
        assertThat(noWords.problems())
                .containsExactly("In your own words: nothing was typed. Say what you saw otherwise.");
        assertThat(new ReplyStore(app.app.database(), app.app.log(), app.clock).allOf(sheet))
                .isEmpty();
    }

    @Test
    void an_answer_is_kept_once_and_the_assessor_reads_it_beside_the_sheet() {
        Page form = ada().open("/feedback/" + sheet)
                .choose("agrees", "partly")
                .fill("words", "The meat was not cut to the bone yet.");
        Page answered = form.press("Send my answer");
        form.press("Send my answer");

        Page asAssessor = app.as("Maeve", Role.ASSESSOR).open("/feedback/" + sheet);

        assertThat(answered.text()).containsOnlyOnce("“The meat was not cut to the bone yet.”");
        assertThat(asAssessor.heading()).isEqualTo("Ada’s feedback on lamb 31");
        assertThat(asAssessor.text())
                .contains("Answer Partly")
                .containsOnlyOnce("“The meat was not cut to the bone yet.”");
        assertThat(ada().open("/feedback").text()).contains("Nothing waits for your answer.");
        assertThat(app.app.verify().holds()).isTrue();
    }

    @Test
    void a_later_answer_stands_beside_the_first() {
        Browser ada = ada();
        ada.open("/feedback/" + sheet)
                .choose("agrees", "no")
                .fill("words", "I was not there.")
                .press("Send my answer");

        Page twice = ada.open("/feedback/" + sheet)
                .choose("agrees", "yes")
                .fill("words", "")
                .press("Send one more answer");

        assertThat(twice.text()).contains("Seen so? no. “I was not there.”", "Seen so? yes.");
    }

    @Test
    void an_apprentice_never_sees_another_ones_feedback_and_cannot_answer_it() {
        Browser bram = app.as("Bram", Role.APPRENTICE);

        assertThat(bram.open("/feedback/" + sheet).status()).isEqualTo(404);
        assertThat(bram.open("/feedback/" + sheet + "/steps/fores-cut").status())
                .isEqualTo(404);
        assertThat(bram.open("/feedback").text()).contains("Nothing waits for your answer.");
        assertThat(answer(bram, "/feedback").status()).isEqualTo(404);
    }

    @Test
    void nobody_but_the_apprentice_answers() {
        Browser maeve = app.as("Maeve", Role.ASSESSOR);

        assertThat(maeve.open("/feedback/" + sheet).offers("Send my answer")).isFalse();
        assertThat(answer(maeve, "/steps").status()).isEqualTo(404);
        assertThat(app.as("Maeve", Role.ASSESSOR).open("/feedback").status()).isEqualTo(404);
    }

    private Page answer(Browser browser, String pageWithToken) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(List.of(
                Map.entry(
                        "token",
                        browser.open(pageWithToken)
                                .all("input[name=token]")
                                .get(0)
                                .attr("value")),
                Map.entry("key", UUID.randomUUID().toString()),
                Map.entry("agrees", "yes")));
        return browser.post("/feedback/" + sheet + "/reply", fields);
    }

    @Test
    void an_open_sheet_is_no_feedback_yet() {
        UUID open = sheets.opened(32, ada, maeve);

        assertThat(ada().open("/feedback/" + open).status()).isEqualTo(404);
        assertThat(app.as("Maeve", Role.ASSESSOR).open("/feedback/" + open).status())
                .isEqualTo(404);
    }

    @Test
    void a_tutor_reads_only_the_feedback_of_their_own_group() {
        Person tilda = app.person("Tilda", Role.TUTOR);
        Browser before = app.as("Tilda", Role.TUTOR);
        assertThat(before.open("/feedback/" + sheet).status()).isEqualTo(404);

        var group = app.app.groups().named("First year");
        app.app.groups().join(group, tilda);
        app.app.groups().join(group, ada);

        assertThat(before.open("/feedback/" + sheet).heading()).isEqualTo("Ada’s feedback on lamb 31");
    }
}
