package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BoneMapPagesTest {

    private static final int LARGEST_PAGE = 14_000;

    private final TestApp app = new TestApp();
    private final Browser ada = app.as("Ada", Role.APPRENTICE);

    @AfterAll
    void stop() {
        app.close();
    }

    @Test
    void a_step_shows_its_bones_its_line_and_its_pieces_with_the_same_in_words() {
        Page step = ada.open("/steps/middle-off");

        assertThat(step.text())
                .contains("On the bones")
                .contains("filled in Lumbar vertebra 6; ilium, left and right.")
                .contains("solid line The front tip of the ilium.")
                .contains("slanting lines Fores: All of the neck")
                .contains("level lines Legs:");
        assertThat(step.all(".bone-map img"))
                .hasSize(2)
                .allMatch(img -> !img.attr("alt").isBlank());
        assertThat(step.all(".bone-map source[media]")).hasSize(2);
    }

    @Test
    void a_picture_does_not_wait_to_be_scrolled_to_or_it_would_be_missing_on_paper() {
        assertThat(ada.open("/steps/middle-off").all(".bone-map img[loading]")).isEmpty();
        assertThat(ada.open("/bones").all(".bone-map img[loading]")).isEmpty();
    }

    @Test
    void every_picture_of_every_step_is_there_and_its_words_stand_on_the_page() {
        for (String address : ada.open("/steps").links()) {
            if (address.startsWith("/steps/")) {
                Page step = ada.open(address);
                String words = step.text().toLowerCase(java.util.Locale.ROOT);
                for (String file : files(step)) {
                    HttpResponse<String> svg = ada.get(file);
                    assertThat(svg.statusCode()).as(file).isEqualTo(200);
                    for (String word : Jsoup.parse(svg.body(), "", Parser.xmlParser())
                            .select("text")
                            .eachText()) {
                        assertThat(words).as(file).contains(word.toLowerCase(java.util.Locale.ROOT));
                    }
                }
                assertThat(sent(address)).as(address + " in bytes").isLessThan(LARGEST_PAGE);
            }
        }
    }

    private static List<String> files(Page page) {
        List<String> files = new java.util.ArrayList<>();
        page.all(".bone-map img").forEach(img -> files.add(img.attr("src")));
        page.all(".bone-map source").forEach(source -> files.add(source.attr("srcset")));
        return files;
    }

    @Test
    void the_whole_skeleton_is_drawn_from_two_sides_and_every_bone_stands_in_the_table() {
        Page bones = ada.open("/steps").follow("Every bone, drawn and named");

        assertThat(bones.heading()).isEqualTo("Every bone of the lamb");
        assertThat(bones.all("tbody th[scope=row]")).hasSize(139);
        assertThat(bones.text()).contains("Costa VI", "aitch bone", "Closer, from the left");
        assertThat(bones.all("img")).allMatch(img -> ada.get(img.attr("src")).statusCode() == 200);
        assertThat(sent("/bones")).isLessThan(LARGEST_PAGE);
        assertThat(ada.open("/study").follow("Every bone, drawn and named").heading())
                .isEqualTo(bones.heading());
    }

    @Test
    void a_picture_is_kept_by_the_browser_as_long_as_the_content_is_the_same() {
        String address = ada.open("/bones").all(".bone-map img").get(0).attr("src");
        HttpResponse<String> svg = ada.get(address);

        assertThat(svg.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
        assertThat(svg.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
        assertThat(ada.get(address.replaceFirst("v=.*", "v=older")).headers().firstValue("Cache-Control"))
                .contains("no-store");
        assertThat(packed(address).headers().firstValue("Content-Encoding")).contains("gzip");
    }

    @Test
    void an_animal_with_fourteen_ribs_is_drawn_and_one_that_cannot_be_is_not_there() {
        assertThat(ada.get("/bone-map/lateral.svg?formula=7,14,6,4,3").body()).contains("id=\"R14L\"");
        assertThat(ada.get("/bone-map/lateral.svg").body()).doesNotContain("R14L");
        for (String formula : List.of("x", "7,13", "7,13,6,4,99", "7,0,6,4,3", "7,13,6,4,3,1")) {
            assertThat(ada.get("/bone-map/lateral.svg?formula=" + formula).statusCode())
                    .as(formula)
                    .isEqualTo(404);
        }
    }

    @Test
    void what_the_content_does_not_name_is_not_there() {
        for (String address : List.of(
                "/bone-map/ventral.svg",
                "/bone-map/lateral/none.svg",
                "/bone-map/steps/none.svg",
                "/bone-map/steps/none/close.svg",
                "/bone-map/steps/ticket.svg",
                "/bone-map/steps/ticket/pieces.svg")) {
            assertThat(ada.get(address).statusCode()).as(address).isEqualTo(404);
        }
        assertThat(app.as("Petra", Role.ADMINISTRATOR).get("/bones").statusCode())
                .isEqualTo(404);
    }

    private int sent(String address) {
        return Integer.parseInt(
                packed(address).headers().firstValue("Content-Length").orElseThrow());
    }

    private HttpResponse<String> packed(String address) {
        return ada.send(
                HttpRequest.newBuilder(URI.create(app.address + address)).header("Accept-Encoding", "gzip"));
    }
}
