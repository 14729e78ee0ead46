package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import ribmark.curriculum.Step;

/** Every picture is a sound file of its own, says in words all that it shows, and stays small. */
class PicturesTest {

    private static final int LARGEST_COMPRESSED = 60_000;
    private static final Map<String, Scene> SCENES = scenes();

    private static Map<String, Scene> scenes() {
        Map<String, Scene> scenes = new LinkedHashMap<>();
        Lamb.MAP.views().forEach(view -> scenes.put(view, Lamb.MAP.plain(Lamb.MAP.drawing(view))));
        scenes.put("fourteen ribs", Lamb.MAP.plain(Lamb.drawn("lateral", "7,14,6,4,3")));
        for (Step step : Lamb.CURRICULUM.breakdown().steps()) {
            Lamb.MAP.touched(step).ifPresent(scene -> scenes.put(step.id(), scene));
            Lamb.MAP.pieces(step).ifPresent(scene -> scenes.put(step.id() + " pieces", scene));
        }
        return scenes;
    }

    @Test
    void a_picture_is_well_formed_named_described_and_without_styles_or_scripts() throws Exception {
        for (String name : SCENES.keySet()) {
            for (String svg : files(SCENES.get(name))) {
                var reading =
                        javax.xml.parsers.DocumentBuilderFactory.newInstance().newDocumentBuilder();
                reading.parse(new java.io.ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
                Document file = parsed(svg);
                assertThat(file.select("svg > title").text()).as(name).isNotBlank();
                assertThat(file.select("svg > desc").text()).as(name).contains("head end at the left");
                assertThat(file.select("[style], [class], style, script, [onload], [href]"))
                        .as(name)
                        .isEmpty();
                assertThat(svg)
                        .as(name)
                        .doesNotContain("NaN")
                        .doesNotContain("null")
                        .doesNotContain("url(http");
                assertThat(file.select("[id]").eachAttr("id")).as(name).doesNotHaveDuplicates();
            }
        }
    }

    @Test
    void every_bone_of_a_whole_picture_is_a_shape_with_its_own_id_and_name() {
        for (String view : Lamb.MAP.views()) {
            Document file = parsed(SCENES.get(view).whole(960));
            Lamb.MAP.drawing(view).bones().keySet().forEach(bone -> {
                Element shape = file.getElementById(bone);
                assertThat(shape).as(bone).isNotNull();
                assertThat(shape.select("title").text())
                        .isEqualTo(Lamb.CURRICULUM
                                .skeleton()
                                .bone(bone)
                                .orElseThrow()
                                .name());
                assertThat(shape.select("path")).as(bone).isNotEmpty();
            });
        }
    }

    @Test
    void every_word_on_a_picture_stands_beside_it_too() {
        SCENES.forEach((name, scene) -> {
            String beside = " " + scene.description().toLowerCase(java.util.Locale.ROOT) + " ";
            for (String svg : files(scene)) {
                for (String word : parsed(svg).select("text").eachText()) {
                    boolean inTable = name.equals("lateral") || name.equals("dorsal") || name.equals("fourteen ribs");
                    assertThat(inTable || beside.contains(word.toLowerCase(java.util.Locale.ROOT)))
                            .as(name + ": " + word)
                            .isTrue();
                }
            }
        });
    }

    @Test
    void every_fill_and_line_on_a_picture_has_its_word() {
        SCENES.forEach((name, scene) -> {
            List<String> marks = scene.marks().stream().map(Mark::mark).toList();
            scene.portions().values().stream()
                    .flatMap(List::stream)
                    .filter(portion -> portion.fill() != Fill.PLAIN)
                    .forEach(portion ->
                            assertThat(marks).as(name).contains(portion.fill().word()));
            scene.lines().forEach(line -> assertThat(marks).as(name).contains(line.word()));
        });
    }

    @Test
    void slanting_and_close_slanting_lines_never_meet_on_one_picture() {
        SCENES.forEach((name, scene) -> {
            List<Fill> fills = scene.portions().values().stream()
                    .flatMap(List::stream)
                    .map(Portion::fill)
                    .distinct()
                    .toList();
            assertThat(fills.contains(Fill.SLANT) && fills.contains(Fill.CLOSE))
                    .as(name)
                    .isFalse();
        });
    }

    @Test
    void a_picture_stays_small() {
        SCENES.forEach((name, scene) ->
                files(scene).forEach(svg -> assertThat(compressed(svg)).as(name).isLessThan(LARGEST_COMPRESSED)));
    }

    /** UNECE and AHDB part fores, middle and legs so; the bones of each are those of the cut in the catalogue. */
    @Test
    void after_the_second_saw_three_pieces_lie_there_and_the_last_loin_bone_is_in_two_of_them() {
        Scene scene = SCENES.get("middle-off pieces");
        assertThat(scene.marks().stream().map(Mark::mark).toList())
                .contains("slanting lines", "dots", "level lines", "solid line");
        assertThat(scene.portions("L6")).extracting(Portion::name).containsExactlyInAnyOrder("L6.near", "L6.far");
        assertThat(scene.portions("L6")).allMatch(portion -> portion.clips().size() == 1);
        assertThat(scene.portions("R6L")).extracting(Portion::fill).containsExactly(Fill.SLANT);
        assertThat(scene.portions("R7L")).extracting(Portion::fill).containsExactly(Fill.DOTS);
        assertThat(scene.portions("FEML")).extracting(Portion::fill).containsExactly(Fill.LEVEL);
    }

    /** The chump has no bones once the aitch bone is out: what is left is the leg. */
    @Test
    void a_piece_is_called_what_the_step_calls_it_and_one_without_bones_is_told_in_words() {
        assertThat(SCENES.get("chump-off pieces").marks())
                .anyMatch(mark -> mark.meaning().startsWith("Leg: All of the leg"))
                .contains(new Mark("no bones", "Chump"));
    }

    @Test
    void a_marked_line_is_dashed_and_a_cut_line_is_not() {
        assertThat(SCENES.get("fores-mark").lines()).noneMatch(DrawnLine::cut);
        assertThat(SCENES.get("fores-cut").lines()).isNotEmpty().allMatch(DrawnLine::cut);
        assertThat(SCENES.get("fores-mark").whole(740)).contains("stroke-dasharray");
        assertThat(SCENES.get("fores-cut").whole(740)).doesNotContain("stroke-dasharray");
    }

    @Test
    void a_limb_over_what_matters_is_faint_and_one_that_matters_too_is_laid_aside() {
        assertThat(SCENES.get("fores-mark").portions("SCAPL")).allMatch(Portion::faint);
        Box laid =
                SCENES.get("sheet-bone").drawing().bone("SCAPL").orElseThrow().box();
        Box usual = Lamb.MAP.drawing("lateral").bone("SCAPL").orElseThrow().box();
        assertThat(laid.left()).isEqualTo(usual.left() - 300);
        assertThat(laid.top()).isEqualTo(usual.top() + 130);
    }

    @Test
    void work_down_the_middle_is_seen_from_the_back() {
        for (String step : List.of("legs-split", "fores-split", "saddle-split", "legs-open")) {
            assertThat(SCENES.get(step).drawing().view()).isEqualTo("dorsal");
        }
        assertThat(SCENES.get("legs-split pieces").portions("S1"))
                .extracting(Portion::name)
                .containsExactlyInAnyOrder("S1.left", "S1.right");
    }

    @Test
    void a_close_up_holds_every_bone_it_is_about() {
        SCENES.values().forEach(scene -> assertThat(scene.focus()).allMatch(scene.closeUpBox()::holds));
    }

    @Test
    void a_step_without_bones_has_no_picture() {
        Optional<Step> ticket = Lamb.CURRICULUM.breakdown().step("ticket");
        assertThat(ticket.flatMap(Lamb.MAP::touched)).isEmpty();
        assertThat(ticket.flatMap(Lamb.MAP::pieces)).isEmpty();
    }

    private static List<String> files(Scene scene) {
        List<String> files = new ArrayList<>();
        Stream.of(scene.whole(740), scene.closeUp(356)).forEach(files::add);
        return files;
    }

    private static Document parsed(String svg) {
        return Jsoup.parse(svg, "", Parser.xmlParser());
    }

    private static int compressed(String svg) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(bytes)) {
            zip.write(svg.getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.size();
    }
}
