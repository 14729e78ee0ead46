package ribmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribmark.testing.TestApp;

/** Requests so broken that no page of ours is asked for: the policy stands on the answer all the same. */
class BareErrorsTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/%00", "/%", "/%zz", "/..", "/too-long"})
    void the_answer_carries_the_policy_and_one_plain_sentence(String path) throws IOException {
        String answer = answerTo(path.equals("/too-long") ? "/" + "x".repeat(9000) : path);

        assertThat(answer)
                .contains("Content-Security-Policy: default-src 'none'")
                .contains("X-Content-Type-Options: nosniff")
                .contains("<h1>That cannot be read</h1>")
                .doesNotContainIgnoringCase("jetty")
                .doesNotContain("badMessage");
    }

    @Test
    void a_heading_that_is_far_too_long_is_answered_so_too() throws IOException {
        assertThat(answerTo("/sign-in HTTP/1.1\r\nX-Long: " + "z".repeat(20_000) + "\r\nX-More: "))
                .startsWith("HTTP/1.1 431")
                .contains("Content-Security-Policy: default-src 'none'");
    }

    private String answerTo(String path) throws IOException {
        URI address = URI.create(app.address);
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            OutputStream out = socket.getOutputStream();
            String request =
                    "GET " + path + " HTTP/1.1\r\nHost: " + address.getHost() + "\r\nConnection: close\r\n\r\n";
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
