package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.testing.Browser;
import ribmark.testing.OtherProcess;

/** What the demo says on the shell, to people and to programs. */
class DemoCommandTest {

    @Test
    void for_programs_the_first_line_is_the_address_and_the_sign_ins_and_they_work() throws JsonProcessingException {
        try (OtherProcess demo = OtherProcess.running(List.of(), "demo", "--port", "0", "--format", "json")) {
            JsonNode line = new ObjectMapper().readTree(demo.line());

            assertThat(line.get("address").asText()).startsWith("http://127.0.0.1:");
            assertThat(line.get("signIns").findValuesAsText("role"))
                    .contains("apprentice", "assessor", "tutor", "administrator");
            JsonNode first = line.get("signIns").get(0);
            Browser browser = Browser.at(line.get("address").asText());
            assertThat(browser.signIn(
                                    first.get("name").asText(),
                                    first.get("password").asText())
                            .status())
                    .isEqualTo(200);
        }
    }

    @Test
    void for_people_it_names_one_sign_in_for_each_role() {
        try (OtherProcess demo = OtherProcess.running(List.of(), "demo", "--port", "0")) {
            assertThat(demo.line()).contains("http://127.0.0.1:");
            assertThat(demo.line()).contains("password");
            assertThat(List.of(demo.line(), demo.line(), demo.line(), demo.line()))
                    .extracting(line -> line.strip().split(" +")[0])
                    .containsExactlyInAnyOrder("assessor", "apprentice", "tutor", "administrator");
        }
    }

    @Test
    void a_port_in_use_is_refused_in_one_sentence(@TempDir Path data) throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            assertThat(Commands.run("serve", "--port", port, "--data", data.toString()))
                    .isEqualTo(1);
        }
    }
}
