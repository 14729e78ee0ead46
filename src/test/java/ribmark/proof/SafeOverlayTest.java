package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.Settings;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

/** A college's own folder is checked together with what it replaces, and goes live whole and sound, or not at all. */
class SafeOverlayTest {

    private static final int BROKEN = Math.min(100, Integer.getInteger("drills", 30));
    private static final long SEED = 77;

    @TempDir
    private Path folder;

    private final ContentFiles ours = ContentFiles.ours();

    @Test
    void no_broken_folder_goes_live() throws IOException {
        String usual = ContentInUse.read(Optional.empty()).curriculum().version();
        int at = 0;
        for (Mutant mutant : broken()) {
            Path own = folder.resolve("college-" + at++);
            Files.createDirectories(own.resolve(mutant.file()).getParent());
            Files.writeString(own.resolve(mutant.file()), mutant.text());

            ContentInUse content = ContentInUse.read(Optional.of(own));

            assertThat(content.check().ok()).as(mutant.toString()).isFalse();
            assertThat(content.check().problems()).as(mutant.toString()).isNotEmpty();
            assertThat(content.curriculum().version()).as(mutant.toString()).isEqualTo(usual);
        }
    }

    /** Kinds of which every single fault is caught. */
    private List<Mutant> broken() {
        Pen pen = new Pen(ours, new Random(SEED));
        List<Mutant> mutants = new ArrayList<>();
        Slips slips = new Slips(pen);
        List<String> kinds = List.of(
                "id typo, list", "sum", "sign", "name typo", "bone number, cut", "source key typo", "tab", "yes or no");
        Iterator<String> turn = kinds.iterator();
        while (mutants.size() < BROKEN) {
            turn = turn.hasNext() ? turn : kinds.iterator();
            slips.kinds().get(turn.next()).get().ifPresent(mutants::add);
        }
        return mutants;
    }

    @Test
    void half_a_change_is_held_against_the_half_that_stays_ours() throws IOException {
        String file = "content/ovine/cuts.yaml";
        String renamed = text(file).replace("- id: knuckle\n", "- id: shank-end\n");
        write(file, renamed);

        assertThat(ContentInUse.read(Optional.of(folder)).check().problems())
                .extracting(ContentProblem::code)
                .contains("C021");

        write(
                "content/lamb/fores.yaml",
                text("content/lamb/fores.yaml").replace("frees: [knuckle]", "frees: [shank-end]"));
        ContentInUse whole = ContentInUse.read(Optional.of(folder));
        assertThat(whole.check().problems()).as(CheckText.of(whole.check())).isEmpty();
        assertThat(whole.curriculum().cut("shank-end")).isPresent();
        assertThat(whole.curriculum().version())
                .isNotEqualTo(ContentInUse.read(Optional.empty()).curriculum().version());
    }

    @Test
    void the_administrator_sees_why_and_everybody_else_what_held_before() throws IOException {
        write("content/lamb/legs.yaml", text("content/lamb/legs.yaml").replace("sever: [PS-P, PS-I]", "sever: [PS-P]"));

        try (TestApp app = new TestApp(Settings.throwAway(0, Optional.of(folder)))) {
            Page content = app.as("Petra", Role.ADMINISTRATOR).open("/content");

            assertThat(content.heading()).isEqualTo("The content was not taken");
            assertThat(content.text())
                    .contains("One thing to put right", "content/lamb/legs.yaml", "It is still held by PS-I");
            assertThat(app.as("Ada", Role.APPRENTICE).open("/steps/legs-open").status())
                    .isEqualTo(200);
        }
    }

    private String text(String file) {
        return new String(ours.bytes(file).orElseThrow(), StandardCharsets.UTF_8);
    }

    private void write(String file, String text) throws IOException {
        Files.createDirectories(folder.resolve(file).getParent());
        Files.writeString(folder.resolve(file), text);
    }
}
