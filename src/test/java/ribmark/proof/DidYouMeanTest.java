package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.basics.Suggest;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;

/** Whoever mistypes an id is asked whether the right one was meant. */
class DidYouMeanTest {

    private static final int TYPOS = 500;
    private static final long SEED = 20261125;

    private final Curriculum lamb = Check.of(ContentFiles.ours()).curriculum().orElseThrow();
    private final Pen pen = new Pen(ContentFiles.of(java.util.Map.of()), new Random(SEED));

    @Test
    void the_first_suggestion_is_the_id_that_was_meant() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        while (asked < TYPOS) {
            List<String> known = pen.any(kinds());
            String meant = pen.any(known);
            String typed = pen.typo(meant);
            if (!known.contains(typed)) {
                asked++;
                Optional<String> suggested = Suggest.nearest(typed, known);
                if (!suggested.equals(Optional.of(meant))) {
                    wrong.add(typed + " for " + meant + ": " + suggested.orElse("nothing"));
                }
            }
        }
        assertThat(wrong).as("seed " + SEED).hasSizeLessThanOrEqualTo(TYPOS / 20);
    }

    @Test
    void nothing_is_suggested_that_is_more_than_two_slips_away() {
        for (List<String> known : kinds()) {
            for (String meant : known) {
                String far = "zq" + meant + "zq";
                assertThat(Suggest.nearest(far, known)).as(far).isEmpty();
            }
        }
    }

    private List<List<String>> kinds() {
        return List.of(
                ids(lamb.breakdown().steps().stream().map(step -> step.id())),
                ids(lamb.cuts().stream().map(cut -> cut.id())),
                ids(lamb.landmarks().stream().map(mark -> mark.id())),
                ids(lamb.breakdown().tools().stream().map(tool -> tool.id())),
                ids(lamb.breakdown().cautions().stream().map(caution -> caution.id())),
                ids(lamb.trim().stream().map(measure -> measure.id())));
    }

    private static List<String> ids(Stream<String> all) {
        return all.filter(id -> id.length() > 2).toList();
    }
}
