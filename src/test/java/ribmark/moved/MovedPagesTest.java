package ribmark.moved;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class MovedPagesTest {

    private final TestApp app = new TestApp();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void a_step_that_cuts_such_a_line_leads_to_the_question() {
        Browser ada = app.as("Ada", Role.APPRENTICE);
        Page asked = ada.open("/steps/fores-cut").follow("What if the line ran elsewhere?");
        assertThat(asked.heading()).isEqualTo("Where did the line really run?");
        assertThat(asked.text()).contains("breast bone are still parted once", "stop, say so");
        assertThat(ada.open("/steps/knuckle").text()).doesNotContain("ran elsewhere");
        assertThat(ada.open("/steps/knuckle/moved").status()).isEqualTo(404);
        assertThat(ada.open("/steps/nothing/moved").status()).isEqualTo(404);
    }

    @Test
    void the_answer_names_every_bone_that_is_elsewhere_and_draws_it() {
        Browser ada = app.as("Ada", Role.APPRENTICE);
        Page answer = ada.open("/steps/fores-saw/moved?line=fores&by=1&side=left&towards=head");
        assertThat(answer.heading()).isEqualTo("The fore line ran one rib towards the head on the left");
        assertThat(rows(answer))
                .containsExactly(
                        "Left rib 6 the fores the middle and legs",
                        "Left costal cartilage 6 the fores the middle and legs");
        assertThat(answer.text()).contains("Every other bone is where it should be");
        List<String> pictures =
                answer.all("figure img").stream().map(each -> each.attr("src")).toList();
        assertThat(pictures).hasSize(2);
        for (String picture : pictures) {
            assertThat(picture).startsWith("/bone-map/ran/fores/head/1/left/").contains("?v=");
            String svg = ada.get(picture).body();
            assertThat(svg).contains("line-fore-6-7", "line-fores-head-1", "stroke-dasharray");
            assertThat(ada.get(picture).headers().firstValue("Cache-Control").orElse(""))
                    .contains("immutable");
        }
        answer.all("figure source")
                .forEach(each ->
                        assertThat(ada.get(each.attr("srcset")).statusCode()).isEqualTo(200));
    }

    private static List<String> rows(Page page) {
        return page.all("main table.ledger--folds:not(.ledger--facts) tbody tr").stream()
                .map(Element::text)
                .toList();
    }

    @Test
    void without_a_side_both_are_meant_and_halves_are_explained() {
        Page answer = app.as("Petra", Role.TUTOR).open("/steps/middle-off/moved?towards=head&by=1");
        assertThat(answer.heading())
                .isEqualTo("The line between middle and legs ran one lumbar vertebra towards the head");
        assertThat(answer.text()).contains("The far half of lumbar vertebra 5", "Near is towards the head");
    }

    @Test
    void what_cannot_be_asked_is_answered_in_words_and_nothing_is_lost() {
        Browser maeve = app.as("Maeve", Role.ASSESSOR);
        Page far = maeve.open("/steps/fores-cut/moved?towards=head&by=7&side=left");
        assertThat(far.status()).isEqualTo(422);
        assertThat(far.problems()).containsExactly("How far: “7” is none of the choices. Choose one rib or two ribs.");
        assertThat(far.all("input[name=side][value=left][checked]")).hasSize(1);

        Page alone = maeve.open("/steps/middle-off/moved?towards=tail&by=1&side=left");
        assertThat(alone.status()).isEqualTo(422);
        assertThat(alone.problems())
                .containsExactly("Side: this line cannot go wrong on one side alone. Choose both sides.");

        Page stranger = maeve.open("/steps/fores-cut/moved?line=scrag&towards=up");
        assertThat(stranger.problems()).hasSize(3);
    }

    @Test
    void another_animal_is_answered_with_its_own_bones_and_pictures() {
        Browser ada = app.as("Ada", Role.APPRENTICE);
        Page answer = ada.open("/steps/best-end-and-loin/moved?towards=head&by=1&side=right&formula=7,14,6,4,3");
        assertThat(answer.text()).contains("right rib 14", "an animal with vertebrae 7,14,6,4,3");
        String picture = answer.all("figure img").get(0).attr("src");
        assertThat(ada.get(picture).body()).contains("R14R", "line-best-ends-head-1-R");
        assertThat(ada.open("/steps/fores-cut/moved?formula=7,2,6,4,3").status())
                .isEqualTo(409);
    }

    @Test
    void a_picture_nobody_asked_for_is_not_there() {
        Browser ada = app.as("Ada", Role.APPRENTICE);
        for (String way :
                List.of("fores/head/9/left/lateral", "fores/up/1/left/lateral", "fores/head/1/right/lateral")) {
            assertThat(ada.get("/bone-map/ran/" + way + ".svg").statusCode())
                    .as(way)
                    .isEqualTo(404);
        }
    }
}
