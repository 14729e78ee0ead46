package ribmark.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.TestApp.PASSWORD;
import static ribmark.testing.Watched.LEG_LINE;
import static ribmark.testing.Watched.READY;

import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Watched;
import ribmark.web.Role;

class SignOffPagesTest {

    private final Watched college = new Watched();

    @AfterEach
    void stop() {
        college.close();
    }

    private Browser maeve() {
        return college.app.as("Maeve", Role.ASSESSOR);
    }

    @Test
    void what_is_missing_is_said_as_the_next_thing_to_do() {
        college.closed("Ada", "Osric", 27, LEG_LINE, Mark.NOT_YET);
        college.closed("Ada", "Maeve", 29, LEG_LINE, Mark.UNAIDED);
        college.closed("Ada", "Maeve", 31, LEG_LINE, Mark.UNAIDED);

        Page page = maeve().open(college.evidence("Ada", LEG_LINE));

        assertThat(page.heading()).isEqualTo("Not enough yet: " + title(LEG_LINE));
        assertThat(page.text())
                .contains("Standing Thin evidence")
                .contains("One more block sheet can settle it: unaided on both sides, on a lamb other than 29 and 31,"
                        + " closed by somebody other than Maeve.")
                .contains("One more another lamb not Maeve")
                .contains("Closed sheets unaided 2 of 3 since the not yet of 25 Nov 2026")
                .contains("Assessors 1 of 2 Maeve only")
                .contains("The college’s own, since 1 Sep 2026: three sheets unaided in a row");
        assertThat(page.all(".tally li")).hasSize(3);
        assertThat(page.offers("Sign step")).isFalse();
    }

    @Test
    void every_sheet_seen_is_listed_with_why_it_was_not_yet() {
        college.closed(
                "Ada",
                "Osric",
                27,
                Map.of(
                        Watched.place(LEG_LINE, Side.LEFT), Mark.PROMPTED,
                        Watched.place(LEG_LINE, Side.RIGHT), Mark.NOT_YET));

        Page page = maeve().open(college.evidence("Ada", LEG_LINE));

        assertThat(page.text()).contains("25 Nov 2026 lamb 27 Osric prompted not yet");
        assertThat(page.all("td[data-caption=right] p").get(0).text()).isNotEmpty();
    }

    @Test
    void an_assessor_who_watched_signs_with_words_and_password() {
        college.enough("Ada", LEG_LINE);
        Page page = maeve().open(college.evidence("Ada", LEG_LINE));

        Page signed = page.fill("convinced", "Both lines meet, three lambs running.")
                .fill("password", PASSWORD)
                .press(plate(LEG_LINE));

        assertThat(page.heading()).isEqualTo("Ready to sign: " + title(LEG_LINE));
        assertThat(signed.heading()).isEqualTo("Signed off: " + title(LEG_LINE));
        assertThat(signed.text())
                .contains("Signed off by Maeve, 25 Nov 2026.")
                .contains("“Both lines meet, three lambs running.”");
        assertThat(college.app.app.verify().holds()).isTrue();
    }

    @Test
    void without_words_or_with_a_wrong_password_nothing_is_signed_and_nothing_typed_is_lost() {
        college.enough("Ada", LEG_LINE);

        Page again = maeve().open(college.evidence("Ada", LEG_LINE)).press(plate(LEG_LINE));
        Page wrong = again.fill("convinced", "Clean on both sides.")
                .fill("password", "not the one I use here")
                .press(plate(LEG_LINE));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly(
                        "What convinced you: nothing was typed. Write what you saw, in a sentence.",
                        "Your password: nothing was typed. Type the one you sign in with.");
        assertThat(wrong.problems())
                .containsExactly("Your password: it is not the one you sign in with. Type it again.");
        assertThat(wrong.all("#convinced").get(0).text()).isEqualTo("Clean on both sides.");
        assertThat(college.app.app.signOffs().all()).isEmpty();
    }

    @Test
    void a_step_without_enough_evidence_is_refused_with_what_is_missing() {
        college.closed("Ada", "Maeve", 29, READY, Mark.UNAIDED);

        Page no = sign(maeve(), "Ada", READY);

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text())
                .contains("The evidence is not enough to sign step 1 off. Two more block sheets can settle it:");
    }

    @Test
    void an_assessor_who_closed_none_of_the_sheets_is_refused_and_told_who_can() {
        college.enough("Ada", READY);
        Browser wren = college.app.as("Wren", Role.ASSESSOR);

        Page page = wren.open(college.evidence("Ada", READY));
        Page no = sign(wren, "Ada", READY);

        assertThat(page.offers("Sign step")).isFalse();
        assertThat(page.text()).contains("You closed none of these sheets. Maeve or Osric can sign.");
        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Only somebody who closed one of the sheets that count signs: Maeve or Osric.");
    }

    /** S-46. */
    @Test
    void nobody_signs_for_themselves() {
        college.app.person("Ada", Role.APPRENTICE, Role.ASSESSOR);
        college.enough("Ada", READY);
        Browser ada = college.app.as("Ada", Role.APPRENTICE, Role.ASSESSOR);
        ada.open("/role").press("Act as assessor");

        Page no = sign(ada, "Ada", READY);

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Nobody signs for themselves.");
        assertThat(college.app.app.signOffs().all()).isEmpty();
    }

    @Test
    void a_signed_step_is_not_signed_again() {
        college.enough("Ada", READY);
        sign(maeve(), "Ada", READY);

        Page no = sign(college.app.as("Osric", Role.ASSESSOR), "Ada", READY);

        assertThat(no.status()).isEqualTo(409);
        assertThat(no.text()).contains("Step 1 was signed off already, by Maeve on 25 Nov 2026.");
    }

    @Test
    void a_sign_off_is_taken_back_with_a_reason_and_stays_readable() {
        college.enough("Ada", READY);
        sign(maeve(), "Ada", READY);
        Browser osric = college.app.as("Osric", Role.ASSESSOR);

        Page without = osric.open(college.evidence("Ada", READY)).press("Take Maeve’s sign-off back");
        Page taken = without.fill("reason", "Lamb 29 was somebody else’s.").press("Take Maeve’s sign-off back");

        assertThat(without.status()).isEqualTo(422);
        assertThat(without.problems())
                .containsExactly(
                        "Why it is taken back: nothing was typed. Write what was wrong with it, in a sentence.");
        assertThat(taken.heading()).startsWith("Ready to sign:");
        assertThat(taken.text())
                .contains("Maeve, 25 Nov 2026. “Clean work.”")
                .contains("Taken back by Osric, 25 Nov 2026. “Lamb 29 was somebody else’s.”");
        assertThat(college.app.app.verify().holds()).isTrue();
    }

    @Test
    void a_tutor_takes_back_only_what_belongs_to_their_group() {
        college.group("First year", "Petra", "Ada");
        college.group("Second year", "Quill");
        college.enough("Ada", READY);
        sign(maeve(), "Ada", READY);
        String address = "/sign-offs/" + college.app.app.signOffs().all().get(0).id() + "/withdrawal";

        Page other = college.send(
                college.app.as("Quill", Role.TUTOR), "/group", address, Map.of("reason", "Because I can."));
        Page own = college.send(
                college.app.as("Petra", Role.TUTOR), "/group", address, Map.of("reason", "Wrong person signed."));
        Page twice =
                college.send(college.app.as("Petra", Role.TUTOR), "/group", address, Map.of("reason", "Once more."));

        assertThat(other.status()).isEqualTo(404);
        assertThat(own.heading()).startsWith("Ready to sign:");
        assertThat(twice.status()).isEqualTo(409);
    }

    @Test
    void a_later_not_yet_makes_a_signed_step_due_again_until_the_rule_is_met_anew() {
        college.enough("Ada", READY);
        sign(maeve(), "Ada", READY);
        college.closed("Ada", "Maeve", 33, READY, Mark.NOT_YET);
        Page due = maeve().open(college.evidence("Ada", READY));
        college.enough("Ada", READY);

        Page anew = maeve().open(college.evidence("Ada", READY));
        Page signed = sign(maeve(), "Ada", READY);

        assertThat(due.heading()).startsWith("Due again:");
        assertThat(due.offers("Sign step")).isFalse();
        assertThat(anew.offers(plate(READY))).isTrue();
        assertThat(signed.heading()).startsWith("Signed off:");
        assertThat(college.app.app.signOffs().all()).extracting(SignOff::turn).containsExactly(1, 2);
    }

    @Test
    void a_step_not_seen_for_longer_than_the_rule_allows_is_due_again() {
        college.enough("Ada", READY);
        sign(maeve(), "Ada", READY);

        college.app.clock.move(Duration.ofDays(181));

        assertThat(maeve().open(college.evidence("Ada", READY)).heading()).startsWith("Due again:");
    }

    @Test
    void the_evidence_is_read_by_whom_it_concerns_and_by_nobody_else() {
        college.group("First year", "Petra", "Ada");
        college.group("Second year", "Quill", "Bram");
        college.closed("Ada", "Maeve", 29, READY, Mark.UNAIDED);
        String evidence = college.evidence("Ada", READY);

        assertThat(college.app.as("Ada", Role.APPRENTICE).open(evidence).text()).contains("What is missing");
        assertThat(college.app.as("Petra", Role.TUTOR).open(evidence).status()).isEqualTo(200);
        assertThat(college.app.as("Bram", Role.APPRENTICE).open(evidence).status())
                .isEqualTo(404);
        assertThat(college.app.as("Quill", Role.TUTOR).open(evidence).status()).isEqualTo(404);
        assertThat(maeve().open(college.evidence("Ada", "no-such-step")).status())
                .isEqualTo(404);
    }

    @Test
    void what_waits_is_listed_oldest_first_and_what_is_nearly_there_below() {
        college.enough("Bram", READY);
        college.app.clock.move(Duration.ofDays(1));
        college.enough("Ada", READY);
        college.closed("Ada", "Maeve", 29, LEG_LINE, Mark.UNAIDED);
        college.closed("Ada", "Osric", 31, LEG_LINE, Mark.UNAIDED);

        Page page = maeve().open("/to-sign");
        Page others = college.app.as("Wren", Role.ASSESSOR).open("/to-sign");

        assertThat(page.text())
                .contains("Two steps wait for your name.")
                .containsSubsequence("For your name", "Bram", "25 Nov 2026", "Ada", "26 Nov 2026", "Nearly there");
        assertThat(page.text())
                .contains("three sheets, three carcases, Maeve and Osric")
                .contains(
                        "Ada " + step(LEG_LINE).number() + " " + step(LEG_LINE).title());
        assertThat(others.text())
                .contains("Nothing waits for your name; two steps wait for others.")
                .contains("For others")
                .contains("Bram");
        assertThat(page.follow("1 " + step(READY).title()).heading()).startsWith("Ready to sign:");
    }

    private Step step(String id) {
        return college.app.app.standings().curriculum().breakdown().step(id).orElseThrow();
    }

    private String title(String id) {
        String title = step(id).title();
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    private String plate(String id) {
        return "Sign step " + step(id).number() + " off for Ada";
    }

    private Page sign(Browser browser, String apprentice, String step) {
        String address = college.evidence(apprentice, step);
        return college.send(
                browser, address, address + "/sign-off", Map.of("convinced", "Clean work.", "password", PASSWORD));
    }
}
