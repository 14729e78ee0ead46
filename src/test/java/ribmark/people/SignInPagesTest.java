package ribmark.people;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.TestApp.PASSWORD;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class SignInPagesTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void a_wrong_password_is_one_sentence_and_keeps_the_name() {
        app.person("Maeve", Role.ADMINISTRATOR);

        Page again = app.visitor().signIn("Maeve", "not the right one at all");

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.problems())
                .containsExactly(
                        "Name and password do not belong together. Type both again, or ask your administrator for a new link.");
        assertThat(again.all("#name").get(0).attr("value")).isEqualTo("Maeve");
        assertThat(again.all("#password").get(0).hasAttr("value")).isFalse();
    }

    @Test
    void a_name_without_an_account_is_told_nothing_else() {
        app.person("Maeve", Role.ADMINISTRATOR);

        Page known = app.visitor().signIn("Maeve", "not the right one at all");
        Page unknown = app.visitor().signIn("Nobody", "not the right one at all");

        assertThat(unknown.problems()).isEqualTo(known.problems());
        assertThat(unknown.status()).isEqualTo(known.status());
    }

    @Test
    void an_address_that_needs_signing_in_leads_there_and_back() {
        app.person("Maeve", Role.ADMINISTRATOR);
        Browser browser = app.visitor();

        Page signIn = browser.open("/people/new");
        Page back = signIn.fill("name", "maeve").fill("password", PASSWORD).press("Sign in");

        assertThat(signIn.heading()).isEqualTo("Sign in");
        assertThat(back.path()).isEqualTo("/people/new");
    }

    @Test
    void what_stands_behind_the_question_mark_comes_back_too_and_an_address_elsewhere_does_not() {
        app.person("Petra", Role.TUTOR);
        Group group = app.app.groups().named("First year");
        app.app.groups().join(group, app.person("Petra"));
        String address = "/group?group=" + group.id() + "&stage=legs";

        Page back = app.visitor()
                .open(address)
                .fill("name", "Petra")
                .fill("password", PASSWORD)
                .press("Sign in");
        Page elsewhere = app.visitor()
                .open("/sign-in?back=/%2Felsewhere.example")
                .fill("name", "Petra")
                .fill("password", PASSWORD)
                .press("Sign in");

        assertThat(back.path()).isEqualTo(address);
        assertThat(elsewhere.path()).isEqualTo("/group");
    }

    @Test
    void somebody_with_two_roles_acts_in_one_at_a_time() {
        Browser browser = app.as("Petra", Role.TUTOR, Role.ADMINISTRATOR);

        Page asAdministrator = browser.open("/role").press("Act as administrator");
        assertThat(asAdministrator.heading()).isEqualTo("People");

        browser.open("/role").pressAndStay("Act as tutor");
        assertThat(browser.get("/people").statusCode()).isEqualTo(404);
    }

    @Test
    void a_closed_account_is_out_at_the_next_page() {
        Browser petra = app.as("Petra", Role.ADMINISTRATOR);
        Browser maeve = app.as("Maeve", Role.ADMINISTRATOR);

        petra.open("/people").follow("Maeve").press("Close Maeve's account");

        assertThat(maeve.open("/people").heading()).isEqualTo("Sign in");
        assertThat(app.visitor().signIn("Maeve", PASSWORD).status()).isEqualTo(422);
    }

    /** U-51: any script, exactly; what cannot be seen is no name and turns no line. */
    @Test
    void a_name_may_be_in_any_script_but_needs_a_letter_and_cannot_turn_the_line() {
        Browser petra = app.as("Petra", Role.ADMINISTRATOR);

        for (String name : List.of("محمد بن عليّ", "Łucja Żak", "🐑 Wren", "X")) {
            assertThat(added(petra, name).heading()).contains(name);
        }
        assertThat(added(petra, "Eve\u202Egnp").heading()).contains("Evegnp");
        assertThat(added(petra, "\u200b").problems())
                .containsExactly("Name: no letter stands in it. Type what they are called.");
    }

    private static Page added(Browser administrator, String name) {
        return administrator
                .open("/people/new")
                .fill("name", name)
                .choose("roles", "assessor")
                .press("Add them");
    }

    @Test
    void somebody_added_chooses_their_own_password_by_a_link_that_works_once() {
        Browser petra = app.as("Petra", Role.ADMINISTRATOR);
        Page link = petra.open("/people/new")
                .fill("name", "Ada")
                .choose("roles", "administrator")
                .press("Add them");
        String address = link.text().replaceAll("(?s).*(/new-password/[A-Za-z0-9_-]+).*", "$1");
        Browser ada = app.visitor();

        Page tooShort = ada.open(address).fill("password", "short").press("Keep this password");
        Page done = tooShort.fill("password", "a sentence of my own").press("Keep this password");

        assertThat(tooShort.problems().get(0)).startsWith("New password: 5 characters are too few.");
        assertThat(done.heading()).isEqualTo("Sign in");
        assertThat(ada.open(address).status()).isEqualTo(404);
        assertThat(ada.signIn("Ada", "a sentence of my own").heading()).isEqualTo("People");
    }

    @Test
    void a_form_without_our_token_or_from_elsewhere_keeps_nothing() {
        Browser petra = app.as("Petra", Role.ADMINISTRATOR);
        petra.open("/people/new");

        assertThat(petra.rawPost("/people", List.of()).statusCode()).isEqualTo(403);
        assertThat(petra.rawPost("/sign-in", List.of()).statusCode()).isEqualTo(403);
    }

    @Test
    void guessing_is_slowed_down() {
        app.person("Maeve", Role.ADMINISTRATOR);
        Browser guesser = app.visitor();
        for (int guess = 0; guess < 10; guess++) {
            guesser.signIn("Maeve", "a guess of fifteen " + guess);
        }

        assertThat(guesser.signIn("Maeve", PASSWORD).status()).isEqualTo(429);
    }
}
