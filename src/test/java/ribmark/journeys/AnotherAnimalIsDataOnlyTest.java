package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.Settings;
import ribmark.contentfiles.ContentFiles;
import ribmark.proof.Check;
import ribmark.proof.CheckText;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

/** A sheep with fifteen pairs of ribs, invented for this test, is taught from a folder of data without a change of program. */
class AnotherAnimalIsDataOnlyTest {

    private static final String FORMULA = "7,15,6,4,3";

    @TempDir
    private Path folder;

    private final ContentFiles ours = ContentFiles.ours();

    @Test
    void an_animal_with_fifteen_ribs_proves_and_every_page_of_it_opens() throws IOException {
        writeBroadSheep();
        Check check = Check.of(ours.under(ContentFiles.in(folder)));
        assertThat(check.problems()).as(CheckText.of(check)).isEmpty();
        assertThat(check.curriculum().orElseThrow().breakdown().formula().toString())
                .isEqualTo(FORMULA);

        try (TestApp app = new TestApp(Settings.throwAway(0, Optional.of(folder)))) {
            Browser ada = app.as("Ada", Role.APPRENTICE);
            Page steps = ada.open("/steps");
            List<String> addresses = steps.links().stream()
                    .filter(link -> link.startsWith("/steps/"))
                    .distinct()
                    .toList();
            assertThat(addresses).hasSize(30);
            for (String address : addresses) {
                assertThat(ada.open(address).status()).as(address).isEqualTo(200);
            }
            assertThat(ada.open("/steps/breasts-off").text()).contains("Ribs 7 to 15");
            for (String address :
                    List.of("/study", "/study/practice", "/words", "/cuts", "/stages/fores", "/bones", "/sources")) {
                assertThat(ada.open(address).status()).as(address).isEqualTo(200);
            }
            assertThat(app.as("Petra", Role.ADMINISTRATOR).open("/content").text())
                    .contains(FORMULA, "149 bones");
        }
    }

    /** The lamb's own words for another animal: its folder comes first by name, so it is the one that is served. */
    private void writeBroadSheep() throws IOException {
        for (String path : ours.paths()) {
            if (path.contains("/lamb/")) {
                String text = new String(ours.bytes(path).orElseThrow(), StandardCharsets.UTF_8);
                write(path.replace("/lamb/", "/broad-sheep/"), path.endsWith("breakdown.yaml") ? broad(text) : text);
            }
        }
    }

    private static String broad(String lamb) {
        return lamb.replace("id: lamb\n", "id: broad-sheep\n")
                .replace("title: Lamb\n", "title: Broad sheep\n")
                .replaceFirst("\nformula: \"[0-9,]+\"", "\nformula: \"" + FORMULA + "\"")
                .replaceFirst("(?s)also-on:\n.*?\n(?=[a-z])", "");
    }

    private void write(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
