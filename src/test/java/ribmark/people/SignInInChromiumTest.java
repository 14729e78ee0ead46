package ribmark.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.Dimension;
import ribmark.testing.Chromium;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class SignInInChromiumTest {

    @Test
    void somebody_signs_in_in_a_real_browser_at_every_size_with_and_without_scripts() {
        try (TestApp app = new TestApp()) {
            app.person("Petra", Role.ADMINISTRATOR);
            for (boolean scripts : new boolean[] {true, false}) {
                try (Chromium browser = scripts ? Chromium.at(app.address) : Chromium.withoutScripts(app.address)) {
                    for (Dimension size : Chromium.SIZES) {
                        browser.size(size).signIn("Petra", TestApp.PASSWORD);
                        assertThat(browser.heading()).isEqualTo("People");
                        browser.press("sign out");
                        assertThat(browser.heading()).isEqualTo("Sign in");
                        if (scripts) {
                            assertThat(browser.violations()).isEmpty();
                            assertThat(browser.scrollsSideways()).isFalse();
                        }
                    }
                }
            }
        }
    }
}
