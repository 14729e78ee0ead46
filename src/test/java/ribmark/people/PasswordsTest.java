package ribmark.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.TestApp;
import ribmark.web.Form;
import ribmark.web.Role;

class PasswordsTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    /** S-33: Argon2id with 46 MiB, two passes, one lane: twice the 19 MiB and two passes of the OWASP password storage advice. */
    @Test
    void a_password_is_kept_as_argon2id_and_nothing_else() {
        String hash = app.app.passwords().hash("four quiet words here");

        assertThat(hash).startsWith("$argon2id$v=19$m=47104,t=2,p=1$").doesNotContain("quiet");
        assertThat(app.app.passwords().hash("four quiet words here")).isNotEqualTo(hash);
    }

    @Test
    void only_the_right_password_opens_and_however_it_was_composed() {
        Person ada = app.person("Ada", Role.APPRENTICE);
        app.app.passwords().set(ada.id(), "caf\u00e9 on the corner");

        assertThat(app.app.passwords().isTheirs(ada.id(), "cafe\u0301 on the corner"))
                .isTrue();
        assertThat(app.app.passwords().isTheirs(ada.id(), "cafe on the corner")).isFalse();
        assertThat(app.app.passwords().isTheirs(ada.id(), "")).isFalse();
        assertThat(app.app.passwords().isTheirs(UUID.randomUUID(), "caf\u00e9 on the corner"))
                .isFalse();
    }

    /** NIST SP 800-63B: length decides, any characters, nothing else is asked. */
    @Test
    void length_alone_decides() {
        assertThat(problemWith("fourteen chars")).contains("14 characters are too few");
        assertThat(problemWith("fifteen chars!!")).isNull();
        assertThat(problemWith("\uD83E\uDD69 lamb, \u0644\u062d\u0645, \u732a\u8089, 羊!"))
                .isNull();
        assertThat(problemWith("x y ".repeat(70))).contains("280 characters are too many");
        assertThat(problemWith("aaaaaaaaaaaaaaaaaaaa")).contains("over and over");
        Random random = new Random(11);
        for (int n = 0; n < 1000; n++) {
            String phrase = random.ints(15 + random.nextInt(60), 0x20, 0x2FF)
                    .filter(Character::isDefined)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .append(" and fifteen more")
                    .toString();
            assertThat(problemWith(phrase)).as(phrase).isNull();
        }
    }

    private static String problemWith(String password) {
        Form form = Form.blank();
        Passwords.checkNew(form, "password", password);
        return form.problem("password");
    }
}
