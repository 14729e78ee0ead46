package ribmark.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class CutPagesTest {

    @Test
    void every_cut_shows_its_bones_its_step_and_the_published_number_with_how_far_they_were_compared() {
        try (TestApp app = new TestApp()) {
            Page cuts = app.as("Ada", Role.APPRENTICE).open("/cuts");

            // numbers as in the cutting reference: UNECE 308 4932, 4972 and 4801
            String bestEnd = row(cuts, "best-end").text();
            assertThat(bestEnd)
                    .contains("Rib 7 to the last rib")
                    .contains("thoracic vertebrae 7 to 13; ribs 7 to 13, left and right")
                    .contains("Comes left and right, sold")
                    .contains("UNECE 308, 4932")
                    .contains("the two differ in thoracic vertebrae 7 to 13");
            assertThat(row(cuts, "fores").text()).contains("UNECE 308, 4972", "the same bones.");
            assertThat(row(cuts, "leg-and-chump-aitch-bone-out").text())
                    .contains("UNECE 308, 4801", "the bones were not compared.");
            assertThat(row(cuts, "scrag").select("a[href=/steps/scrag-off]")).hasSize(1);
            assertThat(cuts.all(".part[id]"))
                    .extracting(Element::id)
                    .contains("fores", "legs", "middle", "kidneys", "bone", "trim", "waste");
        }
    }

    private static Element row(Page page, String id) {
        return page.all("#" + id).get(0);
    }
}
