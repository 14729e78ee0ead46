package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.Settings;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class ContentPagesTest {

    @TempDir
    Path folder;

    @Test
    void content_with_a_problem_is_not_taken_and_the_administrator_sees_why() throws IOException {
        Files.createDirectories(folder.resolve("assessments"));
        Files.writeString(folder.resolve("assessments/marks.yaml"), "marks: []\nmarcs: []\n");

        try (TestApp app = new TestApp(Settings.throwAway(0, Optional.of(folder)))) {
            Page content = app.as("Petra", Role.ADMINISTRATOR).open("/content");

            assertThat(content.heading()).isEqualTo("The content was not taken");
            assertThat(content.text()).contains("to put right", "assessments/marks.yaml, line 2");
            assertThat(app.as("Ada", Role.APPRENTICE).open("/steps").heading()).isEqualTo("Six stages, 30 steps");
        }
    }
}
