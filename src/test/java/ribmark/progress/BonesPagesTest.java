package ribmark.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Watched.LEG_LINE;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.competence.Mark;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Watched;
import ribmark.web.Role;

/** S-44, U-45: whose picture it is decides who may see it, and the page beside it says the same in words. */
class BonesPagesTest {

    private static final int LARGEST_PAGE = 14_000;

    private final Watched college = new Watched();

    @AfterEach
    void stop() {
        college.close();
    }

    private Browser as(String name, Role role) {
        return college.app.as(name, role);
    }

    private String picture(String name) {
        return "/apprentices/" + college.apprentice(name).id() + "/bones/whole.svg";
    }

    @Test
    void an_apprentice_sees_where_each_step_stands_on_the_bones_and_reads_the_same_in_words() {
        college.closed("Ada", "Maeve", 31, LEG_LINE, Mark.UNAIDED);
        college.closed("Ada", "Maeve", 32, "middle-off", Mark.NOT_YET);
        Browser ada = as("Ada", Role.APPRENTICE);
        Page mine = ada.open("/my-page");
        HttpResponse<String> svg = ada.get(mine.all(".bone-map img").get(0).attr("src"));

        assertThat(svg.statusCode()).isEqualTo(200);
        assertThat(svg.body()).contains("10 practising").doesNotContain("Ada");
        assertThat(mine.all("#bones tbody tr")).hasSize(30);
        assertThat(mine.text())
                .contains("9 thin evidence Its bones carry step 10.")
                .contains("10 practising Dots: lumbar vertebra 6; ilium, left and right; dashed line: The front tip");
        for (var text : org.jsoup.Jsoup.parse(svg.body(), "", org.jsoup.parser.Parser.xmlParser())
                .select("text")) {
            assertThat(mine.all("#bones tbody th").stream().map(th -> th.text()))
                    .contains(text.text());
        }
        assertThat(mine.all("#bones source, #bones img"))
                .allMatch(file -> ada.get(file.hasAttr("src") ? file.attr("src") : file.attr("srcset"))
                                .statusCode()
                        == 200);
    }

    @Test
    void the_picture_is_kept_by_no_browser_between() {
        Browser ada = as("Ada", Role.APPRENTICE);
        assertThat(ada.get(picture("Ada")).headers().firstValue("Cache-Control").orElse(""))
                .contains("no-store");
    }

    @Test
    void an_apprentice_opens_only_their_own_a_tutor_only_their_groups_and_an_assessor_all() {
        college.group("First year", "Petra", "Ada");
        college.group("Second year", "Quentin", "Bram");

        assertThat(as("Ada", Role.APPRENTICE).get(picture("Ada")).statusCode()).isEqualTo(200);
        assertThat(as("Ada", Role.APPRENTICE).get(picture("Bram")).statusCode()).isEqualTo(404);
        assertThat(as("Petra", Role.TUTOR).get(picture("Ada")).statusCode()).isEqualTo(200);
        assertThat(as("Petra", Role.TUTOR).get(picture("Bram")).statusCode()).isEqualTo(404);
        assertThat(as("Maeve", Role.ASSESSOR).get(picture("Bram")).statusCode()).isEqualTo(200);
        assertThat(as("Wilf", Role.ADMINISTRATOR).get(picture("Ada")).statusCode())
                .isEqualTo(404);
        assertThat(as("Maeve", Role.ASSESSOR)
                        .get(picture("Bram").replace("whole", "nowhere"))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void whoever_teaches_sees_the_same_picture_and_every_page_stays_small() {
        college.group("First year", "Petra", "Ada");
        college.closed("Ada", "Maeve", 31, LEG_LINE, Mark.UNAIDED);
        String page = "/apprentices/" + college.apprentice("Ada").id();

        for (Browser reader :
                java.util.List.of(as("Maeve", Role.ASSESSOR), as("Petra", Role.TUTOR), as("Ada", Role.APPRENTICE))) {
            assertThat(reader.open(page).all("#bones img").get(0).attr("src")).isEqualTo(picture("Ada"));
            assertThat(reader.bytesCompressed(page)).isLessThan(LARGEST_PAGE);
        }
        assertThat(as("Ada", Role.APPRENTICE).bytesCompressed("/my-page")).isLessThan(LARGEST_PAGE);
    }
}
