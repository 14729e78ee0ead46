package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.Settings;
import ribmark.contentfiles.ContentFiles;
import ribmark.evidence.Digest;
import ribmark.people.Person;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Sheets;
import ribmark.testing.TestApp;
import ribmark.web.Role;

/** C-19: a mark shows the wording it was judged by, years after the content has changed and through a restart. */
class OldWordingTest {

    private static final String STEP = "content/lamb/wholesale.yaml";
    private static final String CRITERIA = "assessments/lamb/criteria.yaml";
    private static final String CAUTION = "Mind the hand outside";
    private static final String WATCH = "The outside hand stays on the neck side, off the point";

    @TempDir
    private Path folder;

    private Path own;
    private UUID sheet;
    private String versionA;

    /** A mark under our wording, then a college's own laid over it. */
    @BeforeEach
    void mark_then_change_the_wording() throws IOException {
        try (TestApp app =
                new TestApp(Settings.inFolder(0, folder.resolve("data"), Optional.empty(), Optional.empty()))) {
            Person ada = app.person("Ada", Role.APPRENTICE);
            sheet = new Sheets(app).closed(31, ada, app.person("Maeve", Role.ASSESSOR));
            versionA = app.app.curriculum().version().substring(0, 12);
        }
        own = folder.resolve("own");
        lay(
                STEP,
                text(STEP)
                        .replace("title: Cut the fore line", "title: Knife through the sixth space")
                        .replace("Knife rode up onto a rib", "Blade climbed over bone")
                        .replace(CAUTION, "Keep that hand back"));
        lay(CRITERIA, text(CRITERIA).replace(WATCH, "The other hand never passes the point"));
    }

    private static String text(String file) {
        return new String(ContentFiles.ours().bytes(file).orElseThrow(), StandardCharsets.UTF_8);
    }

    private void lay(String file, String text) throws IOException {
        assertThat(text).as("changed " + file).isNotEqualTo(text(file));
        Path at = own.resolve(file);
        Files.createDirectories(at.getParent());
        Files.writeString(at, text);
    }

    private TestApp restarted() {
        return new TestApp(Settings.inFolder(0, folder.resolve("data"), Optional.empty(), Optional.of(own)));
    }

    @Test
    void a_closed_sheet_shows_the_wording_it_was_judged_by_with_its_version() {
        try (TestApp app = restarted()) {
            String versionB = app.app.curriculum().version().substring(0, 12);
            assertThat(versionB).isNotEqualTo(versionA);
            Browser maeve = app.as("Maeve", Role.ASSESSOR);
            Page closed = maeve.open("/block-sheets/" + sheet);

            assertThat(closed.text())
                    .contains("Cut the fore line")
                    .contains("Knife rode up onto a rib.")
                    .doesNotContain("sixth space", "Blade climbed")
                    .contains("Worded as in version " + versionA
                            + " of the content, under which it was marked; in use now is version " + versionB + ".");
            Page feedback = maeve.open("/feedback/" + sheet);
            assertThat(feedback.text()).contains("Cut the fore line", "Knife rode up", "version " + versionA);
            Page step = maeve.open("/feedback/" + sheet + "/steps/fores-cut");
            assertThat(step.heading()).isEqualTo("Cut the fore line");
            assertThat(step.text())
                    .contains("Knife rode up onto a rib.", "How it was worded", CAUTION, WATCH + " (critical: safety)")
                    .contains("version " + versionA)
                    .doesNotContain("Blade climbed", "Keep that hand back", "The other hand never passes the point");
        }
    }

    @Test
    void a_new_sheet_shows_the_new_wording_and_the_evidence_says_which_is_older() {
        try (TestApp app = restarted()) {
            Person ada = app.person("Ada", Role.APPRENTICE);
            UUID later = new Sheets(app).closed(32, ada, app.person("Maeve", Role.ASSESSOR));
            Browser maeve = app.as("Maeve", Role.ASSESSOR);

            assertThat(maeve.open("/block-sheets/" + later).text())
                    .contains("Knife through the sixth space", "Blade climbed over bone.")
                    .doesNotContain("Worded as in version", "Knife rode up");
            assertThat(maeve.open("/apprentices/" + ada.id() + "/steps/fores-cut")
                            .text())
                    .contains("Knife rode up onto a rib.", "Blade climbed over bone.")
                    .contains("Reasons: Worded as in version " + versionA);
            assertThat(app.app.verify().holds()).isTrue();
        }
    }

    /** The digest of the words stands with the mark in the chained log, so that words kept beside it can be proven. */
    @Test
    void the_wording_is_kept_once_and_proven_by_the_log() {
        try (TestApp app = restarted()) {
            String words = app.app
                    .database()
                    .reading(handle -> handle.createQuery("select words from content_wordings")
                            .mapTo(String.class)
                            .one());
            assertThat(app.app.log().all().stream().filter(kept -> kept.kind().equals("step-marked")))
                    .hasSize(3)
                    .allMatch(kept -> kept.facts().get("wording").equals(Digest.of(words)));
        }
    }
}
