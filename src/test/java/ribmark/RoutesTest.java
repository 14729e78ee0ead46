package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.testing.Browser;
import ribmark.testing.TestApp;
import ribmark.web.Role;
import ribmark.web.Route;

/** Every address says who may open it, and the running program keeps to it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoutesTest {

    private final TestApp app = new TestApp();

    @AfterAll
    void stop() {
        app.close();
    }

    @Test
    void every_address_names_who_may_open_it() {
        for (Route route : app.app.routes()) {
            assertThat(route.mayOpen()).as(route.method() + " " + route.path()).isNotEmpty();
            assertThat(route.mayOpen()).containsAll(route.own());
        }
    }

    @Test
    void no_address_is_given_twice() {
        List<String> all =
                app.app.routes().stream().map(r -> r.method() + " " + r.path()).toList();
        assertThat(all).doesNotHaveDuplicates();
    }

    /** S-43: role by route; the roles that may not get the same answer as for something that is not there. */
    @Test
    void a_role_that_may_not_open_an_address_finds_nothing_there() {
        for (Role role : Role.values()) {
            Browser browser = app.as("A " + role.word(), role);
            for (Route route : app.app.routes()) {
                if (route.method().equals("GET") && !route.allow().admits(role)) {
                    assertThat(browser.get(filled(route.path())).statusCode())
                            .as(role.word() + " at " + route.path())
                            .isEqualTo(404);
                }
            }
        }
    }

    /** S-43 and S-65: nobody signed in is led to sign in, for HEAD too. */
    @Test
    void a_visitor_is_led_to_the_sign_in_page() {
        for (Route route : app.app.routes()) {
            if (route.method().equals("GET") && !route.allow().anyone()) {
                Browser visitor = app.visitor();
                assertThat(visitor.get(filled(route.path())).statusCode())
                        .as(route.path())
                        .isEqualTo(303);
                HttpRequest.Builder head = HttpRequest.newBuilder(URI.create(app.address + filled(route.path())))
                        .method("HEAD", HttpRequest.BodyPublishers.noBody());
                assertThat(visitor.send(head).statusCode())
                        .as("HEAD " + route.path())
                        .isEqualTo(303);
            }
        }
    }

    /** S-41: every state-changing address refuses a missing or wrong token and a request from elsewhere, before anything else. */
    @Test
    void every_post_refuses_what_does_not_come_from_our_own_page() {
        for (Role role : Role.values()) {
            Browser browser = app.as("B " + role.word(), role);
            Browser other = app.as("C " + role.word(), role);
            String token = browser.open("/role").all("input[name=token]").get(0).attr("value");
            for (Route route : app.app.routes()) {
                if (route.method().equals("POST")) {
                    String path = filled(route.path());
                    assertThat(browser.rawPost(path, List.of()).statusCode()).isEqualTo(403);
                    assertThat(browser.rawPost(path, List.of(Map.entry("token", "wrong")))
                                    .statusCode())
                            .isEqualTo(403);
                    assertThat(other.rawPost(path, List.of(Map.entry("token", token)))
                                    .statusCode())
                            .isEqualTo(403);
                    assertThat(crossSite(browser, path, token)).as(path).isEqualTo(403);
                }
            }
        }
    }

    private int crossSite(Browser browser, String path, String token) {
        return browser.send(HttpRequest.newBuilder(URI.create(app.address + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Sec-Fetch-Site", "cross-site")
                        .POST(HttpRequest.BodyPublishers.ofString("token=" + token)))
                .statusCode();
    }

    @Test
    void an_address_that_is_not_there_is_nothing_to_everybody() {
        assertThat(app.visitor().open("/no-such-page").status()).isEqualTo(404);
        assertThat(app.visitor().open("/no-such-page").heading()).isEqualTo("There is nothing here");
    }

    @Test
    void every_answer_carries_the_headers() {
        for (String path : List.of("/sign-in", "/no-such-page", "/ribmark.css", "/icon.svg")) {
            var headers = app.visitor().get(path).headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
                    .contains("default-src 'none'")
                    .doesNotContain("unsafe");
            assertThat(headers.firstValue("Server")).isEmpty();
        }
    }

    private static String filled(String path) {
        return path.replaceAll("\\{[a-zA-Z]+}", UUID.randomUUID().toString());
    }
}
